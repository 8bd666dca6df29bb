package org.fizzhull.voyage;

import org.fizzhull.voyage.result.Voyage;

/**
 * What is to be said of a voyage, from the times at which the piece comes up and goes down: one set of rules for the
 * quick voyage and the full one.
 *
 * <ol>
 *   <li>20 s after the drop ({@link Voyage.Outcome#AT_ONCE}) it is judged: at the surface then means that it floats at once.
 *   <li>One that did not, and comes up later with a tenth of its body left or more, rises later; its first such time is
 *       the rise time. A smaller rest that comes up is a crumb: only {@link #upTime} tells of it.
 *   <li>One that floated at once and goes under again sinks later; it floats to the end where that happens to a crumb
 *       only.
 *   <li>A voyage that ends before 20 s is judged at its end.
 * </ol>
 *
 * <p>A voyage that is run for one question alone may stop as soon as {@link #settled} says so. Mutable; one instance
 * serves one thread. Times must not run back by more than a rise: the quick voyage adds the time of the way up.
 */
final class OutcomeTracker {
    /** The outcome so far; of meaning once {@link #judged}. */
    Voyage.Outcome outcome = Voyage.Outcome.STAYS_DOWN;

    /** Whether a piece that floated at once went under before the end. */
    boolean sinksLater;

    /** When it came up, s; NaN unless it rises later. */
    double riseTime;

    /** When a piece that did not float at once first came up, whatever was left of it, s; NaN where it never did. */
    double upTime;

    /** Whether it is at the surface. */
    boolean afloat;

    /** Whether the moment at which floating at once is judged has passed. */
    boolean judged;

    /** What a voyage is walked for: it may stop as soon as that is known. */
    enum Asked {
        /** Everything, the fizz time included. */
        ALL,
        /** Whether the piece floats at once. */
        AT_ONCE,
        /** When it comes up. */
        RISE,
        /** Whether it floats to the end. */
        TO_THE_END
    }

    /** What the present voyage is run for. */
    private Asked asked = Asked.ALL;

    /** Body volume below which a piece is a crumb, m3. */
    private double crumb;

    /** Whether a piece that floated at once went under before it was a crumb. */
    private boolean sinksEarly;

    /** Says what is asked; everything at first. */
    void asked(Asked what) {
        asked = what;
    }

    /** Whether all that was asked is known before the end, with a body volume left, m3. */
    boolean settled(double left) {
        return switch (asked) {
            case ALL -> false;
            case AT_ONCE -> judged;
            case RISE -> judged && (outcome != Voyage.Outcome.STAYS_DOWN || upTime > 0);
            case TO_THE_END -> judged && (outcome != Voyage.Outcome.FLOATS_AT_ONCE || sinksEarly || left < crumb);
        };
    }

    /** Whether a time is asked for, and not only whether it floats. */
    boolean timeAsked() {
        return asked == Asked.ALL || asked == Asked.RISE;
    }

    /** Whether no time that is still to come bears on what is asked. */
    boolean untimed() {
        return judged && asked == Asked.TO_THE_END;
    }

    /** Whether it floated at once and stayed up until it was a crumb. */
    boolean floatsToTheEnd() {
        return outcome == Voyage.Outcome.FLOATS_AT_ONCE && !sinksEarly;
    }

    /**
     * Begins a voyage.
     *
     * @param atTheSurface whether the piece starts at the surface, or below it
     * @param volume whole body volume in the table of the depth profile, m3
     */
    void start(boolean atTheSurface, double volume) {
        crumb = Voyage.Outcome.CRUMB * volume;
        sinksEarly = false;
        outcome = Voyage.Outcome.STAYS_DOWN;
        sinksLater = false;
        riseTime = Double.NaN;
        upTime = Double.NaN;
        afloat = atTheSurface;
        judged = false;
    }

    /** It comes up at a time, s, with a share of its body left. */
    void comesUp(double time, double left) {
        pass(time);
        afloat = true;
        if (judged && outcome == Voyage.Outcome.STAYS_DOWN && !(upTime > 0)) {
            upTime = time;
        }
        if (judged && outcome == Voyage.Outcome.STAYS_DOWN && left >= Voyage.Outcome.CRUMB) {
            outcome = Voyage.Outcome.RISES_LATER;
            riseTime = time;
        }
    }

    /** It goes under at a time, s, with a body volume left, m3. */
    void goesDown(double time, double left) {
        pass(time);
        afloat = false;
        boolean floated = outcome == Voyage.Outcome.FLOATS_AT_ONCE;
        sinksLater |= floated;
        sinksEarly |= floated && left >= crumb;
    }

    /** The clock reaches a time, s. */
    void pass(double time) {
        if (!judged && time > Voyage.Outcome.AT_ONCE) {
            judge();
        }
    }

    /** The moment is here, or the voyage ends before it. */
    void judge() {
        if (!judged) {
            judged = true;
            outcome = afloat ? Voyage.Outcome.FLOATS_AT_ONCE : Voyage.Outcome.STAYS_DOWN;
        }
    }
}
