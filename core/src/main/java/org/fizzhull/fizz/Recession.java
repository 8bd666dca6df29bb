package org.fizzhull.fizz;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Speed at which a wet face moves inward, m/s:
 *
 * <pre>  v = v38 exp[-(Ea/R)(1/T - 1/311.15 K)] exp[b (eps - 0.24)] min(xi/4.6, 1.15)^n,   0.15 mm/min &lt;= v &lt;= 20 mm/min</pre>
 *
 * <p>T of the water (K), eps porosity, xi carbon dioxide still obtainable (mol/kg), Ea activation energy (J/mol). No
 * speed of hand-pressed pieces is published. v38 and b are what six class-room times of one antacid tablet (porosity
 * 0.15) leave of wide assumptions (5 mm/min x/÷1.8 at porosity 0.425, b = 6 +- 4); 0.24 is the porosity at which that
 * update leaves the two independent, so that each can be drawn by itself. Floor: dissolution from a smooth body
 * (computed); ceiling: assumed. Error at the porosity of a hand-pressed piece, 0.45: x/÷1.8.
 */
public final class Recession {
    /** Slowest speed, plain dissolution, m/s: 0.15 mm/min (smooth-body mass transfer, computed). */
    public static final double SLOWEST = 0.15e-3 / 60;

    /** Fastest speed believed, m/s: 20 mm/min (assumed). */
    public static final double FASTEST = 20e-3 / 60;

    /** Porosity to which the speed of the parameters belongs. */
    public static final double REFERENCE_POROSITY = 0.24;

    /** Temperature to which it belongs, K. */
    public static final double REFERENCE_TEMPERATURE = 311.15;

    /** Gas capacity of the usual mix, to which the speed of the parameters belongs, mol/kg. */
    private static final double REFERENCE_CAPACITY = 4.6;
    /** Capacity over the usual one beyond which the speed grows no more (assumed): no mix has much more. */
    private static final double LARGEST_CAPACITY_RATIO = 1.15;

    private Recession() {}

    /**
     * {@return the speed in m/s, kept between {@link #SLOWEST} and {@link #FASTEST}}
     *
     * @param p parameters of fizzing
     * @param temperature of the water, K
     * @param porosity of the piece, 0 to 1
     * @param gasCapacity of the piece, mol/kg
     */
    public static double speed(FizzParameters p, double temperature, double porosity, double gasCapacity) {
        return Math.min(FASTEST, Math.max(SLOWEST, unbounded(p, temperature, porosity, gasCapacity)));
    }

    /**
     * {@return the law itself, m/s, so that a caller can say when an end was met}
     *
     * @param p parameters of fizzing
     * @param temperature temperature of the water, K
     * @param porosity volume of pores over the volume of the body, 0 to 1
     * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
     */
    public static double unbounded(FizzParameters p, double temperature, double porosity, double gasCapacity) {
        double capacity = Math.min(gasCapacity / REFERENCE_CAPACITY, LARGEST_CAPACITY_RATIO);
        double exponent =
                -p.activationEnergy() / PhysicalConstants.GAS_CONSTANT * (1 / temperature - 1 / REFERENCE_TEMPERATURE)
                        + p.porositySlope() * (porosity - REFERENCE_POROSITY);
        return p.recession38() * Math.exp(exponent) * Math.pow(capacity, p.reactiveExponent());
    }
}
