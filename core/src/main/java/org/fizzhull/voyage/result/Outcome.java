package org.fizzhull.voyage.result;

/**
 * What becomes of a piece in the bath, in one of three words. The rules are those of {@link OutcomeTracker}; why 20 s
 * and a tenth: docs/physics/voyage.md, 8.
 */
public enum Outcome {
    /** At the surface 20 s after it was let go. */
    FLOATS_AT_ONCE("floats at once"),
    /** It comes up after that with at least 10 % of its mass left. */
    RISES_LATER("rises later"),
    /** Neither. */
    STAYS_DOWN("stays down");

    /** When it is judged whether a piece floats at once, s. */
    public static final double AT_ONCE = 20;

    /** Share of the mass below which what comes up is a crumb. */
    public static final double CRUMB = 0.1;

    /** Share of the mass at which the voyage ends. */
    public static final double END = 0.01;

    /** What people read. */
    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** {@return the words} */
    public String words() {
        return words;
    }
}
