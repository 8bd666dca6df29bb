package org.fizzhull.pressing.powder;

import org.fizzhull.quantity.Refusal;

/** Pressures at the top of a mould that a kitchen has, 0 to 2 MPa; the packing models are not asked beyond. Stateless. */
public final class PressRange {
    private PressRange() {}

    /**
     * {@return whether a kitchen has such a pressure: 0 to 2 MPa}
     *
     * @param topPressure pressure at the top of the mould, Pa
     */
    public static boolean takes(double topPressure) {
        return topPressure >= 0 && topPressure <= DampPacking.MOST_PRESSURE;
    }

    /**
     * Refuses a pressure that no kitchen has.
     *
     * @param topPressure pressure at the top of the mould, Pa, 0 to 2 MPa
     * @throws Refusal {@code out-of-range}
     */
    public static void check(double topPressure) {
        if (!takes(topPressure)) {
            throw new Refusal(
                    "out-of-range",
                    "press",
                    topPressure / 1e3 + " kPa",
                    "0 to 2000 kPa",
                    "A hand presses with 10 to 100 kPa; a kitchen lever press reaches some hundreds.");
        }
    }
}
