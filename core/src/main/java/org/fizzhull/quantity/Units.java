package org.fizzhull.quantity;

/**
 * Doors between a person's units and the SI doubles inside: {@code Sphere.ofDiameter(millimetres(65))}. Each method
 * takes a number in the named unit and returns the same amount in SI; each {@code in...} method goes back.
 */
public final class Units {
    /** The zero of the Celsius scale in kelvin (SI Brochure, 9th edition, 2.3.1). */
    public static final double ZERO_CELSIUS_K = 273.15;

    private Units() {}

    /** Metres. */
    public static double millimetres(double millimetres) {
        return millimetres / 1e3;
    }

    /** Kilograms. */
    public static double grams(double grams) {
        return grams / 1e3;
    }

    /** Kelvin. */
    public static double celsius(double celsius) {
        return celsius + ZERO_CELSIUS_K;
    }

    /** Cubic metres. */
    public static double litres(double litres) {
        return litres / 1e3;
    }

    /** Kilograms per cubic metre. */
    public static double gramsPerCubicCentimetre(double density) {
        return density * 1e3;
    }

    /** Millimetres, from metres. */
    public static double inMillimetres(double metres) {
        return metres * 1e3;
    }

    /** Grams, from kilograms. */
    public static double inGrams(double kilograms) {
        return kilograms * 1e3;
    }

    /** Degrees Celsius, from kelvin. */
    public static double inCelsius(double kelvin) {
        return kelvin - ZERO_CELSIUS_K;
    }

    /** Cubic centimetres, from cubic metres. */
    public static double inCubicCentimetres(double cubicMetres) {
        return cubicMetres * 1e6;
    }

    /** Square centimetres, from square metres. */
    public static double inSquareCentimetres(double squareMetres) {
        return squareMetres * 1e4;
    }

    /** Grams per cubic centimetre, from kilograms per cubic metre. */
    public static double inGramsPerCubicCentimetre(double density) {
        return density / 1e3;
    }
}
