package org.fizzhull.forecast.conditioning;

import java.util.List;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;

/**
 * All dunks of a question, in bowls alike: whether the scale feels the plume is one thing for all of them. With r_i
 * what the scale showed, R_i what the inputs make of it, w_i = 1/s_i^2 ({@link DunkReading}), W their sum and bars for means
 * weighted so,
 * <pre>  sum_i w_i (r_i - R_i)^2 = W (rbar - Rbar)^2 + sum_i w_i ((r_i - rbar) - (R_i - Rbar))^2,</pre>
 * so that the mean can be solved for and the rest weights the draw. The next piece differs from those that were dunked
 * by what two pieces of one mould differ by ({@link #own}): where the mean is solved for, that is put on the solved
 * value; where it only weights the draw, the mean is taken as true to sqrt(1/W + s_own^2). One instance serves one
 * thread.
 */
final class DunkReadings {
    /** The bowl of each dunk, in the order in which they were entered. */
    private final List<DunkReading> each;
    /** What the scale showed of each, r_i, kg. */
    private final double[] shown;
    /** Weight of each in the mean, w_i/W; they sum to 1. */
    private final double[] shares;
    /** Scratch: what the inputs make of each, R_i, kg. */
    private final double[] readings;
    /** W, 1/kg2. */
    private final double sum;
    /** Weighted mean of what the scale showed, kg. */
    private final double mean;
    /** What two pieces of one mould differ by, kg, one standard deviation. */
    private final double own;

    /** Weights the dunks by their errors: the better a reading is known, the more it counts in the mean. */
    DunkReadings(PreparedQuestion prepared, List<HeldPiece> pieces) {
        each = pieces.stream().map(piece -> new DunkReading(prepared, piece)).toList();
        int count = each.size();
        shown = pieces.stream().mapToDouble(HeldPiece::reading).toArray();
        shares = new double[count];
        readings = new double[count];
        double weights = 0;
        for (int i = 0; i < count; i++) {
            shares[i] = 1 / (each.get(i).deviation() * each.get(i).deviation());
            weights += shares[i];
        }
        for (int i = 0; i < count; i++) {
            shares[i] /= weights;
        }
        sum = weights;
        mean = mean(shown);
        own = HeldPiece.ownLift(prepared.question().shape(), prepared.question().bath());
    }

    /** Mean of a value of each dunk, weighted by their errors. */
    private double mean(double[] values) {
        double mean = 0;
        for (int i = 0; i < values.length; i++) {
            mean += shares[i] * values[i];
        }
        return mean;
    }

    /** Mean of what the scale showed, kg. */
    double shown() {
        return mean;
    }

    /** One standard deviation of that mean around the true one, kg. */
    double deviation() {
        return 1 / Math.sqrt(sum);
    }

    /** What two pieces of one mould differ by, kg, one standard deviation. */
    double own() {
        return own;
    }

    /** Mean of what it was to show, kg, where it feels the plume or does not. */
    double reading(double[] inputs, boolean plumeFelt) {
        for (int i = 0; i < readings.length; i++) {
            readings[i] = each.get(i).reading(inputs, plumeFelt);
        }
        return mean(readings);
    }

    /** Logarithm of the likelihood of how the readings lie around their mean, less a constant; 0 of one alone. */
    double logRest(double[] inputs, boolean plumeFelt) {
        return readings.length == 1 ? 0 : logRest(reading(inputs, plumeFelt));
    }

    /** Of the last readings. */
    private double logRest(double expected) {
        double off = 0;
        for (int i = 0; i < readings.length; i++) {
            double away = shown[i] - mean - (readings[i] - expected);
            off += shares[i] * away * away;
        }
        return -0.5 * sum * off;
    }

    /** Logarithm of the likelihood of all of them, less a constant: of a plume that is felt and of one that is not. */
    double logLikelihood(double[] inputs) {
        double felt = logLikelihood(inputs, true);
        double not = logLikelihood(inputs, false);
        double most = Math.max(felt, not);
        return most
                + Math.log(HeldPiece.PLUME_FELT * Math.exp(felt - most)
                        + (1 - HeldPiece.PLUME_FELT) * Math.exp(not - most));
    }

    /** Logarithm of the likelihood of all of them, less a constant, where the scale feels the plume or does not. */
    private double logLikelihood(double[] inputs, boolean plumeFelt) {
        double expected = reading(inputs, plumeFelt);
        double away = (mean - expected) / Math.hypot(own, deviation());
        return -0.5 * away * away + logRest(expected);
    }
}
