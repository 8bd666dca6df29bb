package org.fizzhull.quantity;

/**
 * Doors between a person's units and the SI doubles inside: {@code Sphere.ofDiameter(millimetres(65))}. Each method
 * takes a number in the named unit and returns the same amount in SI; each {@code in...} method goes back.
 */
public final class Units {
    /** The zero of the Celsius scale in kelvin (SI Brochure, 9th edition, 2.3.1). */
    public static final double ZERO_CELSIUS_K = 273.15;

    private Units() {}

    /** {@return a length in m} */
    public static double millimetres(double millimetres) {
        return millimetres / 1e3;
    }

    /** {@return a mass in kg} */
    public static double grams(double grams) {
        return grams / 1e3;
    }

    /** {@return a temperature in K} */
    public static double celsius(double celsius) {
        return celsius + ZERO_CELSIUS_K;
    }

    /** {@return the cubic metres} */
    public static double litres(double litres) {
        return litres / 1e3;
    }

    /** {@return a density in kg/m3} */
    public static double gramsPerCubicCentimetre(double density) {
        return density * 1e3;
    }

    /** {@return a length in mm for one in m} */
    public static double inMillimetres(double metres) {
        return metres * 1e3;
    }

    /** {@return a mass in g for one in kg} */
    public static double inGrams(double kilograms) {
        return kilograms * 1e3;
    }

    /** {@return a temperature in degrees Celsius for one in K} */
    public static double inCelsius(double kelvin) {
        return kelvin - ZERO_CELSIUS_K;
    }

    /** {@return the cubic centimetres, from cubic metres} */
    public static double inCubicCentimetres(double cubicMetres) {
        return cubicMetres * 1e6;
    }

    /** {@return the square centimetres, from square metres} */
    public static double inSquareCentimetres(double squareMetres) {
        return squareMetres * 1e4;
    }

    /** {@return a density in g/cm3 for one in kg/m3} */
    public static double inGramsPerCubicCentimetre(double density) {
        return density / 1e3;
    }
}
