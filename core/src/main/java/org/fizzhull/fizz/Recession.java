package org.fizzhull.fizz;

import org.fizzhull.evidence.PhysicalConstants;

/** Speed at which a wet surface moves inward: an Arrhenius law scaled by porosity and gas capacity; assumed. */
public final class Recession {
    /** Slowest speed, plain dissolution, m/s: 0.15 mm/min (smooth-body mass transfer, computed). */
    public static final double SLOWEST = 0.15e-3 / 60;

    /** Fastest speed believed, m/s: 20 mm/min (assumed). */
    public static final double FASTEST = 20e-3 / 60;

    private static final double REFERENCE_TEMPERATURE = 311.15;
    private static final double REFERENCE_POROSITY = 0.425;
    private static final double REFERENCE_CAPACITY = 4.6;
    private static final double LARGEST_CAPACITY_RATIO = 1.15;

    private Recession() {}

    /**
     * Speed in m/s, kept between {@link #SLOWEST} and {@link #FASTEST}.
     *
     * @param temperature of the water, K
     * @param porosity of the piece, 0 to 1
     * @param gasCapacity of the piece, mol/kg
     */
    public static double speed(FizzParameters p, double temperature, double porosity, double gasCapacity) {
        return Math.min(FASTEST, Math.max(SLOWEST, unbounded(p, temperature, porosity, gasCapacity)));
    }

    /** The law itself, m/s, so that a caller can say when an end was met. */
    public static double unbounded(FizzParameters p, double temperature, double porosity, double gasCapacity) {
        double capacity = Math.min(gasCapacity / REFERENCE_CAPACITY, LARGEST_CAPACITY_RATIO);
        double exponent =
                -p.activationEnergy() / PhysicalConstants.GAS_CONSTANT * (1 / temperature - 1 / REFERENCE_TEMPERATURE)
                        + p.porositySlope() * (porosity - REFERENCE_POROSITY);
        return p.recession38() * Math.exp(exponent) * Math.pow(capacity, p.reactiveExponent());
    }
}
