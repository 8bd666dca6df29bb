package org.fizzhull.forecast.measured;

import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Prior;

/**
 * Solves the speed of recession for the fizz time of one piece. A faster piece makes more gas, may float for it, and then
 * lasts longer on its dry top: so there can be two roots, one sunk and one afloat, and the range is searched in steps.
 * Where a rise or a lift was measured too, what is solved for that follows at each speed, and the weight is that of both.
 */
final class FizzPin {
    /** The fizz time times the speed differs at most by this, in logarithms: the share of a piece that is wet. */
    private static final double REACH = 0.75;

    private static final int STEPS = 10;
    private static final int MOST_PASSES = 12;
    private static final double CLOSE = 5e-4;
    private static final double SLOPE_STEP = 0.01;

    private final TimedVoyage voyage;
    private final TimedPiece piece;
    private final int column;
    private final Prior prior;
    private final Optional<MeasuredPin> rise;
    private final double[] roots = new double[STEPS];
    private final double[] weights = new double[STEPS];
    private final double[] times = new double[STEPS + 1];

    /** Of the last evaluation. */
    private double riseWeight;

    private boolean riseNear;

    FizzPin(TimedVoyage voyage, TimedPiece piece, int column, Prior prior, Optional<MeasuredPin> rise) {
        this.voyage = voyage;
        this.piece = piece;
        this.column = column;
        this.prior = prior;
        this.rise = rise;
    }

    /** A time that may truly have been there to be measured, s. */
    double truth(double uniform) {
        return piece.time() + piece.deviation() * Normal.quantile(uniform);
    }

    /**
     * Puts the speed, and with a rise or a lift what is solved for that, into the inputs.
     *
     * @param time true fizz time, s
     * @param choice from 0 to 1, between roots
     * @return logarithm of the weight
     */
    double pin(double[] inputs, double time, double choice) {
        if (!(time > 0)) {
            return Double.NEGATIVE_INFINITY;
        }
        riseNear = false;
        double middle = nearby(inputs, time);
        double step = 2 * REACH / STEPS;
        Arrays.fill(times, Double.NaN);
        if (rise.isPresent()) {
            around(inputs, time, middle, step);
        } else {
            for (int i = 0; i <= STEPS; i++) {
                times[i] = time(inputs, middle + (i - STEPS / 2) * step);
            }
        }
        int found = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < STEPS; i++) {
            if (times[i] > time == times[i + 1] > time || Double.isNaN(times[i] + times[i + 1])) {
                continue;
            }
            double low = middle + (i - STEPS / 2) * step;
            double root = root(inputs, time, low, times[i], low + step, times[i + 1]);
            double weight = Double.isNaN(root) ? Double.NEGATIVE_INFINITY : weight(inputs, root);
            if (weight > Double.NEGATIVE_INFINITY) {
                roots[found] = root;
                weights[found++] = weight;
                most = Math.max(most, weight);
            }
        }
        return found == 0 ? Double.NEGATIVE_INFINITY : chosen(inputs, choice, found, most);
    }

    /** From the middle to where the time is met: a known rise leaves one root, a slower piece lasts longer. */
    private void around(double[] inputs, double time, double middle, double step) {
        int i = STEPS / 2;
        times[i] = time(inputs, middle);
        int to = times[i] > time ? 1 : -1;
        while (i > 0 && i < STEPS && times[i] > time == to > 0 && !Double.isNaN(times[i])) {
            i += to;
            times[i] = time(inputs, middle + (i - STEPS / 2) * step);
        }
    }

    /** Logarithm of a speed not far from the root: the fizz time goes nearly as one over the speed. */
    private double nearby(double[] inputs, double time) {
        double log = Math.log(prior.median());
        for (int pass = 0; pass < 2; pass++) {
            double plain = time(inputs, log);
            log += Double.isNaN(plain) ? 0 : Math.log(plain / time);
        }
        return log;
    }

    private double chosen(double[] inputs, double choice, int found, double most) {
        double sum = 0;
        for (int k = 0; k < found; k++) {
            sum += Math.exp(weights[k] - most);
        }
        double left = choice * sum;
        int taken = 0;
        while (taken < found - 1 && left >= Math.exp(weights[taken] - most)) {
            left -= Math.exp(weights[taken++] - most);
        }
        place(inputs, roots[taken]);
        return most + Math.log(sum);
    }

    private double root(double[] inputs, double time, double low, double atLow, double high, double atHigh) {
        double a = low;
        double b = high;
        double fa = Math.log(atLow / time);
        double fb = Math.log(atHigh / time);
        int side = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double middle = a + fa / (fa - fb) * (b - a);
            double f = Math.log(time(inputs, middle) / time);
            if (Math.abs(f) <= CLOSE) {
                return middle;
            }
            if (Double.isNaN(f)) {
                return Double.NaN;
            }
            if (f > 0 == fa > 0) {
                a = middle;
                fa = f;
                fb = side > 0 ? fb / 2 : fb;
                side = 1;
            } else {
                b = middle;
                fb = f;
                fa = side < 0 ? fa / 2 : fa;
                side = -1;
            }
        }
        return Double.NaN;
    }

    /** Weight of a root, with that of the rise at it. */
    private double weight(double[] inputs, double root) {
        double before = time(inputs, root - SLOPE_STEP);
        double after = time(inputs, root + SLOPE_STEP);
        double slope = Math.abs(after - before) / (2 * SLOPE_STEP);
        place(inputs, root);
        return slope > 0 && riseWeight > Double.NEGATIVE_INFINITY
                ? prior.logDensity(inputs[column]) + root - Math.log(slope) + riseWeight
                : Double.NEGATIVE_INFINITY;
    }

    private double time(double[] inputs, double log) {
        place(inputs, log);
        return riseWeight > Double.NEGATIVE_INFINITY ? voyage.fizz(inputs) : Double.NaN;
    }

    private void place(double[] inputs, double log) {
        inputs[column] = Math.exp(log);
        riseWeight = rise.isPresent() ? rise.get().pin(inputs, riseNear) : 0;
        riseNear = riseWeight > Double.NEGATIVE_INFINITY;
    }
}
