package org.fizzhull.forecast.conditioning;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.LiftReading;
import org.fizzhull.forecast.prepared.PreparedQuestion;

/**
 * All readings of all dunks of a question, in bowls alike: whether the scale feels the plume is one thing for all of them.
 * With r_i what the scale showed, R_i what the inputs make of it, P the inverse of the covariance of r - R
 * ({@link DunkReading}; readings of two dunks do not covary), W the sum of all elements of P, w_i the sum of its row i over
 * W, and bars for means weighted by w,
 * <pre>  (r - R)^T P (r - R) = W (rbar - Rbar)^2 + d^T P d,   d_i = (r_i - rbar) - (R_i - Rbar),</pre>
 * so that the mean can be solved for and the rest weights the draw. The next piece differs from those that were dunked
 * by what two pieces of one mould differ by ({@link #own}): where the mean is solved for, that is put on the solved
 * value; where it only weights the draw, the mean is taken as true to sqrt(1/W + s_own^2). One instance serves one
 * thread.
 */
final class DunkReadings {
    /** The bowl of each dunk, in the order in which they were entered. */
    private final List<DunkReading> each;
    /** What the scale showed, r_i, kg, dunk after dunk. */
    private final double[] shown;
    /** Weight of each reading in the mean, w_i; they sum to 1. */
    private final double[] shares;
    /** Scratch: what the inputs make of each, R_i, kg. */
    private final double[] readings;
    /** Scratch: d_i, kg. */
    private final double[] away;
    /** P, 1/kg2. */
    private final DMatrixRMaj precision;
    /** W, 1/kg2. */
    private final double sum;
    /** Weighted mean of what the scale showed, kg. */
    private final double mean;
    /** What two pieces of one mould differ by, kg, one standard deviation. */
    private final double own;

    /** Weights the readings by their errors: the better one is known, the more it counts in the mean. */
    DunkReadings(PreparedQuestion prepared, List<HeldPiece> pieces) {
        each = pieces.stream().map(piece -> new DunkReading(prepared, piece)).toList();
        shown = pieces.stream()
                .flatMap(piece -> piece.readings().stream())
                .mapToDouble(LiftReading::reading)
                .toArray();
        int count = shown.length;
        readings = new double[count];
        away = new double[count];
        // the covariances of the dunks along the diagonal, then their inverse
        precision = new DMatrixRMaj(count, count);
        int from = 0;
        for (DunkReading dunk : each) {
            DMatrixRMaj block = new DMatrixRMaj(dunk.covariance());
            CommonOps_DDRM.invert(block);
            CommonOps_DDRM.insert(block, precision, from, from);
            from += block.numRows;
        }
        sum = CommonOps_DDRM.elementSum(precision);
        shares = CommonOps_DDRM.sumRows(precision, null).data;
        for (int i = 0; i < count; i++) {
            shares[i] /= sum;
        }
        mean = mean(shown);
        own = HeldPiece.ownLift(prepared.question().shape(), prepared.question().bath());
    }

    /** Mean of a value of each reading, weighted by their errors. */
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

    /** What the first of the pieces has to spare at the drop, kg. */
    double spare(double[] inputs) {
        return each.get(0).spare(inputs);
    }

    /** Mean of what it was to show, kg, where it feels the plume or does not. */
    double reading(double[] inputs, boolean plumeFelt) {
        int from = 0;
        for (DunkReading dunk : each) {
            dunk.readings(inputs, plumeFelt, readings, from);
            from += dunk.covariance().length;
        }
        return mean(readings);
    }

    /** Logarithm of the likelihood of how the readings lie around their mean, less a constant; 0 of one alone. */
    double logRest(double[] inputs, boolean plumeFelt) {
        return readings.length == 1 ? 0 : logRest(reading(inputs, plumeFelt));
    }

    /** Of the last readings. */
    private double logRest(double expected) {
        for (int i = 0; i < readings.length; i++) {
            away[i] = shown[i] - mean - (readings[i] - expected);
        }
        double off = 0;
        for (int i = 0; i < readings.length; i++) {
            for (int j = 0; j < readings.length; j++) {
                off += away[i] * precision.get(i, j) * away[j];
            }
        }
        return -0.5 * off;
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
        double off = (mean - expected) / Math.hypot(own, deviation());
        return -0.5 * off * off + logRest(expected);
    }
}
