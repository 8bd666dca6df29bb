package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.List;
import java.util.stream.IntStream;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.FloatCheck;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cheap question says what the dear one says, wherever both say it: each is the other's check. */
class FloatCheckTest {
    private static final FloatPredictor PREDICTOR = FloatPredictor.standard();
    private static final FloatPredictor CENTRAL = PREDICTOR.with(new Sampling(1, 0));
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sphere(diameter=65 mm)",
                "dome(diameter=80 mm)",
                "puck(diameter=70 mm, height=30 mm)",
                "egg(length=70 mm, diameter=50 mm)",
                "ring(diameter=90 mm, tube=30 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm)",
                "cone(diameter=60 mm, height=70 mm)",
                "capsule(length=80 mm, diameter=50 mm)",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "heart(width=70 mm, height=28 mm)",
                "bowl(diameter=90 mm, wall=15 mm)",
                "geode(diameter=80 mm, wall=14 mm, crystals=20 g)",
                "filled(water=143 g, like=figure)"
            })
    void isTheForecastWithoutDraws(String text) {
        Shape shape = ShapeText.read(text);
        FloatCheck check = PREDICTOR.check(Question.weighed(shape, 990 * shape.volume() + shape.insetMass()));
        for (double density : new double[] {900, 990, 1020, 1040, 1100}) {
            double mass = density * shape.volume() + shape.insetMass();
            Forecast forecast = CENTRAL.forecast(Question.weighed(shape, mass));
            FloatCheck.Floats floats = check.floats(mass);
            assertThat(floats).as("%s at %s kg/m3", text, density).isEqualTo(PREDICTOR.floats(shape, mass));
            assertThat(floats.mass()).isEqualTo(mass);
            assertThat(floats.spareAtDrop()).isEqualTo(forecast.spareAtDrop().median());
            assertThat(floats.toTheEnd()).isEqualTo(forecast.verdict().answer() == FloatVerdict.Answer.FLOATS);
            assertThat(floats.atOnce()).isEqualTo(forecast.critical().sharesAtOnce()[0] == 1);
        }
        assertThat(PREDICTOR.heaviest(shape)).isEqualTo(check.heaviest());
        double critical = CENTRAL.critical(check.question()).heaviest(0.5);
        assertThat(check.heaviest()).isEqualTo(critical);
        // by definition of the border, which is known to 0.03 %
        assertThat(check.floats(0.999 * critical).toTheEnd()).isTrue();
        assertThat(check.floats(1.001 * critical).toTheEnd()).isFalse();
    }

    /** Analytic: in still water a body floats up to the mass of the water that it pushes aside. */
    @Test
    void stillWaterIsArchimedes() {
        FloatCheck check = PREDICTOR.check(Question.still(BALL, grams(138)).in(Bath.at(celsius(38))));
        double limit = Bath.at(celsius(38)).density() * BALL.volume();
        assertThat(check.heaviest()).isCloseTo(limit, within(1e-12));
        assertThat(check.floats(limit - grams(0.01)).toTheEnd()).isTrue();
        assertThat(check.floats(limit + grams(0.01)).atOnce()).isFalse();
    }

    /** By definition: a boat that would tip is judged as dropped, whatever weight the check was made with. */
    @Test
    void eachWeightOfABoatIsJudgedForItself() {
        Shape bowl = Bowl.ofDiameterAndWall(millimetres(90), millimetres(15));
        FloatCheck check = PREDICTOR.check(Question.weighed(bowl, grams(150)));
        for (double mass = 100; mass < 220; mass += 20) {
            Question asked = Question.weighed(bowl, grams(mass));
            assertThat(check.floats(grams(mass)))
                    .as("%s g", mass)
                    .isEqualTo(PREDICTOR.check(asked).floats());
        }
        assertThat(PREDICTOR
                        .check(Question.weighed(bowl, grams(150)).into(Question.IntoBath.DROPPED))
                        .heaviest())
                .isLessThan(check.heaviest());
    }

    /** A measurement moves the central values of both alike. */
    @Test
    void knowsWhatWasMeasured() {
        Observations seen = Observations.none().rose(TimedPiece.rose(95).weighing(grams(150)));
        Question asked = Question.weighed(BALL, grams(142));
        FloatCheck.Floats floats = PREDICTOR.with(seen).check(asked).floats();
        assertThat(floats.spareAtDrop())
                .isEqualTo(CENTRAL.with(seen).forecast(asked).spareAtDrop().median())
                .isNotEqualTo(PREDICTOR.check(asked).floats().spareAtDrop());
    }

    /** With draws and without drivers: the chances are those of the whole forecast, to the last bit. */
    @Test
    void theChanceOfManyQuestionsIsThatOfOne() {
        Question asked = Question.weighed(BALL, grams(138)).spread(Priors.normal(0, grams(3)));
        sameChance(PREDICTOR, asked);
        // a bench: inputs that are drawn together
        Factors bench = Factors.standard();
        List<Factor> learned = List.of(
                bench.row(Input.BUBBLE_SIZE).orElseThrow(),
                bench.row(Input.GAS_LAYER).orElseThrow());
        List<List<Double>> rows = IntStream.range(0, 64)
                .mapToObj(i -> List.of(8e-4 + i * 1e-5, 0.6 - i * 4e-3))
                .toList();
        sameChance(PREDICTOR.with(bench.learned(learned, List.of(Input.BUBBLE_SIZE, Input.GAS_LAYER), rows)), asked);
    }

    private static void sameChance(FloatPredictor predictor, Question asked) {
        Forecast.BathOutcome outcome = predictor.outcome(asked);
        Forecast forecast = predictor.forecast(asked);
        assertThat(outcome.probability()).isEqualTo(forecast.probability()).isPresent();
        CriticalWeights critical = outcome.critical();
        assertThat(critical).isEqualTo(forecast.critical());
        assertThat(outcome.fizzTime()).isEqualTo(forecast.fizzTime());
    }

    @Test
    void refusesWhatNoPieceWeighs() {
        FloatCheck check = PREDICTOR.check(Question.weighed(BALL, grams(138)));
        assertThatThrownBy(() -> check.floats(grams(1380))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> check.floats(Double.NaN)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> PREDICTOR.floats(BALL, 138)).isInstanceOf(Refusal.class);
    }
}
