package org.fizzhull.forecast.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.evidence.Source;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.piece.Makeup;
import org.fizzhull.pressing.powder.DensityScores;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: each input moves the one parameter of its name, and what no input moves has its standard value. */
class DrawValuesTest {
    private static final Source INVENTED = new Source("invented", "invented for this test", Source.Seen.ASSUMED);

    private static Draw with(Input input, double value) {
        double[] values = DrawValues.standard();
        values[DrawValues.place(input)] = value;
        return DrawValues.draw(values, DrawValues.NO_SCORES, DrawValues.NO_SCORES);
    }

    private static Factor row(Input input, double value, int columns) {
        return new Factor(input, Priors.certain(value), INVENTED, columns);
    }

    @Test
    void standardValues() {
        Draw draw = Draw.of(List.of(), new double[0]);
        assertThat(draw.makeup()).isEqualTo(Makeup.usual());
        assertThat(draw.fizz()).isEqualTo(FizzParameters.standard());
        assertThat(draw.voyage()).isEqualTo(VoyageParameters.standard());
        assertThat(draw.massError()).isZero();
        assertThat(draw.surfaceRatio()).isEqualTo(1);
        MakingDraw making = draw.making();
        assertThat(making.pressing()).isEqualTo(PressingParameters.standard());
        assertThat(making.drying()).isEqualTo(DryingParameters.standard());
        assertThat(making.pressRatio()).isEqualTo(1);
        assertThat(making.pressRepeat()).isEqualTo(1);
        assertThat(making.humidityError()).isZero();
        assertThat(making.temperatureError()).isZero();
        assertThat(making.amounts()).isEmpty();
        // a caller may write into the array of standard values; nobody else sees it
        DrawValues.standard()[0] = 5;
        assertThat(DrawValues.standard()[0]).isZero();
    }

    /** Errors of the weight add up; factors of the surface multiply. */
    @Test
    void sumsAndProducts() {
        Draw draw = Draw.of(
                List.of(
                        row(Input.SCALE, 0, 1),
                        row(Input.SCALE_OFFSET, 0, 1),
                        row(Input.HAND, 0, 1),
                        row(Input.SURFACE, 1, 1),
                        row(Input.DEPTH_PROFILE, 1, 1),
                        row(Input.BATH_TEMPERATURE, 0, 1),
                        row(Input.MOULD_SIZE, 0, 1)),
                new double[] {0.001, 0.02, 0.3, 1.5, 2, -0.5, 0.004});
        assertThat(draw.massError()).isCloseTo(0.321, within(1e-15));
        assertThat(draw.batchMassError()).isEqualTo(0.02);
        assertThat(draw.surfaceRatio()).isEqualTo(3);
        assertThat(draw.temperatureError()).isEqualTo(-0.5);
        assertThat(draw.sizeError()).isEqualTo(0.004);
    }

    @Test
    void parametersOfTheMaking() {
        assertThat(with(Input.PRESS_SCALE, 7e5).making().pressing().pressScale())
                .isEqualTo(7e5);
        assertThat(with(Input.PACKING_MODEL, 0.01).making().pressing().packingError())
                .isEqualTo(0.01);
        assertThat(with(Input.BULKING, 0.3).making().pressing().bulking()).isEqualTo(0.3);
        assertThat(with(Input.BULKING_PRESSURE, 3e3).making().pressing().bulkingPressure())
                .isEqualTo(3e3);
        assertThat(with(Input.WALL_FRICTION, 0.4).making().pressing().wallFriction())
                .isEqualTo(0.4);
        assertThat(with(Input.PENDULAR_LIMIT, 0.2).making().pressing().pendularLimit())
                .isEqualTo(0.2);
        assertThat(with(Input.BRIDGE_EFFICIENCY, 0.5).making().pressing().bridgeEfficiency())
                .isEqualTo(0.5);
        assertThat(with(Input.PRESS, 1.5).making().pressRatio()).isEqualTo(1.5);
        assertThat(with(Input.PRESS_REPEAT, 1.1).making().pressRepeat()).isEqualTo(1.1);
        assertThat(with(Input.PRESS_REPEAT, 1.1).pressRepeat()).isEqualTo(1.1);
        Draw again = with(Input.PRESS_REPEAT, 1.1).pressedAgain(0.9);
        assertThat(again.pressRepeat()).isEqualTo(0.9);
        assertThat(again.makeup()).isEqualTo(Makeup.usual());
    }

