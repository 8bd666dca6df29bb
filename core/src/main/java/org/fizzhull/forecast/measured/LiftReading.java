package org.fizzhull.forecast.measured;

import java.io.Serializable;
import org.fizzhull.quantity.Refusal;

/**
 * What the scale under a bowl showed of a piece held under, once: one of the readings of a {@link HeldPiece}. Immutable.
 *
 * @param reading kg
 * @param deviation one standard deviation of the reading, kg
 * @param seconds from when it went under, above 0 to 30 s
 */
public record LiftReading(double reading, double deviation, double seconds) implements Serializable {
    /** Longest time under that is taken, s: nobody holds it for longer. */
    private static final double LONGEST = 30;

    /**
     * Refuses what no scale shows of a piece, and a time outside 0 to 30 s.
     *
     * @param reading kg
     * @param deviation one standard deviation of the reading, kg
     * @param seconds from when it went under, above 0 to 30 s
     * @throws Refusal {@code out-of-range}
     */
    public LiftReading {
        if (!(reading > 0 && Double.isFinite(reading))) {
            throw HeldPiece.refusal(
                    1e3 * reading + " g", "more than 0 g", "Tare the scale with the bowl of water on it.");
        }
        if (!(deviation > 0 && Double.isFinite(deviation))) {
            throw HeldPiece.refusal("a spread of " + 1e3 * deviation + " g", "more than 0 g", "Leave out the spread.");
        }
        if (!(seconds > 0 && seconds <= LONGEST)) {
            throw HeldPiece.refusal(seconds + " s", "0 to 30 s under water", "Read it 2 to 5 s after it went under.");
        }
    }
}
