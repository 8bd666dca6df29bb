package org.fizzhull.forecast.prior;

import org.fizzhull.quantity.check.Given;

/**
 * How the size of the mould is known; one standard deviation of each way is assumed.
 *
 * <p>The size counts strongly: at 65 mm a millimetre is 4.6 % of the volume, as much as the clinging gas lifts. So the
 * mould is worth filling with water: 1 g of it is 0.15 mm across.
 */
public enum Measured {
    /** The size on the packet: 1 mm. */
    NOMINAL("nominal", 1e-3),
    /** A ruler: 0.7 mm. */
    RULER("ruler", 0.7e-3),
    /** Calipers: 0.2 mm. */
    CALIPERS("calipers", 0.2e-3),
    /** The mould filled with water and weighed: 1 g of water. */
    WATER("water", 0);

    /** Standard deviation of the weighed water, as a volume, m3. */
    public static final double WATER_VOLUME = 1e-6;

    /** Word of the option and key in results, stable. */
    private final String word;
    /** One standard deviation of a size across, m; 0 where it follows from the surface. */
    private final double sizeDeviation;

    Measured(String word, double sizeDeviation) {
        this.word = word;
        this.sizeDeviation = sizeDeviation;
    }

    /** {@return the word of the option} */
    public String word() {
        return word;
    }

    /**
     * {@return the standard deviation of a size across, m, for a shape of this surface (m2): an error of a size moves
     * each face by half of it}
     *
     * @param surface surface of the shape, m2
     */
    public double sizeDeviation(double surface) {
        Given.finite("surface", surface);
        return this == WATER ? 2 * WATER_VOLUME / surface : sizeDeviation;
    }
}
