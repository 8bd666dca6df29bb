package org.fizzhull.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** Benches that are learned from simulated trials of invented pieces. */
class LearnerTest {
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double[] MASSES = {132, 137, 141, 144, 148, 153};

    /**
     * Six pieces of a bench whose scores are known: all weighed and looked at, some timed, some held under. What they show
     * is what the scores make of them, with the errors that the learner believes in.
     */
    private static List<Trial> trials(double[] truth, SplittableRandom random) {
        List<Factor> inputs = LearnedInputs.of(false);
        double[] values = new double[truth.length];
        double[] middle = new double[truth.length];
        for (int k = 0; k < values.length; k++) {
            values[k] = inputs.get(k).prior().quantile(Normal.cumulative(truth[k]));
            middle[k] = inputs.get(k).prior().median();
        }
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < MASSES.length; i++) {
            Trial plain = Trial.of("row " + (i + 2), BALL, grams(MASSES[i]), BATH, DroppedPiece.Result.FLOATED);
            Trial full = i % 2 == 0 ? plain.lifting(grams(150), 4) : plain.fizzing(250);
            TrialModel model = new TrialModel(full, inputs);
            model.takeOwn(middle);
            double[] shown = model.predicted(values);
            for (int k = 0; k < shown.length; k++) {
                shown[k] += model.signs().get(k).deviation() * Normal.quantile(random.nextDouble(1e-12, 1));
            }
            DroppedPiece.Result result = shown[0] > 0 ? DroppedPiece.Result.FLOATED : DroppedPiece.Result.SANK;
            Trial seen = Trial.of(plain.name(), BALL, grams(MASSES[i]), BATH, result);
            trials.add(i % 2 == 0 ? seen.lifting(shown[1], 4) : seen.fizzing(Math.max(20, shown[1])));
        }
        return trials;
    }

    /** By definition: trials that say one thing move the answer there and leave less doubt; the next question knows. */
    @Test
    void aBenchNarrowsTheNextForecast() {
        SplittableRandom random = new SplittableRandom(5);
        double[] truth = new double[LearnedInputs.of(false).size()];
        truth[Learner.inputs(false).indexOf(Input.RECESSION)] = 1;
        Learned learned = Learner.learn(trials(truth, random), 1);
        Question asked = Question.weighed(BALL, grams(142));
        FloatPredictor plain = FloatPredictor.standard().with(new Sampling(1, 1024));
        Forecast before = plain.forecast(asked);
        Forecast after = plain.with(learned.bench().factors()).forecast(asked);
        assertThat(width(after.spareAtDrop())).isLessThan(0.55 * width(before.spareAtDrop()));
        assertThat(width(after.fizzTime().orElseThrow()))
                .isLessThan(0.5 * width(before.fizzTime().orElseThrow()));
        assertThat(learned.inside()).isGreaterThanOrEqualTo(4);
        assertThat(learned.left()).isEmpty();
        Learned.Draws.Parameter speed = learned.draws().parameters().get(0);
        assertThat(speed.input()).isEqualTo(Input.RECESSION);
        assertThat(speed.shift()).isPositive();
        assertThat(speed.stillPriorPercent()).isLessThan(95);
    }

    /** The same trials and seed: the same draws. */
    @Test
    void sameTrialsSameBench() {
        List<Trial> trials = trials(new double[LearnedInputs.of(false).size()], new SplittableRandom(7));
        assertThat(Learner.learn(trials, 3).bench())
                .isEqualTo(Learner.learn(trials, 3).bench());
    }

    @Test
    void theRowThatDisagreesIsNamed() {
        List<Trial> trials =
                new ArrayList<>(trials(new double[LearnedInputs.of(false).size()], new SplittableRandom(9)));
        // a piece far below its float limit that sank
        trials.add(Trial.of("row 8", BALL, grams(112), BATH, DroppedPiece.Result.SANK)
                .lifting(grams(100), 4));
        Learned learned = Learner.learn(trials, 1);
        assertThat(learned.left()).extracting(Learned.Left::name).containsExactly("row 8");
        assertThatThrownBy(() -> Learner.learn(
                        List.of(
                                Trial.of("row 2", BALL, grams(110), BATH, DroppedPiece.Result.FLOATED)
                                        .lifting(grams(60), 4),
                                Trial.of("row 3", BALL, grams(140), BATH, DroppedPiece.Result.FLOATED)),
                        1))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("row 2");
        assertThatThrownBy(() -> Learner.learn(trials.subList(0, 1), 1)).isInstanceOf(Refusal.class);
    }

    /**
     * ANALYTIC: a ball that recedes at v for t is 2 v t narrower; a mould that holds more water is larger by the cube root.
     * Both hold at any value of the other inputs.
     */
    @Test
    void whatIsLeftAndWhatTheMouldHoldsAreMet() {
        List<Factor> inputs = LearnedInputs.of(false);
        double[] values =
                inputs.stream().mapToDouble(row -> row.prior().median()).toArray();
        Trial rose = Trial.of("row 2", BALL, grams(150), BATH, DroppedPiece.Result.ROSE)
                .rising(60)
                .leaving(millimetres(45));
        TrialModel model = new TrialModel(rose, inputs);
        double left = model.predicted(values)[2];
        double faster = millimetres(65) - left;
        values[0] *= 1.2;
        assertThat(millimetres(65) - model.predicted(values)[2]).isCloseTo(1.2 * faster, within(1e-6 * faster));
        assertThat(model.signs().get(2).what()).isEqualTo("left_mm");
        double holds = 998 * Math.PI / 6 * Math.pow(millimetres(65.8), 3);
        Trial filled = rose.holding(holds);
        assertThat(filled.sizeError()).isCloseTo(millimetres(0.8), within(millimetres(0.01)));
        double heavier =
                new TrialModel(filled, inputs).predicted(values)[0] - new TrialModel(rose, inputs).predicted(values)[0];
        // 5.4 cm3 more of water at 38 C, and gas and soaked water on 2.5 % more of surface
        assertThat(heavier).isBetween(grams(5.0), grams(5.6));
        assertThatThrownBy(() -> rose.holding(grams(300)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("row 2");
        assertThatThrownBy(() -> Trial.of("row 3", BALL, grams(150), BATH, DroppedPiece.Result.SANK)
                        .leaving(millimetres(40)))
                .isInstanceOf(Refusal.class);
    }

    /**
     * Pieces of one mould share its size: of six alike that lift 2 g more than the inputs say, either the gas clings more or the
     * mould is larger, and no number of them tells; of six moulds, each with an error of its own, the gas is better known.
     */
    @Test
    void theSizeOfAMouldIsSharedByItsPieces() {
        List<Trial> one = new ArrayList<>();
        List<Trial> each = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Trial dunk = Trial.of("row " + i, BALL, grams(142), BATH, DroppedPiece.Result.FLOATED)
                    .lifting(grams(150), 4);
            one.add(dunk);
            // six moulds, each with an error of its own: stated half a hundredth of a millimetre apart
            Shape other = Sphere.ofDiameter(millimetres(65 + 0.005 * i));
            each.add(Trial.of("row " + i, other, grams(142), BATH, DroppedPiece.Result.FLOATED)
                    .lifting(grams(150), 4));
        }
        Question asked = Question.weighed(Sphere.ofDiameter(millimetres(64)), grams(136));
        assertThat(width(taught(one, asked))).isGreaterThan(1.1 * width(taught(each, asked)));
    }

    private static Interval taught(List<Trial> trials, Question asked) {
        return FloatPredictor.standard()
                .with(Learner.learn(trials, 1).bench().factors())
                .forecast(asked)
                .spareAtDrop();
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }
}
