package org.fizzhull.forecast.model;

import java.io.Serializable;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.question.Scatter;
import org.fizzhull.numeric.BracketedRoot;
import org.fizzhull.quantity.Given;
import org.fizzhull.uncertainty.Statistics;
import org.jspecify.annotations.Nullable;

/**
 * The critical weight of every draw of a question: the heaviest piece of this shape and mix that floats. One
 * distribution gives the chance at every weight, the weight that floats with a given chance, the share of a batch and
 * its band.
 *
 * <p>In each draw shape, mix, dryness and every other uncertain input are held; density and porosity follow the weight.
 * The errors of hand and scale are not in it: they belong to a piece, not to the limit. <b>To the end</b> means: floats
 * at once, and stays up until a tenth of its dissolving mass is left, toppings and crystals not counted. <b>At once</b>
 * means: at the surface 20 s after it was let go. The search
 * looks at the weights near the border, a tenth of the weight on both sides and farther where it must, within what a
 * pressed piece of the volume can weigh (300 to 1,670 kg/m3, at most its solids without a pore): the critical weight is
 * the largest of them below which they all float. Draws that are not monotone in the weight, and draws that stop at an
 * end of the range, are counted ({@link #count}). Accuracy: 0.03 % of the weight.
 *
 * <p>Weights are those of the whole piece as it goes into the bath, what lies on it and in it included, kg. Draw i of
 * two questions with the same sampling and the same rows of uncertain inputs is the same state of the world, so that
 * two shapes may be compared draw by draw. Immutable; safe to share between threads.
 */
public final class CriticalWeights implements Serializable {
    private static final long serialVersionUID = 1;

    /** Weights are read off to this, kg. */
    private static final double ACCURACY = 1e-6;

    /** What the search of a draw met. */
    public enum Met {
        /** Every lighter piece looked at floats, every heavier one does not. */
        MONOTONE,
        /** Some lighter piece sinks or some heavier one floats. */
        NOT_MONOTONE,
        /** The heaviest piece of the range floats; its weight was taken. */
        ABOVE_RANGE,
        /** The lightest piece of the range sinks; its weight was taken. */
        BELOW_RANGE;

        @SuppressWarnings("EnumOrdinal") // an index into an array of this run, never stored
        int code() {
            return ordinal();
        }
    }

    /** Heaviest weight that floats to the end, kg, draw by draw. */
    private final double[] end;
    /** Heaviest weight that floats at once, kg, draw by draw. */
    private final double[] once;
    /** Mean weight of the pieces of the question's batch as they go into the bath, kg, draw by draw. */
    private final double[] mean;
    /** Weight into the bath per entered weight, draw by draw; kg per unit of {@link Scatter}. */
    private final double[] gain;
    /** What the search met, as the code of a {@link Met}, draw by draw. */
    private final double[] met;
    /** 1 where the piece of the draw itself floats to the end, else 0. */
    private final double[] own;
    /** 1 where the piece of the draw itself floats at once, else 0. */
    private final double[] ownAtOnce;
    /** Number of draws that met each {@link Met}. */
    private final int[] counts = new int[Met.values().length];
    /** {@link #end} in ascending order. */
    private final double[] sortedEnd;
    /** {@link #once} in ascending order. */
    private final double[] sortedOnce;
    /** Share of the question's own batch that floats to the end, draw by draw: asked for several times in an answer. */
    private final double[] shares;
    /** How the weights of the pieces of the batch scatter. */
    private final Scatter scatter;

    /**
     * From the columns of a {@link VoyageModel} or a {@link StillModel}.
     *
     * @param columns columns that such a model has filled, one place for each draw
     * @param scatter how the pieces of a batch scatter
     */
    public CriticalWeights(double[][] columns, Scatter scatter) {
        end = columns[VoyageModel.END];
        once = columns[VoyageModel.ONCE];
        mean = columns[VoyageModel.MEAN];
        gain = columns[VoyageModel.GAIN];
        met = columns[VoyageModel.MET];
        own = columns[VoyageModel.OWN];
        ownAtOnce = columns[VoyageModel.AT_ONCE];
        this.scatter = scatter;
        for (double m : met) {
            counts[(int) m]++;
        }
        sortedEnd = sorted(end);
        sortedOnce = sorted(once);
        shares = sharesToTheEnd(scatter.entered());
    }

