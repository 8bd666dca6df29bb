package org.fizzhull.drying;

import org.fizzhull.evidence.Source;

/**
 * Humidity over saturated salt solutions, {@code RH % = A exp(B / T)}, T in K, within 2 % RH: Wexler, Constant humidity
 * solutions, CRC Handbook [seen]. What a jar with salt slurry shows on a hygrometer that is to be checked.
 */
public enum ConstantHumidity {
    /** Sodium chloride, table salt. */
    SODIUM_CHLORIDE(69.20, 25),
    /** Magnesium chloride hexahydrate. */
    MAGNESIUM_CHLORIDE(29.26, 34),
    /** Sodium bromide. */
    SODIUM_BROMIDE(20.49, 308),
    /** Potassium chloride. */
    POTASSIUM_CHLORIDE(49.38, 159),
    /** Potassium sulfate. */
    POTASSIUM_SULFATE(86.75, 34),
    /** Calcium chloride hexahydrate. */
    CALCIUM_CHLORIDE(0.11, 1653);

    /** The table. */
    public static final Source SOURCE = new Source(
            "Wexler",
            "A. Wexler, Constant humidity solutions, CRC Handbook of Chemistry and Physics",
            Source.Seen.SEEN);

    private final double a;
    private final double b;

    ConstantHumidity(double a, double b) {
        this.a = a;
        this.b = b;
    }

    /** Relative humidity, 0 to 1, over the saturated solution at a temperature in K (273 to 323). */
    public double at(double kelvin) {
        return a * Math.exp(b / kelvin) / 100;
    }
}
