package org.fizzhull.forecast.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.BatchShare;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.CriticalWeights.Met;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** BY HAND: shares, quantiles and chances of a few invented draws; the normal law from tables. */
class DrawnWeightsTest {
    private static final double DAY = 86400;

    /** On a scale that shows true: the hand alone scatters, 4 g around 131 g. */
    private static final Question BATCH = Question.weighed(Sphere.ofDiameter(0.065), 0.131)
            .on(new Scale(1e-9))
            .spread(Priors.normal(0, 0.004));

    private static final Question ONE = Question.weighed(Sphere.ofDiameter(0.065), 0.131);
    private static final Question STILL = Question.still(Sphere.ofDiameter(0.065), 0.131);

    private static PreparedQuestion prepared(Question question) {
        return PreparedQuestion.of(question, Factors.standard());
    }

    /** Four draws that float to the end up to 127, 131, 135 and 139 g, at once up to 2 g more. */
    private static double[][] four() {
        double[][] columns = new double[VoyageModel.CRITICAL_WIDTH][4];
        columns[VoyageModel.END] = new double[] {0.135, 0.127, 0.139, 0.131};
        columns[VoyageModel.ONCE] = new double[] {0.137, 0.129, 0.141, 0.133};
        Arrays.fill(columns[VoyageModel.MEAN], 0.131);
        Arrays.fill(columns[VoyageModel.GAIN], 1);
        columns[VoyageModel.OWN] = new double[] {1, 0, 1, 0};
        columns[VoyageModel.AT_ONCE] = new double[] {1, 0, 1, 1};
        return columns;
    }

    private static DrawnWeights weights(Question question, double[][] columns) {
        return new DrawnWeights(columns, Scatter.of(prepared(question)));
    }

