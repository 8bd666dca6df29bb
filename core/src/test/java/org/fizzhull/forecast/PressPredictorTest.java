package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Optional;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PressPredictorTest {
    private static final Workers POOL =
            (count, task) -> IntStream.range(0, count).parallel().forEach(task::run);
    private final IngredientTable table = IngredientTable.standard();
    private final Shape ball = Sphere.ofDiameter(millimetres(65));
    private final PressPredictor predictor = PressPredictor.standard();

    /** Recipe of validation/reference/packing.py, damp-ball: 2 % oil and 1.6 % water per dry mass. */
    private Blend chain() {
        return Blend.of(powders()
                .wet("sweet almond oil", "10.2 g")
                .wet("water", "8.16 g")
                .build());
    }

    private RecipeBuilder powders() {
        return new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g");
    }

    private static Making firm(Blend blend) {
        return new Moulded.Pressed(blend, 30e3, 1.6, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none());
    }

    private static Making fill(Blend blend, double mass) {
        return new Moulded.Filled(blend, mass, Optional.empty(), DryingPlan.none());
    }

    /**
     * OTHER PROGRAM, validation/reference/packing.py: 145.9 g at 30 kPa, here within 3 %; a prototype not kept: one
     * standard deviation of mass 11 to 17 % of it, from prototypes that shared none or all of the density errors.
     */
    @Test
    void massAndSpreadOfThePrototype() {
        PressForecast.PieceOut piece = predictor.piece(ball, firm(chain()));
        assertThat(inGrams(piece.dampMass().median())).isCloseTo(147, within(4.4));
        double sigma = (piece.dampMass().high() - piece.dampMass().low()) / (2 * 1.96);
        assertThat(sigma / piece.dampMass().median()).isBetween(0.11, 0.17);
    }

    /** A hand force is pressure times face: 30 kPa on a 65 mm disc is 99.55 N, as the median of a lognormal. */
    @Test
    void handForce() {
        PressForecast.PieceOut piece = predictor.with(new Sampling(1, 65536)).piece(ball, firm(chain()));
        assertThat(piece.handForce().median()).isCloseTo(99.55, within(0.5));
        // analytic: the hand's 1.6 against the word and its 1.15 from press to press, as the root of the sum of squares
        double sigma = Math.hypot(Math.log(1.6), Math.log(1.15));
        assertThat(piece.topPressure().high() / 30e3).isCloseTo(Math.exp(1.95996 * sigma), within(0.02));
    }

    /**
     * By definition: how a mix answers to pressing is as unsure of a fill as of a pressed piece. The pressure behind a fill
     * goes with the press scale, whose prior is x/÷ 3 (docs/physics/uncertainty.md, 2): 95 % of it span 3^(2 x 1.96) = 74.
     */
    @Test
    void thePressureBehindAFillIsUnsure() {
        Interval pressure = predictor.piece(ball, fill(chain(), 0.137)).topPressure();
        assertThat(pressure.high() / pressure.low()).isGreaterThan(20);
    }

    /** There and back: the mass that 30 kPa makes asks for 30 kPa; the scale of 0.5 g spans 2 x 1.96 x 0.5 g. */
    @Test
    void aFillTellsThePressureThatWouldMakeIt() {
        double mass = predictor.piece(ball, firm(chain())).central().dampMass();
        PressForecast.PieceOut piece = predictor.piece(ball, fill(chain(), mass));
        assertThat(piece.central().topPressure()).isCloseTo(30e3, within(1.0));
        assertThat(piece.topPressure().low()).isLessThan(30e3);
        assertThat(piece.topPressure().high()).isGreaterThan(30e3);
        assertThat(inGrams(piece.dampMass().high() - piece.dampMass().low())).isCloseTo(2 * 1.96 * 0.5, within(0.1));
    }

    /** Common practice, no source: powder without liquid crumbles, a flood is too wet. */
    @Test
    void feel() {
        Blend dry = Blend.of(powders().build());
        assertThat(predictor.piece(ball, firm(dry)).feel().get(Pressed.Feel.CRUMBLES))
                .isEqualTo(1);
        Blend flood = Blend.of(powders().wet("water", "80 g").build());
        assertThat(predictor.piece(ball, firm(flood)).likeliest()).isEqualTo(Pressed.Feel.TOO_WET);
        PressForecast.PieceOut lemon = predictor.piece(ball, firm(Blend.of(ExampleRecipes.lemon(table))));
        assertThat(lemon.likeliest()).isEqualTo(Pressed.Feel.HOLDS);
        assertThat(lemon.feel().values().stream().mapToDouble(x -> x).sum()).isCloseTo(1, within(1e-12));
    }

    @Test
    void threadsChangeNothing() {
        PressForecast.PieceOut one = predictor.piece(ball, firm(chain()));
        PressForecast.PieceOut many = predictor.with(POOL).piece(ball, firm(chain()));
        assertThat(many.dampMass()).isEqualTo(one.dampMass());
        assertThat(many.feel()).isEqualTo(one.feel());
    }

    /** Pressing harder makes it heavier, and the band holds the central value. */
    @Test
    void curveRises() {
        PressForecast forecast = predictor.forecast(chain(), ball);
        assertThat(forecast.piece()).isEmpty();
        double before = 0;
        for (PressForecast.Point point : forecast.curve()) {
            assertThat(point.dampMass()).isGreaterThan(before).isBetween(point.low(), point.high());
            before = point.dampMass();
        }
    }

    @Test
    void centralValuesOnly() {
        PressForecast forecast = predictor.with(new Sampling(1, 0)).forecast(ball, firm(chain()));
        PressForecast.PieceOut piece = forecast.piece().orElseThrow();
        assertThat(piece.dampMass().low()).isEqualTo(piece.central().dampMass());
        assertThat(piece.feel()).containsOnlyKeys(piece.central().feel());
    }

    @Test
    void moreThanTheMouldHoldsIsRefused() {
        assertThatThrownBy(() -> predictor.piece(ball, fill(chain(), grams(300))))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code()).isEqualTo("does-not-fit"));
        assertThatThrownBy(() -> predictor.piece(ball, fill(chain(), grams(20))))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code()).isEqualTo("out-of-range"));
    }

    /**
     * One mass whichever way it is asked: the damp piece of a press is the fill that makes it, and it goes into the bath
     * as that less the gas of the prompt reaction: 7 mol of CO2 per kg of free water (docs/physics/drying.md, 7), below
     * a gram.
     */
    @Test
    void pressAndFloatAgreeToTheGram() {
        for (Recipe recipe : new Recipe[] {
            ExampleRecipes.lemon(table), ExampleRecipes.harbourClay(table), ExampleRecipes.seaFoam(table)
        }) {
            Blend blend = Blend.of(recipe);
            double pressed = predictor.piece(ball, firm(blend)).central().dampMass();
            FloatPredictor floats = FloatPredictor.standard().with(new Sampling(1, 0));
            for (Making making : new Making[] {firm(blend), fill(blend, pressed)}) {
                double bath = floats.forecast(Question.of(ball, making)).piece().mass();
                double water = blend.liquid().water() / (1 + blend.liquid().ratio()) * pressed;
                assertThat(inGrams(pressed - bath))
                        .as(recipe.name())
                        .isCloseTo(inGrams(7 * 0.044009 * water), within(0.001))
                        .isBetween(0.0, 1.0);
            }
        }
    }

    /**
     * OTHER PROGRAM, a prototype not kept: a weighed piece takes the spread from 16 to 5.4 %, a third of it; here of
     * the next piece, pressed harder, into another mould too. ANALYTIC: of the weighed piece itself only its error is
     * left.
     */
    @Test
    void oneWeighedPieceNarrowsTheNext() {
        PressPredictor few = predictor.with(new Sampling(1, 8192));
        Making hard = new Moulded.Pressed(chain(), 100e3, 1.6, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none());
        WeighedPiece piece = WeighedPiece.byHand(grams(141), 30e3);
        Interval next = few.with(piece).piece(ball, hard).dampMass();
        Interval before = few.piece(ball, hard).dampMass();
        assertThat((next.high() - next.low()) / (before.high() - before.low())).isLessThan(5.4 / 16);
        Interval dome = few.with(piece.in(ball))
                .piece(Dome.ofDiameter(millimetres(80)), hard)
                .dampMass();
        assertThat(dome.high() - dome.low()).isLessThan(0.4 * (before.high() - before.low()));
        Interval again = few.with(WeighedPiece.byGauge(grams(141), 30e3, 1))
                .piece(
                        ball,
                        new Moulded.Pressed(chain(), 30e3, 1, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none()))
                .dampMass();
        assertThat(again.median()).isCloseTo(grams(141), within(grams(1)));
        assertThat(again.high() - again.low()).isLessThan(grams(8));
    }

    /**
     * ANALYTIC: the window and the verdict are read off the same draws, so the recipe's own liquid lies in the window
     * exactly where most of its pieces hold, whatever its amount.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 3, 6, 10, 15, 20, 25, 30, 40, 60, 120})
    void theWindowAndTheVerdictAgree(double grams) {
        for (String liquid : new String[] {"water", "sweet almond oil"}) {
            Blend blend = Blend.of(powders()
                    .wet(liquid, grams + " g")
                    .wet("lemon fragrance", "2 g")
                    .build());
            PressForecast forecast = predictor.with(new Sampling(1, 512)).forecast(ball, firm(blend));
            double own = blend.liquid().ratio();
            Pressed.LiquidWindow window = forecast.window();
            boolean inside = !window.isEmpty() && window.low() <= own && own <= window.high();
            assertThat(inside)
                    .as(liquid + " " + grams)
                    .isEqualTo(forecast.piece().orElseThrow().likeliest() == Pressed.Feel.HOLDS);
        }
    }

    /** Common practice, no source: 40 g of water in 510 g of powder foams in the bowl; 5 g does not. */
    @Test
    void muchWaterFoams() {
        Blend much = Blend.of(powders().wet("water", "40 g").build());
        assertThat(predictor.piece(ball, firm(much)).feel().get(Pressed.Feel.TOO_WET))
                .isGreaterThan(0.8);
        assertThat(predictor.forecast(ball, firm(much)).notices())
                .extracting("code")
                .contains("foams");
        Blend little = Blend.of(
                powders().wet("sweet almond oil", "10 g").wet("water", "5 g").build());
        assertThat(predictor.piece(ball, firm(little)).feel().get(Pressed.Feel.TOO_WET))
                .isLessThan(0.1);
    }

    @Test
    void anUnlikelyWeightIsSaidAndAnImpossibleOneRefused() {
        PressPredictor few = predictor.with(new Sampling(1, 512));
        Making firm = firm(chain());
        PressForecast heavy = few.with(WeighedPiece.byHand(grams(215), 30e3)).forecast(ball, firm);
        assertThat(heavy.notices()).anyMatch(notice -> notice.code().equals("weighed-unexpected"));
        assertThatThrownBy(() -> few.with(WeighedPiece.byHand(grams(400), 30e3)).forecast(ball, firm))
                .isInstanceOf(Refusal.class);
    }

    /**
     * A fill weighs what was weighed in, also where some of its draws are more than the mould holds: 210 g with 40 g of spread, 95 % of a
     * normal distribution within 1.96 deviations.
     */
    @Test
    void aFillWeighsWhatWasWeighedIn() {
        Making wide =
                new Moulded.Filled(chain(), grams(210), Optional.of(Priors.normal(0, grams(40))), DryingPlan.none());
        PressForecast.PieceOut piece = predictor.piece(ball, wide);
        assertThat(inGrams(piece.dampMass().high())).isCloseTo(288.4, within(1.0));
        assertThat(inGrams(piece.dampMass().low())).isCloseTo(131.6, within(1.0));
    }
}
