package org.fizzhull.forecast;

import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.QuickVoyage;

/**
 * Finds the critical weight of one draw: the heaviest piece of its shape, mix and dryness that floats, at once and to the
 * end. Everything else of the draw is held; density and porosity follow the weight. The search starts from the root of
 * the spare at the drop, which is cheap and lies within a per mille of the answer unless the piece soaks or is a boat.
 *
 * <p>Accuracy: {@link #CLOSE} of the weight, 0.014 g at 140 g. Cost: about a dozen voyages that stop 20 s after the drop
 * and one to four whole ones. One search serves one thread; it holds the last result.
 */
final class CriticalSearch {
    /** Found to this share of the weight. */
    static final double CLOSE = 1e-4;

    /** The bracket widens by this factor. */
    private static final double WIDER = 4;

    private static final int NEWTON_PASSES = 5;
    private static final int ROOT_PASSES = 8;

    /** Weights of the whole range at which a draw that is not monotone is looked at. */
    private static final int SCANNED = 24;

    /** One draw in so many is looked at over the whole range, so that a draw that is not monotone is noticed. */
    private static final int EVERY = 32;

    private static final int LOOKED_BELOW = 8;
    private static final int LOOKED_ABOVE = 4;

    private final DropModel drop;
    private final QuickVoyage voyage;
    private final double lightest;
    private final double heaviest;
    private final double water;
    private final boolean airy;

    private double low;
    private double high;

    /** The heaviest that floats at once, kg. */
    double once;

    /** The heaviest that floats to the end, kg. */
    double end;

    /** What the search met. */
    CriticalWeights.Met met = CriticalWeights.Met.MONOTONE;

    /** Searches for the draws of a model of one question, whose voyages are walked by another. */
    CriticalSearch(Question question, DropModel drop, QuickVoyage voyage) {
        this.drop = drop;
        this.voyage = voyage;
        Shape shape = question.shape();
        lightest = PieceLimits.lightest(question);
        heaviest = PieceLimits.heaviest(question);
        water = question.bath().density() * shape.volume();
        airy = shape.hollow().isPresent();
    }

    /**
     * For the last values of the model.
     *
     * @param row number of the draw
     * @param floats whether the piece of the draw itself floats to the end
     */
    void search(int row, boolean floats) {
        double top = Math.max(lightest, Math.min(heaviest, drop.solidMass()));
        met = CriticalWeights.Met.MONOTONE;
        double start = neutral(top);
        once = boundary(false, start, top);
        double under = low;
        end = met == CriticalWeights.Met.BELOW_RANGE || floats(true, under) ? once : soaked(under, top);
        boolean own = drop.mass() < end == floats || Math.abs(drop.mass() - end) < 4 * CLOSE * end;
        if (!own || (row % EVERY == 0 && !monotone(top))) {
            scan(top);
        }
    }

    private boolean floats(boolean toTheEnd, double mass) {
        return toTheEnd ? voyage.floatsToTheEnd(drop.launch(mass)) : voyage.floatsAtOnce(drop.launch(mass));
    }

    /** Where the spare at the drop is 0, by secants; its slope is near -1. */
    private double neutral(double top) {
        double mass = clamped(drop.mass(), top);
        double spare = drop.spare(mass);
        double slope = -1;
        for (int pass = 0; pass < ROOT_PASSES && Math.abs(spare) > 0.1 * CLOSE * mass; pass++) {
            double next = clamped(mass - spare / slope, top);
            if (next == mass) {
                break;
            }
            double then = drop.spare(next);
            double found = (then - spare) / (next - mass);
            slope = found < -0.1 ? found : -1;
            mass = next;
            spare = then;
        }
        return mass;
    }

    private double clamped(double mass, double top) {
        return Math.max(lightest, Math.min(top, mass));
    }

    /** Border between floating and not, from a weight near it; leaves the bracket in {@code low} and {@code high}. */
    private double boundary(boolean toTheEnd, double near, double top) {
        low = clamped(near * (1 - CLOSE), top);
        high = clamped(near * (1 + CLOSE), top);
        double step = CLOSE;
        if (floats(toTheEnd, low)) {
            while (floats(toTheEnd, high)) {
                low = high;
                if (high >= top) {
                    met = CriticalWeights.Met.ABOVE_RANGE;
                    return top;
                }
                step *= WIDER;
                high = clamped(high * (1 + step), top);
            }
        } else {
            do {
                high = low;
                if (low <= lightest) {
                    met = CriticalWeights.Met.BELOW_RANGE;
                    return lightest;
                }
                step *= WIDER;
                low = clamped(low * (1 - step), top);
            } while (!floats(toTheEnd, low));
        }
        halve(toTheEnd);
        return (low + high) / 2;
    }

    private void halve(boolean toTheEnd) {
        while (high - low > CLOSE * high) {
            double middle = (low + high) / 2;
            if (floats(toTheEnd, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /** A piece that soaks, or a boat that swamps, on the way: the smallest spare of the way leads to the border. */
    private double soaked(double from, double top) {
        double mass = from;
        if (!airy) {
            double reserve = water * voyage.reserve(drop.launch(mass));
            double slope = -1;
            for (int pass = 0; pass < NEWTON_PASSES && Math.abs(reserve) > 0.1 * CLOSE * mass; pass++) {
                double next = clamped(mass - reserve / slope, top);
                if (next == mass) {
                    break;
                }
                double then = water * voyage.reserve(drop.launch(next));
                double found = (then - reserve) / (next - mass);
                slope = found < -0.1 ? found : -1;
                mass = next;
                reserve = then;
            }
        }
        return Math.min(once, boundary(true, Math.min(mass, from), top));
    }

    /** Whether some lighter pieces of the draw float and some heavier ones do not. */
    private boolean monotone(double top) {
        for (int i = 0; i < LOOKED_BELOW; i++) {
            double mass = lightest + (i + 0.5) / LOOKED_BELOW * (end - lightest);
            if (mass < end * (1 - CLOSE) && !floats(true, mass)) {
                return false;
            }
        }
        for (int i = 0; i < LOOKED_ABOVE; i++) {
            double mass = end + (i + 0.5) / LOOKED_ABOVE * (top - end);
            if (mass > end * (1 + CLOSE) && floats(true, mass)) {
                return false;
            }
        }
        return true;
    }

    /** Of a draw that is not monotone: the first border from below. */
    private void scan(double top) {
        met = CriticalWeights.Met.NOT_MONOTONE;
        double last = lightest;
        if (!floats(true, last)) {
            end = lightest;
            return;
        }
        for (int i = 1; i <= SCANNED; i++) {
            double next = lightest + i * (top - lightest) / SCANNED;
            if (!floats(true, next)) {
                low = last;
                high = next;
                halve(true);
                end = Math.min(end, (low + high) / 2);
                return;
            }
            last = next;
        }
    }
}
