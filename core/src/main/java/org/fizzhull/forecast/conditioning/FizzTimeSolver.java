package org.fizzhull.forecast.conditioning;

import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.Prior;

/**
 * Solves the speed of recession for the fizz time of one piece, draw by draw. With T a draw of the true fizz time, s,
 * t(v) the fizz time of the draw at speed v and p the prior density of v, the weight of the draw is
 *
 * <pre>  w = sum over the roots of t(v) = T of  p(v) |dv/dt|</pre>
 *
 * <ol>
 *   <li>The fizz time goes nearly as one over the speed: two such steps lead near the root.
 *   <li>A faster piece makes more gas, may float for it, and then lasts longer on its dry top: so there can be two
 *       roots, one sunk and one afloat. The range in which they can lie is searched in ten steps of ln v, every change
 *       of side is bracketed and solved (regula falsi with halved ends). A jump in the time is no root.
 *   <li>One root is chosen in proportion to its part of the sum.
 * </ol>
 *
 * <p>Where a rise or a lift was measured too, what is solved for that follows at each speed, the weight is that of
 * both, and the search walks from the middle to the one root. Cost: some 20 quick voyages a draw. One instance serves
 * one thread.
 */
final class FizzTimeSolver {
    /**
     * Range searched to both sides, in ln v: the fizz time times the speed differs at most by the share of a piece that
     * is wet.
     */
    private static final double REACH = 0.75;

    /** Steps in which it is searched. */
    private static final int STEPS = 10;
    /** Most passes to a root; one that is not found by then is a jump. */
    private static final int MOST_PASSES = 12;
    /** Found to this, in the logarithm of the time. */
    private static final double CLOSE = 5e-4;
    /** Step to both sides for dt/d ln v, in ln v. */
    private static final double SLOPE_STEP = 0.01;

    /** Voyages of the timed piece. */
    private final TimedVoyage voyage;
    /** The time that was taken. */
    private final TimedPiece piece;
    /** Column of the speed of recession. */
    private final int column;
    /** Prior of the speed, m/s. */
    private final Prior prior;
    /** Solves another input for a rise or a lift at each speed; empty without. */
    private final Optional<LiftSolver> rise;
    /** Scratch: roots found, ln of m/s. */
    private final double[] roots = new double[STEPS];
    /** Scratch: logarithm of the weight of each. */
    private final double[] weights = new double[STEPS];
    /** Scratch: fizz time at the ends of the steps, s; NaN where it is not looked at or cannot be. */
    private final double[] times = new double[STEPS + 1];

    /** Logarithm of the weight of the rise or lift at the last evaluation; 0 without one. */
    private double riseWeight;

    /** Whether the last evaluation solved for it, so that its value is near the next one. */
    private boolean riseNear;

    /**
     * Solves the speed, in a column with its prior, for the fizz time of one piece, with what a rise or lift pins
     * inside.
     */
    FizzTimeSolver(TimedVoyage voyage, TimedPiece piece, int column, Prior prior, Optional<LiftSolver> rise) {
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
     * @param inputs values of the inputs of the draw, SI; changed
     * @param time true fizz time of this draw, s
     * @param choice from 0 to 1, between roots
     * @return logarithm of the weight; minus infinity where no speed gives this time
     */
    double solve(double[] inputs, double time, double choice) {
        if (!(time > 0)) {
            return Double.NEGATIVE_INFINITY;
        }
        // near the root by two steps, then the fizz times at the ends of the steps around
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
        // a change of side between two ends brackets a root; NaN, where the rise cannot be met, brackets none
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

    /** Puts one of the roots into the inputs, by their weights; returns the logarithm of the sum of the weights. */
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

    /**
     * The root between two logarithms of the speed with the times there, s; NaN where the time jumps or cannot be told.
     */
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

    /**
     * Logarithm of the weight of a root: prior density of v times v over dt/d ln v, with the weight of the rise at it.
     */
    private double weight(double[] inputs, double root) {
        double before = time(inputs, root - SLOPE_STEP);
        double after = time(inputs, root + SLOPE_STEP);
        double slope = Math.abs(after - before) / (2 * SLOPE_STEP);
        place(inputs, root);
        return slope > 0 && riseWeight > Double.NEGATIVE_INFINITY
                ? prior.logDensity(inputs[column]) + root - Math.log(slope) + riseWeight
                : Double.NEGATIVE_INFINITY;
    }

    /** Fizz time at a logarithm of the speed, s; NaN where the rise cannot be met there, or no face recedes at that speed. */
    private double time(double[] inputs, double log) {
        double speed = Math.exp(log);
        if (!(speed < Double.POSITIVE_INFINITY && Input.RECESSION.isPossible(speed))) {
            return Double.NaN;
        }
        place(inputs, log);
        return riseWeight > Double.NEGATIVE_INFINITY ? voyage.fizz(inputs) : Double.NaN;
    }

    /** Puts a speed into the inputs, and what is solved for the rise at it. */
    private void place(double[] inputs, double log) {
        inputs[column] = Math.exp(log);
        riseWeight = rise.isPresent() ? rise.get().solve(inputs, riseNear) : 0;
        riseNear = riseWeight > Double.NEGATIVE_INFINITY;
    }
}
