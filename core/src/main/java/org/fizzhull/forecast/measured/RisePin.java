package org.fizzhull.forecast.measured;

import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.Outcome;

/**
 * Solves the size of the clinging bubbles for the rise time of one piece: a thicker layer of gas lifts it sooner, so there
 * is one root at most. Bubble size and layer multiplier act as their product; the wider of the two is solved.
 */
final class RisePin implements MeasuredPin {
    /** Prior probability beyond which no root is looked for. */
    private static final double RAREST = 1e-9;

    private static final double FIRST_STEP = 0.1;
    private static final double NEAR_STEP = 0.03;

    /** A piece that sinks first lacks about so much of its displacement at the drop: where the search begins. */
    private static final double USUAL_LACK = 0.007;

    private static final int MOST_PASSES = 40;
    private static final double NARROWEST = 1e-5;

    /** Found to this share of the time; a jump in the time is no root. */
    private static final double CLOSE = 1e-3;

    private static final double JUMP = 0.02;

    /** For the slope: some cells of the quick voyage, whose lag changes from cell to cell. */
    private static final double SLOPE_STEP = 0.01;

    private final TimedVoyage voyage;
    private final TimedPiece piece;
    private final int column;
    private final Prior prior;
    private final double lowest;
    private final double highest;

    /** True rise time of this draw, s. */
    private double time;

    RisePin(TimedVoyage voyage, TimedPiece piece, int column, Prior prior) {
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
    public double pin(double[] inputs, boolean near) {
        double before = inputs[column];
        double guess = near ? Math.log(before) : guess(inputs);
        double root = time > Outcome.AT_ONCE ? root(inputs, time, guess, near ? NEAR_STEP : FIRST_STEP) : Double.NaN;
        if (Double.isNaN(root)) {
            inputs[column] = before;
            return Double.NEGATIVE_INFINITY;
        }
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

    /** The spare at the drop is linear in the layer: the size at which a little is lacking. */
    private double guess(double[] inputs) {
        double size = inputs[column];
        double some = voyage.spare(inputs);
        inputs[column] = 2 * size;
        double per = (voyage.spare(inputs) - some) / size;
        double wanted = size - (some + USUAL_LACK * voyage.displaced()) / per;
        return wanted > 0 && wanted < Double.POSITIVE_INFINITY ? Math.log(wanted) : lowest;
    }

    private double root(double[] inputs, double time, double guess, double first) {
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

    private double time(double[] inputs, double logSize) {
        inputs[column] = Math.exp(logSize);
        return voyage.rise(inputs);
    }
}
