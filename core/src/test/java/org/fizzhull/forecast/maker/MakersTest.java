package org.fizzhull.forecast.maker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fizzhull.Missing;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Making.Weighed;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.piece.Piece.Makeup;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Blend.Moles;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** MASS BALANCES by hand: what a mould holds is what was weighed in; which inputs a making has, by its definition. */
class MakersTest {
    private static final Source INVENTED = new Source("invented", "invented for this test", Source.Seen.ASSUMED);
    private static final Shape BALL = Sphere.ofDiameter(0.065);
    private static final Scale SCALE = new Scale(1e-3);
    private static final DryingPlan NONE = DryingPlan.none();
    private static final RoomAir AIR = RoomAir.of(Units.celsius(21), 0.5);

    private static RecipeBuilder mix() {
        return new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "100 g")
                .wet("sunflower oil", "6 g")
                .wet("water", "3 g");
    }

    private static final Blend MIX = Blend.of(mix().build());

    private static Draw draw(Input input, double value) {
        return Draw.of(List.of(new Factor(input, Priors.certain(value), INVENTED)), new double[] {value});
    }

    private static List<Input> inputs(Making making) {
        return MakingPriors.of(making, SCALE).stream().map(Factor::input).toList();
    }

    private static Prior prior(Making making, Input input) {
        return MakingPriors.of(making, SCALE).stream()
                .filter(row -> row.input() == input)
                .findFirst()
                .orElseThrow()
                .prior();
    }

    /** A weight moves by its error, and never below its inset and a milligram of body. */
    @Test
    void weighedPieces() {
        Weighed weighed = new Weighed(0.13, Optional.empty(), Optional.of(MIX));
        Maker maker = Maker.of(weighed, BALL);
        Piece piece = maker.make(draw(Input.HAND, 0.004), 1);
        assertThat(piece.mass()).isCloseTo(0.134, within(1e-15));
        assertThat(piece.makeup()).isEqualTo(Makeup.usual().with(Additives.of(MIX)));
        assertThat(maker.make(draw(Input.HAND, -1), 1).mass()).isEqualTo(1e-6);
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        assertThat(Maker.of(Weighed.of(0.13), loaded)
                        .make(draw(Input.HAND, -1), 1)
                        .mass())
                .isCloseTo(0.020001, within(1e-12));
        assertThatNullPointerException()
                .isThrownBy(() -> Maker.of(Missing.value(), BALL))
                .withMessage("making is null");
        assertThatNullPointerException()
                .isThrownBy(() -> Packing.of(Missing.value(), BALL))
                .withMessage("making is null");
        assertThatThrownBy(() -> Packing.of(weighed, BALL)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * 130 g of a mix of 309 g with 300 g of powder hold 126.2 g of it, whatever the mould; 4 g more, and a mould a tenth
     * larger, change it in proportion. What the fresh piece weighs is what was filled in, less the gas that went at once.
     */
    @Test
    void filledMoulds() {
        Moulded.Filled filled = new Moulded.Filled(MIX, 0.13, Optional.empty(), NONE);
        Packing packing = Packing.of(filled, BALL);
        double solid = 0.13 / 1.03 / (BALL.volume() * MIX.trueDensity());
        assertThat(packing.of(draw(Input.HAND, 0), 1).solidFraction()).isCloseTo(solid, within(1e-9));
        assertThat(packing.of(draw(Input.HAND, 0.004), 1.1).solidFraction())
                .isCloseTo(solid * 134 / 130 / 1.1, within(1e-9));
        Piece fresh = Maker.of(filled, BALL).make(draw(Input.PROMPT_YIELD, 0), 1);
        assertThat(fresh.mass()).isCloseTo(0.13, within(1e-9));
        assertThat(fresh.makeup().fizzLeft()).isEqualTo(1);
        assertThat(fresh.makeup().gasCapacity()).isCloseTo(MIX.moles().gas() / 1.03, within(1e-9));
        // pores: what powder, by its true density, and liquid leave of the volume
        double air = 1 - solid - solid * MIX.trueDensity() * 0.03 / MIX.liquid().density();
        assertThat(fresh.porosity()).isCloseTo(air, within(1e-9));
        Piece begun = Maker.of(filled, BALL).make(draw(Input.PROMPT_YIELD, 7), 1);
        double lost = (0.13 - begun.mass()) / Moles.CO2;
        assertThat(lost).isGreaterThan(0);
        assertThat(begun.makeup().fizzLeft())
                .isCloseTo(1 - lost / (0.13 / 1.03 * MIX.moles().gas()), within(1e-9));
        assertThat(begun.makeup().gasCapacity() * begun.mass())
                .isCloseTo(0.13 / 1.03 * MIX.moles().gas() - lost, within(1e-9));
        // twice the yield, twice the loss
        double twice = 0.13
                - Maker.of(filled, BALL).make(draw(Input.PROMPT_YIELD, 14), 1).mass();
        assertThat(twice / (0.13 - begun.mass())).isCloseTo(2, within(1e-6));
    }

    /** A mould that is 10 % larger is filled by the same weight; a pressed one holds 10 % more. */
    @Test
    void theMouldOfADraw() {
        Moulded.Pressed pressed = new Moulded.Pressed(MIX, 5e4, 1, MouldDimensions.Filling.usual(BALL), NONE);
        Maker press = Maker.of(pressed, BALL);
        double usual = press.make(draw(Input.HAND, 0), 1).mass();
        assertThat(press.make(draw(Input.HAND, 0), 1.1).mass()).isCloseTo(1.1 * usual, within(1e-9));
        // pressing harder, by the hand or in this one piece, packs denser, and alike
        double harder = press.make(draw(Input.PRESS, 2), 1).mass();
        assertThat(harder).isGreaterThan(usual);
        assertThat(press.make(draw(Input.PRESS_REPEAT, 2), 1).mass()).isCloseTo(harder, within(1e-12));
        double pressedTwice = Maker.of(
                        new Moulded.Pressed(MIX, 1e5, 1, MouldDimensions.Filling.usual(BALL), NONE), BALL)
                .make(draw(Input.HAND, 0), 1)
                .mass();
        assertThat(pressedTwice).isCloseTo(harder, within(1e-12));
        Maker fill = Maker.of(new Moulded.Filled(MIX, 0.13, Optional.empty(), NONE), BALL);
        assertThat(fill.make(draw(Input.PROMPT_YIELD, 0), 1.1).mass()).isCloseTo(0.13, within(1e-9));
    }

    /** A day in a room: what is left weighs less by its water and what it fizzed, and no less than its powder and oil. */
    @Test
    void driedPieces() {
        DryingPlan plan = DryingConditions.open(AIR, 86400).plan(BALL);
        Moulded.Filled filled = new Moulded.Filled(MIX, 0.13, Optional.empty(), plan);
        Piece dried = Maker.of(filled, BALL).make(draw(Input.PROMPT_YIELD, 0), 1);
        double powder = 0.13 / 1.03;
        assertThat(dried.mass()).isLessThan(0.13).isGreaterThan(powder * (1 + 0.02) * 0.98);
        assertThatNullPointerException()
                .isThrownBy(() -> new PlannedDrying(Missing.value(), plan))
                .withMessage("shape is null");
    }

    /** The air of each phase moves by the errors of the hygrometer and of the thermometer. */
    @Test
    void theAirOfADraw() {
        DryingPlan plan = DryingConditions.open(AIR, 86400).plan(BALL);
        List<DryingPhase> damp = PlannedDrying.moved(
                plan.phases(), draw(Input.ROOM_HUMIDITY, 0.04).making());
        assertThat(damp.get(0).air().humidity()).isCloseTo(0.54, within(1e-12));
        assertThat(damp.get(0).air().temperature()).isEqualTo(AIR.temperature());
        List<DryingPhase> warm = PlannedDrying.moved(
                plan.phases(), draw(Input.ROOM_TEMPERATURE, 1.5).making());
        assertThat(warm.get(0).air().temperature()).isCloseTo(AIR.temperature() + 1.5, within(1e-12));
        assertThat(warm.get(0).air().humidity()).isEqualTo(0.5);
        assertThat(warm.get(0).duration()).isEqualTo(86400);
    }

    @Test
    void inputsOfEachMaking() {
        assertThat(inputs(Weighed.of(0.13)))
                .containsExactly(Input.TRUE_DENSITY, Input.GAS_CAPACITY, Input.SCALE, Input.SCALE_OFFSET);
        assertThat(inputs(new Weighed(0.13, Optional.of(Priors.normal(0, 0.002)), Optional.of(MIX))))
                .containsExactly(Input.TRUE_DENSITY, Input.GAS_CAPACITY, Input.SCALE, Input.SCALE_OFFSET, Input.HAND);
        assertThat(inputs(new Moulded.Filled(MIX, 0.13, Optional.of(Priors.normal(0, 0.002)), NONE)))
                .containsExactly(
                        Input.GRAIN_SCORE,
                        Input.POWDER_SCORES,
                        Input.SCALE,
                        Input.SCALE_OFFSET,
                        Input.HAND,
                        Input.PROMPT_YIELD);
        MouldDimensions.Filling way = MouldDimensions.Filling.usual(BALL);
        List<Input> exact = inputs(new Moulded.Pressed(MIX, 5e4, 1, way, NONE));
        assertThat(exact)
                .contains(Input.LOOSE_SCORE, Input.TAPPED_SCORE, Input.PRESS_SCALE)
                .doesNotContain(Input.PRESS);
        DryingPlan plan = DryingConditions.open(AIR, 86400).plan(BALL);
        List<Input> dried = inputs(new Moulded.Pressed(MIX, 5e4, 1.1, way, plan));
        assertThat(dried)
                .contains(Input.PRESS, Input.FILM_RATE, Input.ROOM_HUMIDITY, Input.ACID_HYDRATION)
                .doesNotContain(Input.HYDRATE_SHARE, Input.RECIPE_SCORES);
        Blend salted = Blend.of(mix().dry("epsom salt", "18 to 22 g").build());
        Moulded.Filled other = new Moulded.Filled(salted, 0.13, Optional.empty(), plan);
        assertThat(inputs(other)).contains(Input.HYDRATE_SHARE, Input.RECIPE_SCORES);
        // three scores a powder, and one for each of five lines
        assertThat(MakingPriors.of(other, SCALE))
                .anySatisfy(row -> assertThat(row.columns()).isEqualTo(9))
                .anySatisfy(row -> assertThat(row.columns()).isEqualTo(5));
        Blend soda = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .build());
        assertThat(inputs(new Moulded.Filled(soda, 0.13, Optional.empty(), plan)))
                .doesNotContain(Input.ACID_HYDRATION);
        assertThat(prior(new Weighed(0.13, Optional.empty(), Optional.of(soda)), Input.GAS_CAPACITY)
                        .median())
                .isZero();
        assertThat(inputs(new Weighed(0.13, Optional.empty(), Optional.of(soda))))
                .hasSize(4);
        assertThatNullPointerException()
                .isThrownBy(() -> MakingPriors.of(Missing.value(), SCALE))
                .withMessage("making is null");
        assertThatNullPointerException()
                .isThrownBy(() -> MakingPriors.hand(Missing.value()))
                .withMessage("spread is null");
    }

    /** A hand presses again to a factor 1.15, a gauge to 1.05: one deviation up. */
    @Test
    void pressingAgain() {
        MouldDimensions.Filling way = MouldDimensions.Filling.usual(BALL);
        Prior hand = prior(new Moulded.Pressed(MIX, 5e4, 1.6, way, NONE), Input.PRESS_REPEAT);
        assertThat(hand.quantile(0.8413447)).isCloseTo(1.15, within(1e-6));
        Moulded.Pressed gauged = new Moulded.Pressed(MIX, 5e4, 1.1, way, NONE);
        assertThat(prior(gauged, Input.PRESS_REPEAT).quantile(0.8413447)).isCloseTo(1.05, within(1e-6));
        assertThat(prior(gauged, Input.PRESS).quantile(0.8413447)).isCloseTo(1.1, within(1e-6));
        assertThatThrownBy(() -> MakingPriors.pressing(Double.NaN)).isInstanceOf(Refusal.class);
        assertThat(MakingPriors.feel())
                .extracting(Factor::input)
                .containsExactly(Input.BRIDGE_EFFICIENCY, Input.PENDULAR_LIMIT, Input.FILM_RATE, Input.PROMPT_YIELD);
    }

    /**
     * The dried piece of a known mix: its powder and the oil that stays, by mass over by volume; gas per kilogram of that. A
     * mix without water starts no fizz.
     */
    @Test
    void makeupOfAKnownMix() {
        Blend dry = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "100 g")
                .wet("sunflower oil", "6 g")
                .build());
        Weighed weighed = new Weighed(0.13, Optional.empty(), Optional.of(dry));
        double density = 1.02 / (1 / dry.trueDensity() + 0.02 / dry.liquid().density());
        assertThat(prior(weighed, Input.TRUE_DENSITY).median()).isCloseTo(density, within(1e-9));
        assertThat(MakingPriors.driedPerPowder(dry)).isCloseTo(1.02, within(1e-12));
        double gas = dry.moles().gas() / 1.02;
        assertThat(prior(weighed, Input.GAS_CAPACITY).median()).isCloseTo(gas, within(1e-9));
        assertThat(prior(weighed, Input.GAS_CAPACITY).quantile(0.8413447)).isCloseTo(1.06 * gas, within(1e-5));
        double sigma = dry.trueDensitySigma(0.5);
        assertThat(prior(weighed, Input.TRUE_DENSITY).quantile(0.8413447))
                .isCloseTo(density * (1 + sigma), within(1e-3));
        Weighed known = new Weighed(0.13, Optional.empty(), Optional.of(dry), Optional.of(new Makeup(1800, 4)));
        assertThat(prior(known, Input.TRUE_DENSITY).median()).isCloseTo(1800, within(1e-9));
        assertThat(prior(known, Input.GAS_CAPACITY).quantile(0.8413447)).isCloseTo(4.4, within(1e-4));
        Prior usual = prior(Weighed.of(0.13), Input.TRUE_DENSITY);
        assertThat(usual.quantile(0.8413447)).isCloseTo(1900 * 1.03, within(1e-3));
    }

    /** What the water of a mix starts at once has left the piece, as gas by its weight, and is no capacity of it any more. */
    @Test
    void makeupOfADampMix() {
        double perPowder = MakingPriors.driedPerPowder(MIX);
        double prompt = (1.02 - perPowder) / Moles.CO2;
        assertThat(prompt).isGreaterThan(0);
        Weighed weighed = new Weighed(0.13, Optional.empty(), Optional.of(MIX));
        assertThat(prior(weighed, Input.GAS_CAPACITY).median())
                .isCloseTo((MIX.moles().gas() - prompt) / perPowder, within(1e-9));
    }

    /** In air of 96 % an error of the hygrometer ends 4 % above it; a prior that leaves no air is refused. */
    @Test
    void airThatIsPossible() {
        DryingPlan plan = DryingConditions.open(RoomAir.of(Units.celsius(21), 0.96), 86400)
                .plan(BALL);
        Factor damp = new Factor(Input.ROOM_HUMIDITY, Priors.normal(0, 0.05), INVENTED);
        Prior cut = MakingPriors.possible(damp, plan).prior();
        assertThat(cut.quantile(1 - 1e-9)).isLessThanOrEqualTo(0.04).isGreaterThan(0.0399);
        assertThat(MakingPriors.possible(damp, NONE)).isSameAs(damp);
        Factor hand = new Factor(Input.HAND, Priors.normal(0, 0.05), INVENTED);
        assertThat(MakingPriors.possible(hand, plan)).isSameAs(hand);
        assertThatThrownBy(() -> MakingPriors.possible(
                        new Factor(Input.ROOM_HUMIDITY, Priors.uniform(0.5, 0.9), INVENTED), plan))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.field()).isEqualTo(Input.ROOM_HUMIDITY.label()));
        // 5 C may be 5 K too high and no more: there is no colder room
        DryingPlan cold =
                DryingConditions.open(RoomAir.of(Units.celsius(5), 0.5), 86400).plan(BALL);
        Factor warm = new Factor(Input.ROOM_TEMPERATURE, Priors.uniform(-19, 19), INVENTED);
        assertThat(MakingPriors.possible(warm, cold).prior().quantile(0)).isCloseTo(-5, within(1e-9));
    }
}
