package org.fizzhull.forecast.model;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Statistics;

/**
 * What becomes of the draws of a question: the columns of {@link VoyageModel}, counted.
 *
 * <p>The chances to float are means of the shares of the batch in each draw ({@link CriticalWeights}), which vary less
 * than counts of outcomes. What becomes of the pieces that float and of those that do not is taken from the draws
 * themselves, and scaled so that all of it sums to 1.
 *
 * @param probability chances of a piece taken at random; empty for central values
 * @param riseTime s, of those that rise later; empty where fewer than 40 do
 * @param fizzTime s; empty in still water
 * @param graze share of the draws whose balance stays near zero for long
 */
public record OutcomeStatistics(
        Optional<Probability> probability, Optional<Interval> riseTime, Optional<Interval> fizzTime, double graze) {
    /** Draws below which no interval is made: its 2.5 % point would be the first of them. */
    private static final int FEWEST = 40;

    /** Still water without draws. */
    public static final OutcomeStatistics NONE =
            new OutcomeStatistics(Optional.empty(), Optional.empty(), Optional.empty(), 0);

    /**
     * {@return the outcomes of every draw of a question, as the columns of {@link VoyageModel}, and their critical
     * weights}
     *
     * @param prepared the prepared question
     * @param y columns that a {@link VoyageModel} has filled
     * @param critical critical weights of the same draws
     */
    public static OutcomeStatistics of(PreparedQuestion prepared, double[][] y, CriticalWeights critical) {
        // chances to float, from the share of the batch in each draw
        double[] once = critical.sharesAtOnce();
        double floats = Statistics.mean(once);
        double error = Statistics.meanError(once, MonteCarlo.BLOCKS);
        double end = Math.min(floats, Statistics.mean(critical.shares()));
        if (prepared.question().stillWater()) {
            OptionalDouble down = OptionalDouble.of(1 - floats);
            Probability probability =
                    new Probability(end, floats, error, OptionalDouble.of(0), down, OptionalDouble.empty());
            return new OutcomeStatistics(Optional.of(probability), Optional.empty(), Optional.empty(), 0);
        }
        // the draws tell what becomes of those that float, and of those that do not
        double drawn = Statistics.mean(y[VoyageModel.AT_ONCE]);
        double later = drawn < 1 ? (1 - floats) * Statistics.mean(y[VoyageModel.LATER]) / (1 - drawn) : 0;
        double sinks = drawn > 0 ? floats * Statistics.mean(y[VoyageModel.SINKS]) / drawn : 0;
        Probability probability = new Probability(
                end,
                floats,
                error,
                OptionalDouble.of(later),
                OptionalDouble.of(Math.max(0, 1 - floats - later)),
                OptionalDouble.of(Math.max(floats - end, sinks)));
        return new OutcomeStatistics(
                Optional.of(probability),
                interval(y[VoyageModel.RISE_TIME]),
                interval(y[VoyageModel.FIZZ_TIME]),
                Statistics.mean(y[VoyageModel.GRAZES]));
    }

    /**
     * {@return the outcome of one voyage, as the only row of those columns}
     *
     * @param y columns of one row
     */
    public static OutcomeStatistics central(double[][] y) {
        Optional<Interval> rise = y[VoyageModel.LATER][0] > 0
                ? Optional.of(Interval.certain(y[VoyageModel.RISE_TIME][0]))
                : Optional.empty();
        Interval fizz = Interval.certain(y[VoyageModel.FIZZ_TIME][0]);
        return new OutcomeStatistics(Optional.empty(), rise, Optional.of(fizz), y[VoyageModel.GRAZES][0]);
    }

    /** Of the values that are numbers; sorting puts the others last. */
    private static Optional<Interval> interval(double[] values) {
        double[] sorted = Statistics.sorted(values);
        int known = sorted.length;
        while (known > 0 && Double.isNaN(sorted[known - 1])) {
            known--;
        }
        return known < FEWEST ? Optional.empty() : Optional.of(interval95(Arrays.copyOf(sorted, known)));
    }

    /**
     * {@return median, 2.5 and 97.5 % point of draws in any order}
     *
     * @param draws the values; they stay as they are
     */
    public static Interval intervalOf(double[] draws) {
        return interval95(Statistics.sorted(draws));
    }

    /**
     * {@return the median and symmetric 95 % interval of sorted draws}
     *
     * @param sorted draws in ascending order
     */
    public static Interval interval95(double[] sorted) {
        return new Interval(
                Statistics.quantile(sorted, 0.5),
                Statistics.quantile(sorted, 0.025),
                Statistics.quantile(sorted, 0.975));
    }
}
