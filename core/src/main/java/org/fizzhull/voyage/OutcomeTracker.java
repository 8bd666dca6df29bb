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

    /** Whether it is at the surface. */
    boolean afloat;

    /** Whether the moment at which floating at once is judged has passed. */
    boolean judged;

    private boolean brief;
    private boolean partly;

    /** Whether no more is asked than whether it floats at once, or than when it comes up; all of it at first. */
    void asked(boolean floatsAtOnce, boolean comesUp) {
        brief = floatsAtOnce;
        partly = floatsAtOnce || comesUp;
    }

    /** Whether all that was asked is known before the end. */
    boolean settled() {
        return partly && judged && (brief || outcome != Outcome.STAYS_DOWN);
    }

    /** A piece just let go, at the surface or below it. */
    void start(boolean atTheSurface) {
        outcome = Outcome.STAYS_DOWN;
        sinksLater = false;
        riseTime = Double.NaN;
        afloat = atTheSurface;
        judged = false;
    }

    /** It comes up at a time, s, with a share of its body left. */
    void comesUp(double time, double left) {
        pass(time);
        afloat = true;
        if (judged && outcome == Outcome.STAYS_DOWN && left >= Outcome.CRUMB) {
            outcome = Outcome.RISES_LATER;
            riseTime = time;
        }
    }

    /** It goes under at a time, s. */
    void goesDown(double time) {
        pass(time);
        afloat = false;
        sinksLater |= outcome == Outcome.FLOATS_AT_ONCE;
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