    @Test
    void parametersOfDrying() {
        assertThat(with(Input.PORE_DIFFUSIVITY, 2).making().drying().diffusivityFactor())
                .isEqualTo(2);
        assertThat(with(Input.SKIN_TRANSFER, 0.003).making().drying().transfer())
                .isEqualTo(0.003);
        assertThat(with(Input.FILM_ACTIVITY, 0.6).making().drying().filmActivity())
                .isEqualTo(0.6);
        assertThat(with(Input.PROMPT_YIELD, 5).making().drying().promptYield()).isEqualTo(5);
        assertThat(with(Input.FILM_RATE, 1e-4).making().drying().filmRate()).isEqualTo(1e-4);
        assertThat(with(Input.HYDRATE_SHARE, 0.25).making().drying().hydrateShare())
                .isEqualTo(0.25);
        assertThat(with(Input.ACID_HYDRATION, 1e-6).making().drying().acidHydration())
                .isEqualTo(1e-6);
        assertThat(with(Input.ROOM_HUMIDITY, 0.04).making().humidityError()).isEqualTo(0.04);
        assertThat(with(Input.ROOM_TEMPERATURE, -1.5).making().temperatureError())
                .isEqualTo(-1.5);
    }

    /** Two powders have six scores: true densities, loose densities, tapped ratios; amounts follow in their own row. */
    @Test
    void scoresOfEachPowder() {
        Draw draw = Draw.of(
                List.of(
                        row(Input.GRAIN_SCORE, 0, 1),
                        row(Input.POWDER_SCORES, 0, 6),
                        row(Input.RECIPE_SCORES, 0, 2),
                        row(Input.PLUME, 0, 1)),
                new double[] {0.5, 1, 2, 3, 4, 5, 6, 7, 8, 0.25});
        assertThat(draw.scores()).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(draw.amounts()).containsExactly(7, 8);
        assertThat(draw.voyage().plumeFactor()).isEqualTo(0.25);
        assertThat(draw.making().densities())
                .usingRecursiveComparison()
                .isEqualTo(DensityScores.shared(0.5, 0, 0)
                        .withOwn(new double[] {1, 2}, new double[] {3, 4}, new double[] {5, 6}));
        assertThat(with(Input.LOOSE_SCORE, 2).making().densities())
                .usingRecursiveComparison()
                .isEqualTo(DensityScores.shared(0, 2, 0));
        assertThat(with(Input.TAPPED_SCORE, 2).making().densities())
                .usingRecursiveComparison()
                .isEqualTo(DensityScores.shared(0, 0, 2));
    }

    /** What is not possible or no number is refused by the name of its input. */
    @Test
    void values() {
        assertThatThrownBy(() -> Draw.of(List.of(row(Input.GAS_SHARE, 0.5, 1)), new double[] {1.5}))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.field()).isEqualTo("gas share"));
        double[] names = {0, 1, 2, 3};
        Input[] inputs = {Input.HAND, Input.MOULD_SIZE, Input.SURFACE, Input.BATH_TEMPERATURE};
        String[] fields = {"mass error", "size error", "surface ratio", "temperature error"};
        for (int i = 0; i < names.length; i++) {
            Input input = inputs[i];
            String field = fields[i];
            assertThatThrownBy(() -> with(input, Double.NaN))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.field()).isEqualTo(field));
        }
        Input[] made = {Input.PRESS, Input.PRESS_REPEAT, Input.ROOM_HUMIDITY, Input.ROOM_TEMPERATURE};
        String[] told = {"press ratio", "press repeat", "humidity error", "temperature error"};
        for (int i = 0; i < made.length; i++) {
            Input input = made[i];
            String field = told[i];
            assertThatThrownBy(() -> with(input, Double.NaN).making())
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.field()).isEqualTo(field));
        }
    }

    /**
     * One standard deviation of starch (10 g of 100 g): the mix that was weighed then has 110 g of starch in 210 g. A score
     * of the grains moves each true density by its standard deviation.
     */
    @Test
    void theMixOfADraw() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "100 g")
                .dry("corn starch", "100 +- 10 g")
                .build());
        MixedDraw mixed = new MixedDraw(blend);
        MixedDraw.Mix same = mixed.of(with(Input.HAND, 0).making());
        assertThat(same.blend()).isSameAs(blend);
        assertThat(same.powders().trueDensity()).isCloseTo(blend.trueDensity(), within(1e-9));
        double[] values = DrawValues.standard();
        MixedDraw.Mix more = mixed.of(DrawValues.draw(values, DrawValues.NO_SCORES, new double[] {0, 1})
                .making());
        assertThat(more.blend().dryMass()).isCloseTo(0.21, within(1e-12));
        double soda = blend.powders().get(0).value(Property.TRUE_DENSITY);
        double starch = blend.powders().get(1).value(Property.TRUE_DENSITY);
        assertThat(more.powders().trueDensity()).isCloseTo(0.21 / (0.1 / soda + 0.11 / starch), within(1e-6));
        assertThat(mixed.of(with(Input.GRAIN_SCORE, 1).making()).powders().trueDensity())
                .isGreaterThan(blend.trueDensity() * 1.001);
    }
}
