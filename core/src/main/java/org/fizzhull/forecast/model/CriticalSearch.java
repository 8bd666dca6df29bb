package org.fizzhull.forecast.model;

import org.fizzhull.forecast.question.PieceLimits;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.QuickVoyage;

/**
 * Finds the critical weight of one draw: the heaviest piece of its shape, mix and dryness that floats, at once and to
 * the end. Everything else of the draw is held; density and porosity follow the weight.
 *
 * <p>The spare at the drop is nearly linear in the weight, so is the smallest spare of a whole way: their roots, by
 * secants, lie within a few per mille of the border, which is then bracketed and halved by voyages. Accuracy: {@link
 * #CLOSE} of the weight, 0.04 g at 140 g. Cost: about six voyages that stop 20 s after the drop and two to six whole
 * ones. The range searched reaches from {@link #SEARCHED} below the border to as much above it, farther where the
 * search walked farther, and never leaves the weights that pressed pieces have. One search serves one thread; it holds
 * the last result.
 */
final class CriticalSearch {
    /** Found to this share of the weight. */
    static final double CLOSE = 3e-4;

    /** Share of the weight on both sides of a border within which pieces are looked at. */
    static final double SEARCHED = 0.1;

    private static final double FIRST_STEP = CLOSE;

    /** The bracket widens by this factor. */
    private static final double WIDER = 2;

    private static final int SECANTS = 6;

    /** A root is near enough to start from, share of the weight. */
    private static final double NEAR = 1e-4;

    /** One draw in so many is looked at on both sides of its border, so that a draw that is not monotone is noticed. */
    private static final int EVERY = 32;

    private static final int LOOKED = 4;

    private final DropModel drop;
    private final QuickVoyage voyage;
    private final double lightest;
    private final double heaviest;
    private final double water;
    private final double neutral;

    /** Of the spare against the weight, at the last root. */
    private double slope;

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
        neutral = water + question.bath().density() * shape.insetVolume();
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
        // from a weight that does not depend on the piece that is asked about: nor does the answer then
        double start = root(false, neutral, top);
        once = boundary(false, atOnce(start, top), top);
        double under = low;
        if (met == CriticalWeights.Met.BELOW_RANGE || floats(true, under)) {
            end = once;
        } else {
            end = Math.min(once, boundary(true, Math.min(root(true, start, top), under), top));
        }
        double mass = drop.mass();
        boolean own = mass < end == floats || Math.abs(mass - end) < 2 * CLOSE * end;
        if (!own || (row % EVERY == 0 && !monotone(top))) {
            met = CriticalWeights.Met.NOT_MONOTONE;
        }
    }

    /** Near the heaviest that floats at once: one that floats when let go, or comes up from the bottom in time. */
    private double atOnce(double start, double top) {
        double more = voyage.spareInTime(drop.launch(start));
        return clamped((start - water * Math.max(0, more) / slope) * (1 - CLOSE / 2), top);
    }

    private boolean floats(boolean toTheEnd, double mass) {
        return toTheEnd ? voyage.floatsToTheEnd(drop.launch(mass)) : voyage.floatsAtOnce(drop.launch(mass));
    }

    /** Where the spare at the drop, or the smallest spare of the whole way, is 0, by secants; the slope is near -1. */
    private double root(boolean way, double near, double top) {
        double mass = clamped(near, top);
        double spare = spare(way, mass);
        slope = -1;
        for (int pass = 0; pass < SECANTS && Math.abs(spare) > NEAR * mass; pass++) {
            double next = clamped(mass - spare / slope, top);
            if (next == mass) {
                break;
            }
            double then = spare(way, next);
            double found = (then - spare) / (next - mass);
            slope = found < -0.1 ? found : -1;
            mass = next;
            spare = then;
        }
        return mass;
    }

    private double spare(boolean way, double mass) {
        return way ? water * voyage.reserve(drop.launch(mass)) : drop.spare(mass);
    }

    private double clamped(double mass, double top) {
        return Math.max(lightest, Math.min(top, mass));
    }

    /** Border between floating and not, from a weight near it; leaves the bracket in {@code low} and {@code high}. */
    private double boundary(boolean toTheEnd, double near, double top) {
        double step = FIRST_STEP;
        if (floats(toTheEnd, near)) {
            low = near;
            high = clamped(near * (1 + step), top);
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
            low = near;
            do {
                high = low;
                if (low <= lightest) {
                    met = CriticalWeights.Met.BELOW_RANGE;
                    return lightest;
                }
                low = clamped(low * (1 - step), top);
                step *= WIDER;
            } while (!floats(toTheEnd, low));
        }
        while (high - low > CLOSE * high) {
            double middle = (low + high) / 2;
            if (floats(toTheEnd, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Whether the pieces looked at below the border float and those above do not. */
    private boolean monotone(double top) {
        for (int i = 1; i <= LOOKED; i++) {
            double away = SEARCHED * i / LOOKED;
            double lighter = end * (1 - away);
            double heavier = end * (1 + away);
            if ((lighter >= lightest && !floats(true, lighter)) || (heavier <= top && floats(true, heavier))) {
                return false;
            }
        }
        return true;
    }
}
