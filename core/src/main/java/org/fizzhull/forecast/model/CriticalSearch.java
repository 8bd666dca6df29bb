package org.fizzhull.forecast.model;

import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.QuickVoyage;

/**
 * Finds the critical weight of one draw: the heaviest piece of its shape, mix and dryness that floats, at once and to
 * the end. Everything else of the draw is held; density and porosity follow the weight.
 *
 * <ol>
 *   <li>The spare at the drop is nearly linear in the weight (slope -1): its root, by secants, lies near the border of
 *       floating at once. What is a little heavier goes down and comes up in time, so that the spare on the bottom at the
 *       last moment for that ({@link QuickVoyage#spareInTime}) is added.
 *   <li>The border is bracketed from there, in steps that double, and halved by voyages that stop 20 s after the drop:
 *       as a rule the first two weights lie on either side of it.
 *   <li>The border of floating to the end is at most as high. Where the piece just under the first border floats to the
 *       end, both are one. Else it lies near the root of the smallest spare of the whole way of a piece that is held up
 *       ({@link QuickVoyage#reserve}), nearly linear in the weight too, and is bracketed and halved by voyages that stop
 *       at a tenth of the body.
 *   <li>The draw counts as monotone where its own piece lies on the right side of the border; each 32nd draw is looked
 *       at in eight more weights.
 * </ol>
 *
 * <p>Accuracy: {@link #CLOSE} of the weight, 0.04 g at 140 g. Cost: about three voyages that stop 20 s after the drop and
 * one or two whole ones. The range searched reaches from {@link #SEARCHED} below the border to as much above it,
 * farther where the search walked farther, and never leaves the weights that pressed pieces have. The search starts
 * from weights that do not depend on the piece that is asked about, so that the answer does not either. One search
 * serves one thread; it holds the last result.
 */
final class CriticalSearch {
    /** Found to this share of the weight. */
    static final double CLOSE = 3e-4;

    /** Share of the weight on both sides of a border within which pieces are looked at. */
    static final double SEARCHED = 0.1;

    /** The bracket widens by this factor. */
    private static final double WIDER = 2;

    /** Most secant steps to a root. */
    private static final int SECANTS = 6;

    /** A root is near enough to start from, share of the weight. */
    private static final double NEAR = 1e-4;

    /** One draw in so many is looked at on both sides of its border, so that a draw that is not monotone is noticed. */
    private static final int EVERY = 32;

    /** Weights looked at on each side of the border. */
    private static final int LOOKED = 4;

    /** The draw: its piece at any weight, and the spare at the drop. */
    private final DropModel drop;
    /** Walks the voyages; holds the last one. */
    private final QuickVoyage voyage;
    /** Lightest pressed piece, kg. */
    private final double lightest;
    /** Heaviest pressed piece, kg. */
    private final double heaviest;
    /** Water that the body displaces, kg: turns a reserve into kilograms. */
    private final double water;
    /** The same with what lies on it and in it, kg: where the search begins. */
    private final double neutral;

    /** Of the spare against the weight, at the last root. */
    private double slope;

    /** Heaviest weight known to float in the last bracket, kg. */
    private double low;
    /** Lightest known not to float, kg. */
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
        lightest = PieceLimits.lightest(shape, question.stillWater());
        heaviest = PieceLimits.heaviest(shape, question.stillWater());
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
        // at once first: what does not float then does not float to the end
        once = boundary(false, atOnce(start, top), top);
        double under = low;
        if (met == CriticalWeights.Met.BELOW_RANGE || floats(true, under)) {
            end = once;
        } else {
            // what is met is told of the way to the end; at once even the heaviest may float
            met = CriticalWeights.Met.MONOTONE;
            end = Math.min(once, boundary(true, Math.min(root(true, start, top), under), top));
        }
        // whether the piece of the draw itself lies on the right side of the border
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

    /** Whether a piece of a mass, kg, floats, at once or to the end. */
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

    /** What a piece of a mass, kg, has to spare at the drop, or at the least on its whole way, kg. */
    private double spare(boolean way, double mass) {
        return way ? water * voyage.reserve(drop.launch(mass)) : drop.spare(mass);
    }

    /** A mass, kg, kept between the lightest pressed piece and the top of the range. */
    private double clamped(double mass, double top) {
        return Math.max(lightest, Math.min(top, mass));
    }

    /** Border between floating and not, from a weight near it; leaves the bracket in {@code low} and {@code high}. */
    private double boundary(boolean toTheEnd, double near, double top) {
        double step = CLOSE;
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
