package org.fizzhull.decide.why;

/** A check that tells causes apart, of the kind a kitchen can make. */
public enum Check {
    /** Weigh a piece of the same batch. */
    WEIGH_A_PIECE,
    /** Measure a piece across with a ruler or calipers. */
    MEASURE_ACROSS,
    /** Time how long a piece of the batch fizzes. */
    TIME_THE_FIZZ,
    /** Weigh a piece, leave it in a dry room for two days, weigh it again. */
    WEIGH_AFTER_TWO_DAYS,
    /** Read a hygrometer in the drying room. */
    READ_A_HYGROMETER;

    /** Whether what it reads spreads by a factor and not by an amount: a time that may be a third as long or three times. */
    boolean byFactor() {
        return this == TIME_THE_FIZZ;
    }
}
