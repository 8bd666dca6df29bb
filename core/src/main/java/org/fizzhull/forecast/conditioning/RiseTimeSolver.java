package org.fizzhull.forecast.conditioning;

import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.result.Voyage;

/**
 * Solves the size of the clinging bubbles for the rise time of one piece: a thicker layer of gas lifts it sooner, so
 * there is one root at most. Bubble size and layer multiplier act as their product; the wider of the two is solved.
 * With T a draw of the true rise time, t(x) that of the draw at size x, the weight is p(x) |dx/dt|, with the likelihood
 * of the width that was seen.
 *
 * <ol>
 *   <li>The search begins where the spare at the drop, linear in the layer, lacks what a piece that sinks first usually
 *       lacks.
 *   <li>It widens until the time is bracketed: infinite for a piece that stays down, 0 for one that floats at once.
 *   <li>Halving until both ends are times, then regula falsi with halved ends.
 * </ol>
 *
 * <p>Cost: one voyage until the rise for each size that is tried. One instance serves one thread.
 */
final class RiseTimeSolver implements LiftSolver {
    /** Prior probability beyond which no root is looked for. */
    private static final double RAREST = 1e-9;

    /** First step of the bracket, in the logarithm of the size. */
    private static final double FIRST_STEP = 0.1;
    /** The same where the last value is known to be near. */
    private static final double NEAR_STEP = 0.03;

    /** What a piece that sinks first lacks at the drop, about, over its displacement: where the search begins. */
    private static final double USUAL_LACK = 0.007;

    /** Most passes inside the bracket. */
    private static final int MOST_PASSES = 40;
    /** Width of the bracket below which the search ends, in the logarithm of the size. */
    private static final double NARROWEST = 1e-5;

    /** Found to this share of the time; a jump in the time is no root. */
    private static final double CLOSE = 1e-3;

    /** Distance from the time up to which the end of the search is a root, a share: beyond it the time jumps there. */
    private static final double JUMP = 0.02;

    /** For the slope: some cells of the quick voyage, whose lag changes from cell to cell. */
    private static final double SLOPE_STEP = 0.01;

    /** Voyages of the timed piece. */
    private final TimedVoyage voyage;
    /** The time that was taken. */
    private final TimedPiece piece;
    /** Column of the bubble size. */
    private final int column;
    /** Its prior, m. */
    private final Prior prior;
    /** Logarithm of the smallest size looked at, ln m. */
    private final double lowest;
    /** Logarithm of the largest, ln m. */
    private final double highest;

    /** True rise time of this draw, s. */
    private double time;

    /** Solves the bubble size, in a column with its prior, for the rise of one piece. */
    RiseTimeSolver(TimedVoyage voyage, TimedPiece piece, int column, Prior prior) {
        this.voyage = voyage;
        this.piece = piece;
        this.column = column;
        this.prior = prior;
        lowest = Math.log(prior.quantile(RAREST));
        highest = Math.log(prior.quantile(1 - RAREST));
    }

    @Override
    public int column() {
        return column;
    }

    @Override
    public void measure(double error, double choice) {
        time = piece.time() + piece.deviation() * Normal.quantile(error);
    }

    @Override
    public double solve(double[] inputs, boolean near) {
        double before = inputs[column];
        double guess = near ? Math.log(before) : guess(inputs);
        double root =
                time > Voyage.Outcome.AT_ONCE ? root(inputs, time, guess, near ? NEAR_STEP : FIRST_STEP) : Double.NaN;
        if (Double.isNaN(root)) {
            inputs[column] = before;
            return Double.NEGATIVE_INFINITY;
        }
        // -dt/d ln x: the density of ln x is that of x times x
        double slope = slope(inputs, root);
        inputs[column] = Math.exp(root);
        return slope > 0
                ? prior.logDensity(inputs[column]) + root - Math.log(slope) + width(inputs)
                : Double.NEGATIVE_INFINITY;
    }

    /** Logarithm of the likelihood of the width that was seen, less a constant; 0 where nobody looked. */
    private double width(double[] inputs) {
        if (piece.left().isEmpty()) {
            return 0;
        }
        voyage.rise(inputs);
        return piece.logWidth(voyage.width());
    }

    /** Logarithm of the size at which the spare at the drop lacks a little: where the search begins. */
    private double guess(double[] inputs) {
        double size = inputs[column];
        double some = voyage.spare(inputs);
        inputs[column] = 2 * size;
        double per = (voyage.spare(inputs) - some) / size;
        double wanted = size - (some + USUAL_LACK * voyage.displaced()) / per;
        return wanted > 0 && wanted < Double.POSITIVE_INFINITY ? Math.log(wanted) : lowest;
    }

    /**
     * Logarithm of the size at which the piece comes up after {@code time} s; NaN where there is none.
     *
     * @param guess where to begin
     * @param first first step
     */
    private double root(double[] inputs, double time, double guess, double first) {
        // widen to both sides, doubling the step, until a longer and a shorter time are known
        double low = Math.max(lowest, Math.min(highest, guess));
        double atLow = time(inputs, low);
        double high = low;
        double atHigh = atLow;
        for (double step = first; atLow <= time && low > lowest; step *= 2) {
            high = low;
            atHigh = atLow;
            low = Math.max(lowest, low - step);
            atLow = time(inputs, low);
        }
        for (double step = first; atHigh > time && high < highest; step *= 2) {
            low = high;
            atLow = atHigh;
            high = Math.min(highest, high + step);
            atHigh = time(inputs, high);
        }
        if (!(atLow > time && atHigh <= time)) {
            return Double.NaN;
        }
        // regula falsi with halved ends (Illinois) once both ends are times, halving before
        double lowPart = atLow - time;
        double highPart = atHigh - time;
        int side = 0;
        double middle = low;
        double at = atLow;
        for (int pass = 0; pass < MOST_PASSES && high - low > NARROWEST; pass++) {
            boolean known = atHigh > 0 && atLow < Double.POSITIVE_INFINITY;
            middle = low + (known ? lowPart / (lowPart - highPart) : 0.5) * (high - low);
            at = time(inputs, middle);
            if (Math.abs(at - time) <= CLOSE * time) {
                return middle;
            }
            if (at > time) {
                low = middle;
                atLow = at;
                lowPart = at - time;
                highPart = side > 0 ? highPart / 2 : highPart;
                side = 1;
            } else {
                high = middle;
                atHigh = at;
                highPart = at - time;
                lowPart = side < 0 ? lowPart / 2 : lowPart;
                side = -1;
            }
        }
        return Math.abs(at - time) <= JUMP * time ? middle : Double.NaN;
    }

    /** How much sooner it comes up for a thicker layer: -dt/d ln x, s; 0 or less where it is not known. */
    private double slope(double[] inputs, double root) {
        double before = time(inputs, root - SLOPE_STEP);
        double after = time(inputs, root + SLOPE_STEP);
        if (after > 0 && before < Double.POSITIVE_INFINITY) {
            return (before - after) / (2 * SLOPE_STEP);
        }
        double here = time(inputs, root);
        return (after > 0 ? here - after : before - here) / SLOPE_STEP;
    }

    /** Rise time at a logarithm of the size, s: 0 where it floats at once, infinite where it stays down. */
    private double time(double[] inputs, double logSize) {
        inputs[column] = Math.exp(logSize);
        return voyage.rise(inputs);
    }
}
