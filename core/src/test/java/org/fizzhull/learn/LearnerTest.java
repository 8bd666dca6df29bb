package org.fizzhull.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.BathResult;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Normal;
import org.junit.jupiter.api.Tag;
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
            Trial plain = Trial.of("row " + (i + 2), BALL, grams(MASSES[i]), BATH, BathResult.FLOATED);
            Trial full = i % 2 == 0 ? plain.lifting(grams(150), 4) : plain.fizzing(250);
            TrialModel model = new TrialModel(full, inputs);
            model.takeOwn(middle);
            double[] shown = model.predicted(values);
            for (int k = 0; k < shown.length; k++) {
                shown[k] += model.signs().get(k).deviation() * Normal.quantile(random.nextDouble(1e-12, 1));
            }
            BathResult result = shown[0] > 0 ? BathResult.FLOATED : BathResult.SANK;
            Trial seen = Trial.of(plain.name(), BALL, grams(MASSES[i]), BATH, result);
            trials.add(i % 2 == 0 ? seen.lifting(shown[1], 4) : seen.fizzing(Math.max(20, shown[1])));
        }
        return trials;
    }

    private static double[] drawn(SplittableRandom random) {
        double[] z = new double[LearnedInputs.of(false).size()];
        for (int k = 0; k < z.length; k++) {
            z[k] = Normal.quantile(random.nextDouble(1e-12, 1));
        }
        return z;
    }

    /**
     * STATISTICS: simulation-based calibration (Talts et al. 2018, arXiv:1804.06788, from memory): of truths from the prior
     * the rank among the draws of what is learned is uniform. Tested by Pearson's chi-squared on five classes, each input
     * by itself, at 0.1 % shared by all inputs (Bonferroni); refused trials count as simulated again.
     */
    private static void calibrated(int benches) {
        SplittableRandom random = new SplittableRandom(20);
        int inputs = LearnedInputs.of(false).size();
        int[][] classes = new int[inputs][5];
        int refused = 0;
        for (int i = 0; i < benches; i++) {
            double[] truth = drawn(random);
            List<List<Double>> draws;
            try {
                draws = Learner.learn(trials(truth, random), i).draws().draws();
            } catch (Refusal e) {
                refused++;
                i--;
                continue;
            }
            for (int k = 0; k < inputs; k++) {
                int at = k;
                long below =
                        draws.stream().filter(draw -> draw.get(at) < truth[at]).count();
                classes[k][(int) Math.min(4, 5 * below / draws.size())]++;
            }
        }
        double worst = 0;
        for (int[] counts : classes) {
            double expected = benches / 5.0;
            worst = Math.max(
                    worst,
                    Arrays.stream(counts)
                            .mapToDouble(n -> (n - expected) * (n - expected) / expected)
                            .sum());
        }
        System.out.println("calibration of " + benches + " benches: largest chi-squared " + worst + ", refused "
                + refused + ", classes " + Arrays.deepToString(classes));
        assertThat(worst).isLessThan(new ChiSquaredDistribution(4).inverseCumulativeProbability(1 - 1e-3 / inputs));
        assertThat(refused).isLessThan(1 + benches / 10);
    }

    @Test
    @Tag("proof")
    void manyBenchesAreCalibrated() {
        calibrated(500);
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
        LearnedDraws.Parameter speed = learned.draws().parameters().get(0);
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
        trials.add(Trial.of("row 8", BALL, grams(112), BATH, BathResult.SANK).lifting(grams(100), 4));
        Learned learned = Learner.learn(trials, 1);
        assertThat(learned.left()).extracting(Learned.Left::name).containsExactly("row 8");
        assertThatThrownBy(() -> Learner.learn(
                        List.of(
                                Trial.of("row 2", BALL, grams(110), BATH, BathResult.FLOATED)
                                        .lifting(grams(60), 4),
                                Trial.of("row 3", BALL, grams(140), BATH, BathResult.FLOATED)),
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
        Trial rose = Trial.of("row 2", BALL, grams(150), BATH, BathResult.ROSE)
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
        assertThatThrownBy(() -> Trial.of("row 3", BALL, grams(150), BATH, BathResult.SANK)
                        .leaving(millimetres(40)))
                .isInstanceOf(Refusal.class);
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }
}
