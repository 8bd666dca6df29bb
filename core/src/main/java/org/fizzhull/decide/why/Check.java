package org.fizzhull.decide.why;

/** A check that tells causes apart, of the kind a kitchen can make. Its reading is in SI: kg, m, s or a share. */
public enum Check {
    /** Weigh a piece of the same batch. */
    WEIGH_A_PIECE("weigh a piece of the same batch"),
    /** Measure a piece across with a ruler or calipers. */
    MEASURE_ACROSS("measure a piece across"),
    /** Time how long a piece of the batch fizzes. */
    TIME_THE_FIZZ("time how long a piece of the batch fizzes"),
    /** Weigh a piece, leave it in a dry room for two days, weigh it again. */
    WEIGH_AFTER_TWO_DAYS("weigh a piece, leave it two days in a dry room, weigh it again: what it loses"),
    /** Read a hygrometer in the drying room. */
    READ_A_HYGROMETER("read a hygrometer in the drying room");

    /** What to do, without its full stop. */
    private final String words;

    Check(String words) {
        this.words = words;
    }

    /** {@return the check for people: what to do, without its full stop} */
    public String words() {
        return words;
    }

    /** {@return whether the spread of its reading is a factor and not an amount: a time that may be a third as long or three times} */
    boolean byFactor() {
        return this == TIME_THE_FIZZ;
    }
}