    @Test
    void weightsOfTheDraws() {
        DrawnWeights four = weights(ONE, four());
        assertThat(four.draws()).isEqualTo(4);
        assertThat(four.toTheEnd()).containsExactly(0.135, 0.127, 0.139, 0.131);
        assertThat(four.atOnce()).containsExactly(0.137, 0.129, 0.141, 0.133);
        assertThat(four.chanceAt(0.133)).isEqualTo(0.5);
        assertThat(four.chanceAt(0.131)).isEqualTo(0.75);
        assertThat(four.chanceAt(0.14)).isZero();
        assertThat(four.chanceAtOnce(0.136)).isEqualTo(0.5);
        assertThat(four.chanceAtOnce(0.1)).isEqualTo(1);
        assertThat(four.heaviest(0.5)).isCloseTo(0.133, within(1e-12));
        assertThat(four.heaviestAtOnce(0.5)).isCloseTo(0.135, within(1e-12));
        // at probabilities 1/8, 3/8, 5/8 and 7/8 stand the draws themselves
        assertThat(four.heaviest(0.875)).isCloseTo(0.127, within(1e-12));
        assertThat(four.interval()).isEqualTo(new Interval(0.133, 0.127, 0.139));
        assertThat(four).hasToString("critical weight 133.0 g (127.0 to 139.0) of 4 draws");
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> four.chanceAt(bad)).isInstanceOf(IllegalArgumentException.class);
        }
        for (double bad : new double[] {0, 1, Double.NaN}) {
            assertThatThrownBy(() -> four.heaviest(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> four.heaviestAtOnce(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> four.single(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> four.aim(bad)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** One weighed piece floats in a draw or not; another weight than its own is compared with the limits of the draws. */
    @Test
    void onePiece() {
        DrawnWeights four = weights(ONE, four());
        assertThat(four.shares()).containsExactly(1, 0, 1, 0);
        assertThat(four.sharesAtOnce()).containsExactly(1, 0, 1, 1);
        assertThat(four.batch().mean()).isEqualTo(0.5);
        assertThat(four.batch().nineOfTen()).isEqualTo(0.5);
        assertThat(four.batch().oneOfTen()).isEqualTo(0.5);
        assertThat(four.batchAt(0.137).mean()).isEqualTo(0.25);
        assertThat(four.batchAt(0.120).mean()).isEqualTo(1);
    }

    /** Limits at -1, 0, 1 and 2 standard deviations of the hand: shares 0.1587, 0.5, 0.8413 and 0.9772 of the batch. */
    @Test
    void aBatch() {
        DrawnWeights four = weights(BATCH, four());
        double[] shares = {0.8413447, 0.1586553, 0.9772499, 0.5};
        assertThat(four.shares()).containsExactly(shares, within(1e-6));
        BatchShare batch = four.batch();
        assertThat(batch.mean()).isCloseTo(0.6193125, within(1e-6));
        assertThat(batch.nineOfTen()).isEqualTo(0.25);
        assertThat(batch.oneOfTen()).isZero();
        assertThat(batch.share().low()).isCloseTo(0.1586553, within(1e-6));
        assertThat(batch.share().high()).isCloseTo(0.9772499, within(1e-6));
        assertThat(batch.share().median()).isCloseTo((0.5 + 0.8413447) / 2, within(1e-6));
        // 4 g more are one deviation less
        assertThat(four.batchAt(0.135).mean()).isCloseTo((0.0227501 + 0.1586553 + 0.5 + 0.8413447) / 4, within(1e-6));
        assertThat(four.batchAt(0.135).oneOfTen()).isEqualTo(0.25);
        // limits lie evenly around 133 g
        assertThat(four.aim(0.5).orElseThrow()).isCloseTo(0.133, within(2e-6));
        assertThat(four.single(0.5).orElseThrow()).isCloseTo(0.133, within(1e-12));
        assertThat(four.single(0.875).orElseThrow()).isCloseTo(0.127, within(1e-12));
        // at once half a deviation more
        assertThat(four.sharesAtOnce()[3]).isCloseTo(0.6914625, within(1e-6));
    }

    /** Of a piece that gains 2 g for each gram of the hand, a spare of 8 g is one deviation of 4 g. */
    @Test
    void piecesThatGainMore() {
        double[][] columns = four();
        Arrays.fill(columns[VoyageModel.GAIN], 2);
        DrawnWeights four = weights(BATCH, columns);
        assertThat(four.shares()[2]).isCloseTo(0.8413447, within(1e-6));
        assertThat(four.single(0.5).orElseThrow()).isCloseTo(0.132, within(1e-12));
    }

    /** Where lighter does not mean floating, the piece of the draw itself tells. */
    @Test
    void whatIsNotMonotone() {
        double[][] columns = four();
        columns[VoyageModel.MET] = new double[] {1, 0, 2, 3};
        columns[VoyageModel.OWN] = new double[] {0, 1, 1, 1};
        DrawnWeights four = weights(BATCH, columns);
        assertThat(four.count(Met.NOT_MONOTONE)).isEqualTo(1);
        assertThat(four.share(Met.BELOW_RANGE)).isEqualTo(0.25);
        assertThat(four.share(Met.ABOVE_RANGE)).isEqualTo(0.25);
        assertThat(four.shares()[0]).isZero();
        assertThat(four.shares()[1]).isCloseTo(0.1586553, within(1e-6));
        assertThat(four.batchAt(0.135).mean()).isCloseTo((0.0227501 + 0.1586553 + 0.5 + 0.8413447) / 4, within(1e-6));
    }

    /** 48 draws: 36 float at once, 24 to the end; 6 rise later, 24 sink later; all are gone after 1 to 48 s. */
    private static double[][] many() {
        double[][] y = new double[VoyageModel.CRITICAL_WIDTH][48];
        Arrays.fill(y[VoyageModel.GAIN], 1);
        Arrays.fill(y[VoyageModel.RISE_TIME], Double.NaN);
        for (int i = 0; i < 48; i++) {
            y[VoyageModel.AT_ONCE][i] = i % 4 < 3 ? 1 : 0;
            y[VoyageModel.OWN][i] = i % 2;
            y[VoyageModel.LATER][i] = i % 8 == 7 ? 1 : 0;
            y[VoyageModel.SINKS][i] = i % 4 == 0 || i % 4 == 2 ? 1 : 0;
            y[VoyageModel.GRAZES][i] = i % 3 == 0 ? 1 : 0;
            y[VoyageModel.FIZZ_TIME][i] = i + 1;
        }
        return y;
    }

    @Test
    void chancesOfTheDraws() {
        double[][] y = many();
        CriticalWeights critical = weights(ONE, y);
        OutcomeStatistics told = OutcomeStatistics.of(prepared(ONE), y, critical);
        Probability chance = told.probability().orElseThrow();
        assertThat(chance.floatsToTheEnd()).isEqualTo(0.5);
        assertThat(chance.floatsAtOnce()).isEqualTo(0.75);
        assertThat(chance.risesLater().orElseThrow()).isCloseTo(0.125, within(1e-12));
        assertThat(chance.staysDown().orElseThrow()).isCloseTo(0.125, within(1e-12));
        assertThat(chance.sinksLater().orElseThrow()).isCloseTo(0.5, within(1e-12));
        assertThat(told.graze()).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(told.riseTime()).isEmpty();
        // the draw of rank i stands at (i - 1/2)/48: 2.5 % lies at rank 1.7, 97.5 % at 47.3
        Interval fizz = told.fizzTime().orElseThrow();
        assertThat(fizz.median()).isCloseTo(24.5, within(1e-9));
        assertThat(fizz.low()).isCloseTo(1.7, within(1e-9));
        assertThat(fizz.high()).isCloseTo(47.3, within(1e-9));
        // forty that rise are enough for a time
        for (int i = 0; i < 40; i++) {
            y[VoyageModel.RISE_TIME][i] = 40 - i;
        }
        assertThat(OutcomeStatistics.of(prepared(ONE), y, critical)
                        .riseTime()
                        .orElseThrow()
                        .median())
                .isCloseTo(20.5, within(1e-9));
        y[VoyageModel.RISE_TIME][0] = Double.NaN;
        assertThat(OutcomeStatistics.of(prepared(ONE), y, critical).riseTime()).isEmpty();
    }

    /** In still water nothing rises later, and what does not float stays down. */
    @Test
    void chancesInStillWater() {
        double[][] y = many();
        OutcomeStatistics told = OutcomeStatistics.of(prepared(STILL), y, weights(STILL, y));
        Probability chance = told.probability().orElseThrow();
        assertThat(chance.floatsAtOnce()).isEqualTo(0.75);
        assertThat(chance.risesLater()).isEqualTo(OptionalDouble.of(0));
        assertThat(chance.staysDown().orElseThrow()).isCloseTo(0.25, within(1e-12));
        assertThat(chance.sinksLater()).isEmpty();
        assertThat(told.fizzTime()).isEmpty();
    }

    @Test
    void centralValues() {
        double[][] y = new double[VoyageModel.CRITICAL_WIDTH][1];
        y[VoyageModel.FIZZ_TIME][0] = 120;
        y[VoyageModel.RISE_TIME][0] = 60;
        y[VoyageModel.GRAZES][0] = 1;
        assertThat(OutcomeStatistics.central(y).riseTime()).isEmpty();
        y[VoyageModel.LATER][0] = 1;
        OutcomeStatistics central = OutcomeStatistics.central(y);
        assertThat(central.riseTime()).hasValue(Interval.certain(60));
        assertThat(central.fizzTime()).hasValue(Interval.certain(120));
        assertThat(central.graze()).isEqualTo(1);
        assertThat(OutcomeStatistics.intervalOf(new double[] {3, 1, 2})).isEqualTo(new Interval(2, 1, 3));
    }

    /** One of four is never ready; sixty days are the longest that is told. */
    @Test
    void timesToReady() {
        ReadyTimes times = ReadyTimes.of(new double[] {3 * DAY, Double.POSITIVE_INFINITY, DAY, 2 * DAY});
        assertThat(times.draws()).isEqualTo(4);
        assertThat(times.times()).containsExactly(DAY, 2 * DAY, 3 * DAY);
        assertThat(times.within(2 * DAY)).isEqualTo(0.5);
        assertThat(times.within(0)).isZero();
        assertThat(times.late()).isEqualTo(0.25);
        assertThat(times.interval()).hasValue(new Interval(2.5 * DAY, DAY, 60 * DAY));
        assertThat(ReadyTimes.of(new double[] {DAY, 61 * DAY, 61 * DAY}).interval())
                .isEmpty();
        assertThat(ReadyTimes.of(new double[] {DAY, 2 * DAY, 60 * DAY}).interval())
                .hasValue(new Interval(2 * DAY, DAY, 60 * DAY));
        assertThatThrownBy(() -> times.within(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
