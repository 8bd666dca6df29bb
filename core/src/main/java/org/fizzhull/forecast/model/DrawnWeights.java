package org.fizzhull.forecast.model;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.numeric.BracketedRoot;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.jspecify.annotations.Nullable;

/**
 * {@link CriticalWeights} from the columns of a run: one row a draw, as {@link VoyageModel} fills them, and the spread of the
 * pieces of a batch around what was entered ({@link Scatter}). Both distributions are sorted once. Immutable; safe to
 * share between threads; equal by its columns.
 */
public final class DrawnWeights implements CriticalWeights {
    private static final long serialVersionUID = 1;

    /** Weights are read off to this, kg. */
    private static final double ACCURACY = 1e-6;

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
    public DrawnWeights(double[][] columns, Scatter scatter) {
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

    @Override
    public int draws() {
        return end.length;
    }

    @Override
    public int count(Met what) {
        return counts[what.code()];
    }

    @Override
    public double share(Met what) {
        return count(what) / (double) draws();
    }

    @Override
    public double[] toTheEnd() {
        return end.clone();
    }

    @Override
    public double[] atOnce() {
        return once.clone();
    }

    @Override
    public Interval interval() {
        return OutcomeStatistics.interval95(sortedEnd);
    }

    @Override
    public double chanceAt(double weight) {
        return above(sortedEnd, weight);
    }

    @Override
    public double chanceAtOnce(double weight) {
        return above(sortedOnce, weight);
    }

    @Override
    public double heaviest(double chance) {
        return Statistics.quantile(sortedEnd, 1 - checked(chance));
    }

    @Override
    public double heaviestAtOnce(double chance) {
        return Statistics.quantile(sortedOnce, 1 - checked(chance));
    }

    @Override
    public CriticalWeights.BatchShare batch() {
        return batch(shares.clone());
    }

    @Override
    public CriticalWeights.BatchShare batchAt(double entered) {
        Given.finite("entered", entered);
        return batch(sharesToTheEnd(entered));
    }

    /** The batch of some shares, draw by draw, which are sorted in place. */
    private static CriticalWeights.BatchShare batch(double[] shares) {
        double average = Statistics.mean(shares);
        int nearlyAll = 0;
        int nearlyNone = 0;
        for (double share : shares) {
            nearlyAll += share >= CriticalWeights.BatchShare.NEARLY_ALL ? 1 : 0;
            nearlyNone += share <= CriticalWeights.BatchShare.NEARLY_NONE ? 1 : 0;
        }
        Arrays.sort(shares);
        double draws = shares.length;
        return new CriticalWeights.BatchShare(
                OutcomeStatistics.interval95(shares), average, nearlyAll / draws, nearlyNone / draws);
    }

    @Override
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

    @Override
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

    @Override
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

    @Override
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
        return other instanceof DrawnWeights that
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
