package org.fizzhull.drying.run;

import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.shape.Shape;

/**
 * Pressure that pieces can make in a rigid closed jar: ideal gas, {@code p = n R T / V} above the air already there. At
 * the pressures of a fully reacted piece a real gas shows up to a quarter less (docs/physics/drying.md, 9, computed
 * with the equation of Soave, Redlich and Kwong: 19.4 bar ideal is 17.6 bar in a litre); ideal is the safe side. Glass
 * and jars burst far below.
 *
 * <p>Told with every drying that ends in storage or a rigid vessel ({@link org.fizzhull.forecast.DryForecast#jar}); no
 * pressure told here is a safe one.
 *
 * @param gas CO2 set free, mol
 * @param overpressure above the outside air, Pa
 */
public record JarPressure(double gas, double overpressure) {

    /** The caution that goes with every figure. */
    public static final Notice CAUTION = Notice.caution(
            "sealed-jars-burst",
            "Never close damp or unsure pieces in a rigid jar, bottle or glass: the gas can burst it.");

    /** Least volume of the jar for which the pressure is computed, m3. */
    private static final double LITRE = 1e-3;

    /**
     * {@return the volume of the jar for which the pressure is computed, m3: a litre, or twice the piece where it is
     * larger than half a litre}
     *
     * @param shape form of the piece
     */
    public static double volume(Shape shape) {
        return Math.max(LITRE, 2 * shape.volume());
    }

    /**
     * {@return the pressure once a share of the fizz has gone off inside}
     *
     * @param capacity CO2 obtainable, mol per kg of dry mix
     * @param dryMass dry mix in the jar, kg
     * @param share of the fizz that reacts, 0 to 1
     * @param free volume of the jar left free by the pieces, m3
     * @param kelvin temperature
     * @throws IllegalArgumentException for a share outside 0 to 1, no free volume, or a mass below 0
     */
    public static JarPressure of(double capacity, double dryMass, double share, double free, double kelvin) {
        boolean sound = capacity >= 0 && dryMass >= 0 && share >= 0 && share <= 1 && free > 0 && kelvin > 0;
        if (!sound) {
            throw new IllegalArgumentException("a jar needs a free volume, a share of 0 to 1 and masses of 0 or more");
        }
        double gas = capacity * dryMass * share;
        return new JarPressure(gas, gas * PhysicalConstants.GAS_CONSTANT * kelvin / free);
    }

    /**
     * {@return what is told of the pressure that all the fizz of one piece makes in a closed jar}
     *
     * @param overpressure above the outside air, Pa
     * @param volume of the jar, m3
     */
    public static Notice notice(double overpressure, double volume) {
        double bar = overpressure / 1e5;
        return Notice.caution(
                "jar-pressure",
                "One such piece in a closed jar of " + Decimals.tenths(1000 * volume) + " L: 1 % of its fizz adds "
                        + Math.round(bar) + " kPa, all of it " + Decimals.tenths(bar)
                        + " bar (of an ideal gas); glass bursts far below.");
    }
}
