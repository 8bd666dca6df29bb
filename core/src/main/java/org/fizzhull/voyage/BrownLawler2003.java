package org.fizzhull.voyage;

import org.fizzhull.evidence.ValidityRange;

/**
 * Drag of a smooth sphere: Brown and Lawler (2003), Re &lt; 2e5; a few per cent, 15 % where bubbles cling.
 *
 * <p>Source: P. P. Brown and D. F. Lawler, Sphere drag and settling velocity revisited, J. Environ. Eng. 129 (2003)
 * 222; as coded in a public open-source library [second-hand].
 */
public final class BrownLawler2003 {
    /** Reynolds number. */
    public static final ValidityRange VALIDITY =
            ValidityRange.of("Sphere drag by Brown and Lawler (2003): Reynolds number", 0, 2e5, "", 1);

    private BrownLawler2003() {}

    /** Drag coefficient times the Reynolds number, finite at rest. */
    static double timesReynolds(double reynolds) {
        return reynolds == 0
                ? 24
                : 24 * (1 + 0.15 * Math.pow(reynolds, 0.681)) + 0.407 * reynolds / (1 + 8710 / reynolds);
    }

    /**
     * {@return the drag coefficient on the plan area at a Reynolds number above 0}
     *
     * @param reynolds Reynolds number on the diameter, above 0 and below 2e5
     */
    public static double coefficient(double reynolds) {
        return timesReynolds(reynolds) / reynolds;
    }
}