    private static double[] sorted(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** {@return the number of draws; 1 for central values} */
    public int draws() {
        return end.length;
    }

    /**
     * {@return how many draws met something in the search}
     *
     * @param what what was met
     */
    public int count(Met what) {
        return counts[what.code()];
    }

    /**
     * {@return the share of the draws that met something in the search, 0 to 1}
     *
     * @param what what was met
     */
    public double share(Met what) {
        return count(what) / (double) draws();
    }

    /** {@return the heaviest weight that floats to the end, kg, draw by draw} */
    public double[] toTheEnd() {
        return end.clone();
    }

    /** {@return the heaviest weight that floats at once, kg, draw by draw; never less than {@link #toTheEnd}} */
    public double[] atOnce() {
        return once.clone();
    }

    /** {@return the median and 95 % interval of the heaviest weight that floats to the end, kg} */
    public Interval interval() {
        return OutcomeStatistics.interval95(sortedEnd);
    }

    /**
     * {@return the chance that a piece of exactly this weight, kg, floats to the end}
     *
     * @param weight weight of a piece as it goes into the bath, kg
     * @throws IllegalArgumentException for a weight that is not above 0
     */
    public double chanceAt(double weight) {
        return above(sortedEnd, weight);
    }

    /**
     * {@return the chance that a piece of exactly this weight, kg, floats at once}
     *
     * @param weight weight of a piece as it goes into the bath, kg
     * @throws IllegalArgumentException for a weight that is not above 0
     */
    public double chanceAtOnce(double weight) {
        return above(sortedOnce, weight);
    }

    /**
     * {@return the heaviest weight that floats to the end with a chance between 0 and 1, kg}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    public double heaviest(double chance) {
        return Statistics.quantile(sortedEnd, 1 - checked(chance));
    }

    /**
     * {@return the heaviest weight that floats at once with a chance between 0 and 1, kg}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    public double heaviestAtOnce(double chance) {
        return Statistics.quantile(sortedOnce, 1 - checked(chance));
    }

    /**
     * {@return the share of the question's own batch that floats to the end; a piece weighed once is a batch of its
     * readings}
     */
    public BatchShare batch() {
        return batch(shares.clone());
    }

    /**
     * {@return the share of a batch of another weight: the mean that is entered, damp for a fill and on the scale for a
     * weighed piece, kg} The weight of a piece pressed by a pressure cannot be chosen: then the question's own.
     *
     * @param entered mean weight as it is entered, kg
     */
    public BatchShare batchAt(double entered) {
        Given.finite("entered", entered);
        return batch(sharesToTheEnd(entered));
    }

    /** The batch of some shares, draw by draw, which are sorted in place. */
    private static BatchShare batch(double[] shares) {
        double average = Statistics.mean(shares);
        int nearlyAll = 0;
        int nearlyNone = 0;
        for (double share : shares) {
            nearlyAll += share >= BatchShare.NEARLY_ALL ? 1 : 0;
            nearlyNone += share <= BatchShare.NEARLY_NONE ? 1 : 0;
        }
        Arrays.sort(shares);
        double draws = shares.length;
        return new BatchShare(OutcomeStatistics.interval95(shares), average, nearlyAll / draws, nearlyNone / draws);
    }

    /** {@return the share of the batch that floats to the end in each draw of what is common to it} */
    public double[] shares() {
        return shares.clone();
    }

    /**
     * Share of the pieces of a batch that float to the end, draw by draw. Of one piece on the scale each draw has its
     * own reading, and so an outcome of 0 or 1. Where floating is not monotone in the weight, too, the piece of the
     * draw itself tells more than the critical weight.
     */
    private double[] sharesToTheEnd(double entered) {
        boolean asked = scatter.more(entered) == 0;
        if (asked && scatter.single()) {
            return own.clone();
        }
        double[] lighter = shares(end, entered);
        for (int i = 0; i < lighter.length && asked; i++) {
            lighter[i] = met[i] == Met.NOT_MONOTONE.code() ? own[i] : lighter[i];
        }
        return lighter;
    }

    /** {@return the share of the batch that floats at once in each draw} */
    public double[] sharesAtOnce() {
        return scatter.single() ? ownAtOnce.clone() : shares(once, scatter.entered());
    }

    /** Share of a batch of an entered mean, kg, that is lighter than a critical weight, draw by draw. */
    private double[] shares(double[] critical, double entered) {
        double[] lighter = new double[critical.length];
        double more = scatter.more(entered);
        for (int i = 0; i < lighter.length; i++) {
            lighter[i] = scatter.below((critical[i] - mean[i]) / gain[i] - more);
        }
        return lighter;
    }

    /**
     * {@return the heaviest mean weight, as it is entered, kg, at which a piece taken at random floats to the end with
     * a chance between 0 and 1; empty where there is none in the range, or the weight cannot be chosen}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    public OptionalDouble aim(double chance) {
        double wanted = checked(chance);
        if (!scatter.chosen()) {
            return OptionalDouble.empty();
        }
        double[] limits = sorted(entered());
        double high = limits[limits.length - 1] + scatter.widest();
        double low = limits[0] - scatter.widest();
        if (!(meanShare(low) > wanted && meanShare(high) < wanted)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(BracketedRoot.find(weight -> meanShare(weight) - wanted, low, high, ACCURACY));
    }

    /** Chance that a piece taken at random floats to the end, for an entered mean, kg. */
    private double meanShare(double entered) {
        return Statistics.mean(shares(end, entered));
    }

    /**
     * {@return the heaviest weight of one piece, as it is entered, kg, that floats to the end with a chance; empty as
     * {@link #aim}}
     *
     * @param chance probability, 0 to 1
     * @throws IllegalArgumentException for a chance that is not between 0 and 1
     */
    public OptionalDouble single(double chance) {
        double wanted = checked(chance);
        return scatter.chosen()
                ? OptionalDouble.of(Statistics.quantile(sorted(entered()), 1 - wanted))
                : OptionalDouble.empty();
    }

    /** The critical weights as they would be entered: of a fill the damp weight that becomes them. */
    private double[] entered() {
        double[] limits = new double[end.length];
        for (int i = 0; i < limits.length; i++) {
            limits[i] = scatter.entered() + (end[i] - mean[i]) / gain[i];
        }
        return limits;
    }

    /** Share of sorted weights that are this heavy or heavier; refuses what is no weight. */
    private static double above(double[] sorted, double weight) {
        if (!(weight > 0 && weight < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a weight is above 0 kg, not " + weight + " kg");
        }
        int at = Arrays.binarySearch(sorted, weight);
        int floats = at >= 0 ? at : -at - 1;
        return (sorted.length - floats) / (double) sorted.length;
    }

    /** The chance itself; refuses one outside 0 to 1, the ends included. */
    private static double checked(double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("a chance lies between 0 and 1, not " + chance);
        }
        return chance;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CriticalWeights that
                && Arrays.equals(end, that.end)
                && Arrays.equals(once, that.once)
                && Arrays.equals(mean, that.mean)
                && Arrays.equals(gain, that.gain)
                && Arrays.equals(met, that.met)
                && Arrays.equals(own, that.own)
                && Arrays.equals(ownAtOnce, that.ownAtOnce)
                && scatter.alike(that.scatter);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(end);
    }

    @Override
    public String toString() {
        Interval grams = interval().times(1e3);
        return "critical weight " + grams.median() + " g (" + grams.low() + " to " + grams.high() + ") of " + draws()
                + " draws";
    }
}
