package org.fizzhull.voyage;

/**
 * What is to be said of a voyage, from the times at which the piece comes up and goes down: one set of rules for the
 * quick voyage and the full one. Mutable; times must not run back by more than a rise.
 */
final class OutcomeTracker {
    Outcome outcome = Outcome.STAYS_DOWN;

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
            case RISE -> judged && (outcome != Outcome.STAYS_DOWN || upTime > 0);
            case TO_THE_END -> judged && (outcome != Outcome.FLOATS_AT_ONCE || sinksEarly || left < crumb);
        };
    }

    /** Whether no time that is still to come bears on what is asked. */
    boolean untimed() {
        return judged && asked == Asked.TO_THE_END;
    }

    /** Whether it floated at once and stayed up until it was a crumb. */
    boolean floatsToTheEnd() {
        return outcome == Outcome.FLOATS_AT_ONCE && !sinksEarly;
    }

    /** A piece just let go, at the surface or below it; its whole body volume, m3. */
    void start(boolean atTheSurface, double volume) {
        crumb = Outcome.CRUMB * volume;
        sinksEarly = false;
        outcome = Outcome.STAYS_DOWN;
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
        if (judged && outcome == Outcome.STAYS_DOWN && !(upTime > 0)) {
            upTime = time;
        }
        if (judged && outcome == Outcome.STAYS_DOWN && left >= Outcome.CRUMB) {
            outcome = Outcome.RISES_LATER;
            riseTime = time;
        }
    }

    /** It goes under at a time, s, with a body volume left, m3. */
    void goesDown(double time, double left) {
        pass(time);
        afloat = false;
        boolean floated = outcome == Outcome.FLOATS_AT_ONCE;
        sinksLater |= floated;
        sinksEarly |= floated && left >= crumb;
    }

    /** The clock reaches a time, s. */
    void pass(double time) {
        if (!judged && time > Outcome.AT_ONCE) {
            judge();
        }
    }

    /** The moment is here, or the voyage ends before it. */
    void judge() {
        if (!judged) {
            judged = true;
            outcome = afloat ? Outcome.FLOATS_AT_ONCE : Outcome.STAYS_DOWN;
        }
    }
}
