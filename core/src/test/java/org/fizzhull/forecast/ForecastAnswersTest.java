package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.medium.Bath;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: how the parts of a forecast in the bath, and of one out of the mould, belong together; limits BY HAND. */
class ForecastAnswersTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private static final FloatPredictor CENTRAL = FloatPredictor.standard().with(new Sampling(1, 0));
    private static final FloatPredictor DRAWN = FloatPredictor.standard().with(new Sampling(1, 128));
    private static final Making PRESSED =
            new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.usual(BALL), DryingPlan.none());

    private static List<String> codes(Forecast forecast) {
        return NoticeSearch.codes(forecast.notices());
    }

    private static double water(Bath bath, double cubicMetres) {
        return bath.density() * cubicMetres;
    }

    /** ANALYTIC: the plain limit is the water that the body displaces, with its inset; what is to spare is that less its mass. */
    @Test
    void thePlainLimit() {
        Question question = Question.still(BALL, 0.13);
        Forecast forecast = CENTRAL.forecast(question);
        double limit = water(question.bath(), Math.PI / 6 * Math.pow(0.065, 3));
        assertThat(forecast.limit().kind()).isEqualTo(Forecast.GoverningLimit.Kind.PLAIN);
        assertThat(forecast.limit().mass()).isCloseTo(limit, within(1e-9));
        assertThat(forecast.spare()).isCloseTo(limit - 0.13, within(1e-9));
        assertThat(forecast.limit().kind().word()).isEqualTo("plain");
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 20e-6));
        assertThat(CENTRAL.forecast(Question.still(loaded, 0.13)).limit().mass())
                .isCloseTo(limit, within(1e-9));
    }

    /** A bowl carries more as a boat, set down dry, than under water; dropped, its hollow is full. */
    @Test
    void theLimitOfABoat() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        Question dropped = Question.weighed(bowl, 0.13).into(Question.IntoBath.DROPPED);
        Forecast under = CENTRAL.forecast(dropped);
        assertThat(under.limit().kind()).isEqualTo(Forecast.GoverningLimit.Kind.PLAIN);
        assertThat(under.limit().mass()).isCloseTo(water(dropped.bath(), bowl.volume()), within(1e-9));
        Forecast placed = CENTRAL.forecast(dropped.into(Question.IntoBath.PLACED));
        assertThat(placed.limit().kind()).isEqualTo(Forecast.GoverningLimit.Kind.BOAT);
        assertThat(placed.limit().kind().word()).isEqualTo("boat");
        assertThat(placed.limit().mass()).isGreaterThan(under.limit().mass());
        assertThat(placed.spare()).isCloseTo(placed.limit().mass() - 0.13, within(1e-12));
        assertThat(CENTRAL.forecast(Question.weighed(BALL, 0.13).into(Question.IntoBath.PLACED))
                        .limit()
                        .kind())
                .isEqualTo(Forecast.GoverningLimit.Kind.PLAIN);
    }

    /** Without draws there is no chance in words; light pieces float and heavy ones sink. */
    @Test
    void centralValues() {
        Forecast light = CENTRAL.forecast(Question.weighed(BALL, 0.12));
        assertThat(light.verdict().answer().word()).isEqualTo("floats");
        assertThat(light.probability()).isEmpty();
        assertThat(light.likelihood()).isEmpty();
        assertThat(light.likelihoodToTheEnd()).isEmpty();
        assertThat(light.share()).isEmpty();
        assertThat(light.next()).isEmpty();
        assertThat(light.drivers()).isEmpty();
        assertThat(light.fizzLost()).isEmpty();
        assertThat(light.effervescence()).isEmpty();
        assertThat(codes(light)).contains("central-values");
        Forecast heavy = CENTRAL.forecast(Question.weighed(BALL, 0.17));
        assertThat(heavy.verdict().answer().word()).isEqualTo("sinks");
        assertThat(heavy.spareAtDrop().low())
                .isEqualTo(heavy.spareAtDrop().high())
                .isNegative();
        assertThat(heavy.mass()).isEmpty();
        assertThat(CENTRAL.forecast(Question.still(BALL, 0.12)).fizzTime()).isEmpty();
        assertThat(CENTRAL.forecast(Question.still(BALL, 0.12)).effervescence()).isEmpty();
    }

    @Test
    void chancesInWords() {
        Forecast forecast = DRAWN.forecast(Question.weighed(BALL, 0.145));
        Probability chance = forecast.probability().orElseThrow();
        assertThat(forecast.likelihood()).hasValue(Probability.Likelihood.of(chance.floatsAtOnce()));
        assertThat(forecast.likelihoodToTheEnd()).hasValue(Probability.Likelihood.of(chance.floatsToTheEnd()));
        assertThat(forecast.share()).as("of one piece on the scale").isEmpty();
        assertThat(codes(forecast)).doesNotContain("central-values", "shallow-bath");
        assertThat(forecast.aim()).isEmpty();
        assertThat(DRAWN)
                .hasToString("float predictor: " + DRAWN.factors().rows().size()
                        + " uncertain inputs, 128 draws from seed 1");
    }

    /** What decides is told largest first, and every uncertain input once. */
    @Test
    void whatDecides() {
        Forecast forecast = DRAWN.forecast(Question.weighed(BALL, 0.145));
        assertThat(forecast.drivers()).hasSameSizeAs(forecast.factors().rows());
        assertThat(forecast.drivers()).isSortedAccordingTo(Comparator.comparingDouble(driver -> -driver.share()));
        assertThat(forecast.drivers()).extracting(Forecast.Driver::input).doesNotHaveDuplicates();
        // inputs of equal share stand in the order of the table
        List<Input> rows =
                forecast.factors().rows().stream().map(row -> row.input()).toList();
        for (int i = 1; i < forecast.drivers().size(); i++) {
            Forecast.Driver a = forecast.drivers().get(i - 1);
            Forecast.Driver b = forecast.drivers().get(i);
            if (a.share() == b.share()) {
                assertThat(rows.indexOf(a.input())).isLessThan(rows.indexOf(b.input()));
            }
        }
    }

    /** BY DEFINITION: the quick answers are those of the whole forecast, draw by draw. */
    @Test
    void partsOfAForecastAgreeWithIt() {
        for (Question question : List.of(
                Question.weighed(BALL, 0.145),
                Question.of(BALL, PRESSED),
                Question.weighed(BALL, 0.14).spread(Priors.normal(0, 0.003)))) {
            Forecast whole = DRAWN.forecast(question);
            Forecast.BathOutcome part = DRAWN.outcome(question);
            assertThat(part.critical().toTheEnd())
                    .containsExactly(whole.critical().toTheEnd());
            assertThat(part.probability()).isEqualTo(whole.probability());
            assertThat(part.fizzTime()).isEqualTo(whole.fizzTime());
            assertThat(part.mass()).isEqualTo(whole.mass());
            assertThat(DRAWN.critical(question).atOnce())
                    .containsExactly(whole.critical().atOnce());
            assertThat(whole.share().isPresent())
                    .isEqualTo(question.making().hand().isPresent() || question.making() instanceof Moulded);
            assertThat(whole.fizzLost().isPresent()).isEqualTo(question.making() instanceof Moulded);
            // where a fill scatters there is a weight to aim for, or a word that there is none
            boolean told = codes(whole).contains("no-aim");
            assertThat(whole.aim().isPresent() || told)
                    .isEqualTo(question.making().hand().isPresent());
            assertThat(whole.aim().isPresent() && told).isFalse();
        }
        Question question = Question.weighed(BALL, 0.12);
        assertThat(CENTRAL.attitudes(question))
                .isNotEmpty()
                .isEqualTo(CENTRAL.forecast(question).attitudes());
    }

    /** BY DEFINITION: a made piece has the weight of its middle draw; that of one on the scale is what was entered. */
    @Test
    void theWeightOfThePiece() {
        Forecast pressed = DRAWN.forecast(Question.of(BALL, PRESSED));
        Interval mass = pressed.mass().orElseThrow();
        assertThat(pressed.piece().mass()).isEqualTo(mass.median()).isBetween(mass.low(), mass.high());
        assertThat(mass.low()).isLessThan(mass.high());
        Forecast central = CENTRAL.forecast(Question.of(BALL, PRESSED));
        assertThat(central.mass()).hasValue(Interval.certain(central.piece().mass()));
        assertThat(DRAWN.forecast(Question.weighed(BALL, 0.145)).piece().mass()).isEqualTo(0.145);
    }

    /** The heaviest weight with a chance does not depend on the piece that is asked about, only on its shape and bath. */
    @Test
    void theHeaviestPieceOfAShape() {
        Bath salted = Bath.at(Units.celsius(38)).withSalt(1.5);
        CriticalWeights critical = DRAWN.critical(Question.weighed(BALL, 0.13).in(salted));
        double heaviest = DRAWN.heaviest(BALL, salted, 0.5);
        assertThat(heaviest).isCloseTo(critical.heaviest(0.5), within(1e-3 * heaviest));
        assertThat(DRAWN.heaviest(BALL, salted, 0.9)).isLessThan(heaviest);
        double central = CENTRAL.heaviest(BALL);
        assertThat(CENTRAL.forecast(Question.weighed(BALL, 0.999 * central))
                        .verdict()
                        .answer()
                        .word())
                .isEqualTo("floats");
        assertThat(CENTRAL.forecast(Question.weighed(BALL, 1.001 * central))
                        .verdict()
                        .answer()
                        .word())
                .isEqualTo("sinks");
    }

    /** After a measurement: first orders without totals, and what was believed before beside what is believed now. */
    @Test
    void afterAMeasurement() {
        Question question = Question.weighed(BALL, 0.142);
        Observations seen = Observations.none().held(HeldPiece.of(0.147, 4));
        Forecast after = DRAWN.with(seen).forecast(question);
        Forecast before = DRAWN.forecast(question);
        assertThat(after.drivers())
                .hasSameSizeAs(after.factors().rows())
                .allSatisfy(driver -> assertThat(driver.total()).isNaN());
        assertThat(after.narrowing().orElseThrow().spareAtDrop()).hasValue(before.spareAtDrop());
        assertThat(codes(after)).contains("measured-lift-as");
        Forecast central = CENTRAL.with(seen).forecast(question);
        assertThat(central.narrowing().orElseThrow().spareAtDrop())
                .hasValue(CENTRAL.forecast(question).spareAtDrop());
    }

    private static PressForecast press(PressPredictor predictor, Making making) {
        return predictor.forecast(BALL, making);
    }

    private static String text(PressForecast forecast, String code) {
        return NoticeSearch.text(forecast.notices(), code);
    }

    /** BY DEFINITION: the second model's mass is that of the first in the ratio of their solid fractions. */
    @Test
    void theSecondOpinionOnAPressedPiece() {
        PressPredictor predictor = PressPredictor.standard().with(new Sampling(1, 0));
        PressForecast.PieceOut out = predictor.piece(BALL, PRESSED);
        double ratio = (out.central().solidFraction() + out.central().modelSpread())
                / out.central().solidFraction();
        assertThat(out.secondOpinion().orElseThrow())
                .isCloseTo(ratio * out.dampMass().median(), within(1e-12));
        Making filled = new Moulded.Filled(MIX, 0.15, Optional.empty(), DryingPlan.none());
        PressForecast.PieceOut fill = predictor.piece(BALL, filled);
        assertThat(fill.secondOpinion()).isEmpty();
        assertThat(fill.topPressure().median()).isEqualTo(fill.central().topPressure());
        // told above 0.03 of the solid fraction, in grams or as the difference itself
        for (Making making : List.of(PRESSED, filled)) {
            PressForecast forecast = press(predictor, making);
            PressForecast.PieceOut piece = forecast.piece().orElseThrow();
            double spread = Math.abs(piece.central().modelSpread());
            boolean told =
                    forecast.notices().stream().anyMatch(notice -> notice.code().equals("models-differ"));
            assertThat(told).isEqualTo(spread > 0.03);
            if (told && making == PRESSED) {
                assertThat(text(forecast, "models-differ"))
                        .contains(Math.round(1e3 * piece.dampMass().median()) + " g by this one")
                        .contains(Math.round(1e3 * piece.secondOpinion().orElseThrow()) + " g by the other");
            } else if (told) {
                assertThat(text(forecast, "models-differ")).contains("by " + Math.rint(1e3 * spread) / 1e3 + " of");
            }
        }
        // one weighed piece settles it
        WeighedPiece piece = WeighedPiece.byHand(0.15, 3e4);
        assertThat(press(predictor.with(piece), PRESSED).notices())
                .extracting(Notice::code)
                .contains("weighed-as")
                .doesNotContain("models-differ");
    }

    /** ANALYTIC (Janssen): from one open side less of the pressure gets into the mix than from two; which it was is told. */
    @Test
    void howItWasPressedIsTold() {
        PressPredictor predictor = PressPredictor.standard().with(new Sampling(1, 0));
        Making halves = new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none());
        Making plunger = new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.ONE_PLUNGER, DryingPlan.none());
        double two = share(text(press(predictor, halves), "two-halves"));
        double one = share(text(press(predictor, plunger), "one-plunger"));
        assertThat(one).isLessThan(two).isGreaterThan(20);
        assertThat(two).isLessThan(100);
    }

    private static double share(String text) {
        return Double.parseDouble(text.replaceAll(".*: (\\d+) % of the pressure.*", "$1"));
    }

    /** Fifteen pressures from none to 200 kPa; by the central values the band is the point itself. */
    @Test
    void theCurve() {
        PressForecast central = press(PressPredictor.standard().with(new Sampling(1, 0)), PRESSED);
        assertThat(central.curve()).hasSize(15).allSatisfy(point -> {
            assertThat(point.low()).isEqualTo(point.dampMass());
            assertThat(point.high()).isEqualTo(point.dampMass());
            assertThat(point.dampMass()).isCloseTo(point.dampDensity() * BALL.volume(), within(1e-9));
        });
        assertThat(central.curve().get(0).topPressure()).isZero();
        assertThat(central.curve().get(14).topPressure()).isEqualTo(200e3);
        // the point at 30 kPa is the piece pressed at 30 kPa
        assertThat(central.curve().get(6).dampMass())
                .isCloseTo(central.piece().orElseThrow().central().dampMass(), within(1e-12));
        PressForecast drawn = press(PressPredictor.standard().with(new Sampling(1, 128)), PRESSED);
        assertThat(drawn.curve()).allSatisfy(point -> assertThat(point.low()).isLessThan(point.high()));
    }

    /** Where two are equal, that it holds; else that it crumbles. */
    @Test
    void theLikeliestFirmness() {
        PressForecast.PieceOut out =
                PressPredictor.standard().with(new Sampling(1, 0)).piece(BALL, PRESSED);
        assertThat(feeling(out, 0.4, 0.4, 0.2)).isEqualTo(Pressed.Feel.HOLDS);
        assertThat(feeling(out, 0.2, 0.4, 0.4)).isEqualTo(Pressed.Feel.HOLDS);
        assertThat(feeling(out, 0.45, 0.1, 0.45)).isEqualTo(Pressed.Feel.CRUMBLES);
        assertThat(feeling(out, 0.4, 0.1, 0.5)).isEqualTo(Pressed.Feel.TOO_WET);
    }

    private static Pressed.Feel feeling(PressForecast.PieceOut out, double dry, double holds, double wet) {
        return new PressForecast.PieceOut(
                        out.making(),
                        out.central(),
                        out.topPressure(),
                        out.solidFraction(),
                        out.dampMass(),
                        out.handForce(),
                        out.saturation(),
                        out.strength(),
                        Map.of(Pressed.Feel.CRUMBLES, dry, Pressed.Feel.HOLDS, holds, Pressed.Feel.TOO_WET, wet),
                        out.narrowing())
                .likeliest();
    }
}
