package org.fizzhull.voyage;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Drag coefficient of a smooth sphere,
 *
 * <pre>  C_d = (24/Re)(1 + 0.15 Re^0.681) + 0.407/(1 + 8710/Re)</pre>
 *
 * <p>with C_d on the projected area and Re = U d/nu on the diameter (U speed, m/s; d diameter, m; nu kinematic
 * viscosity, m2/s). Range: Re below 2e5. Error: a few per cent; 15 % where bubbles cling. Used by {@link Resistance}.
 * Stateless.
 *
 * <p>Source: P. P. Brown and D. F. Lawler, Sphere drag and settling velocity revisited, J. Environ. Eng. 129 (2003)
 * 222; as coded in a public open-source library [second-hand].
 */
public final class BrownLawler2003 {
    /** Range of Reynolds numbers. */
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
