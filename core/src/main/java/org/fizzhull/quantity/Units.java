package org.fizzhull.quantity;

/**
 * Conversions between a person's units and the SI doubles inside: {@code Shapes.sphere(millimetres(65))}. Each
 * method takes a number in the named unit and returns the same amount in SI; each {@code in...} method goes back. Meant
 * for static import. Nothing is checked: NaN gives NaN. For texts: {@link QuantityText}. Stateless.
 */
public final class Units {
    /** The zero of the Celsius scale in kelvin (SI Brochure, 9th edition, 2.3.1). */
    public static final double ZERO_CELSIUS_K = 273.15;

    private Units() {}

    /**
     * {@return a length in m}
     *
     * @param millimetres length, mm
     */
    public static double millimetres(double millimetres) {
        return millimetres / 1e3;
    }

    /**
     * {@return a mass in kg}
     *
     * @param grams mass, g
     */
    public static double grams(double grams) {
        return grams / 1e3;
    }

    /**
     * {@return a temperature in K}
     *
     * @param celsius temperature, degrees Celsius
     */
    public static double celsius(double celsius) {
        return celsius + ZERO_CELSIUS_K;
    }

    /**
     * {@return a volume in m3}
     *
     * @param litres volume, L
     */
    public static double litres(double litres) {
        return litres / 1e3;
    }

    /**
     * {@return a length in mm for one in m}
     *
     * @param metres length, m
     */
    public static double inMillimetres(double metres) {
        return metres * 1e3;
    }

    /**
     * {@return a mass in g for one in kg}
     *
     * @param kilograms mass, kg
     */
    public static double inGrams(double kilograms) {
        return kilograms * 1e3;
    }

    /**
     * {@return a temperature in degrees Celsius for one in K}
     *
     * @param kelvin temperature, K
     */
    public static double inCelsius(double kelvin) {
        return kelvin - ZERO_CELSIUS_K;
    }

    /**
     * {@return a volume in cm3 for one in m3}
     *
     * @param cubicMetres volume, m3
     */
    public static double inCubicCentimetres(double cubicMetres) {
        return cubicMetres * 1e6;
    }

    /**
     * {@return an area in cm2 for one in m2}
     *
     * @param squareMetres area, m2
     */
    public static double inSquareCentimetres(double squareMetres) {
        return squareMetres * 1e4;
    }

    /**
     * {@return a density in g/cm3 for one in kg/m3}
     *
     * @param density density, kg/m3
     */
    public static double inGramsPerCubicCentimetre(double density) {
        return density / 1e3;
    }

    /**
     * {@return a fraction}
     *
     * @param percent so many of a hundred
     */
    public static double percent(double percent) {
        return percent / 100;
    }

    /**
     * {@return a time in s}
     *
     * @param hours time, h
     */
    public static double hours(double hours) {
        return hours * 3600;
    }

    /**
     * {@return a time in min for one in s}
     *
     * @param seconds time, s
     */
    public static double inMinutes(double seconds) {
        return seconds / 60;
    }

    /**
     * {@return a time in h for one in s}
     *
     * @param seconds time, s
     */
    public static double inHours(double seconds) {
        return seconds / 3600;
    }
}
