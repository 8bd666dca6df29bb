package org.fizzhull.fizz;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Carbon dioxide that a piece gives off, as bubbles of ideal gas saturated with water vapour:
 *
 * <pre>  u_g = v rho_b xi g V_m,   V_m = R T/(P - p_w)</pre>
 *
 * <p>u_g volume of gas per wet area and time (m/s), v recession of the face (m/s), rho_b bulk density (kg/m3), xi
 * carbon dioxide still obtainable (mol/kg), g share that becomes gas (0.65, 0.35 to 0.9, assumed), V_m volume of a mole
 * (m3/mol), T temperature (K), P pressure (Pa), p_w vapour pressure of water (Pa).
 *
 * <p>Range: pressures near one atmosphere; the ideal gas law is off by 0.5 % there (from memory). Source:
 * docs/physics/fizz.md, 6. Stateless.
 */
public final class Gas {
    /**
     * Depth over which bubbles on their way up lose all but 1/e of their gas, m (assumed): 0.65 at the surface is 0.35 at
     * 0.3 m.
     */
    private static final double SURVIVAL_DEPTH = 0.5;

    private Gas() {}

    /**
     * {@return the volume a mole of dry gas takes as bubbles that are saturated with water vapour, m3/mol}
     *
     * @param temperature K
     * @param pressure total, Pa
     * @param vapourPressure of water, Pa, below the total
     */
    public static double wetMolarVolume(double temperature, double pressure, double vapourPressure) {
        return PhysicalConstants.GAS_CONSTANT * temperature / (pressure - vapourPressure);
    }

    /**
     * {@return the volume of gas given off per wet area and time, m/s}
     *
     * @param recession v, speed of the receding surface, m/s
     * @param density rho_b, bulk density of the piece, kg/m3
     * @param gasCapacity xi, mol per kg of piece
     * @param gasShare g, share that becomes gas, 0 to 1
     * @param molarVolume V_m of {@link #wetMolarVolume}, m3/mol
     */
    public static double flux(
            double recession, double density, double gasCapacity, double gasShare, double molarVolume) {
        return recession * density * gasCapacity * gasShare * molarVolume;
    }

    /**
     * {@return the volume of gas that the solids wetted by a volume of water entering the pores can give, over that
     * volume: above 1 the gas can keep water out} A check that is printed; what soaks is driven by the law of the wet
     * skin (docs/physics/voyage.md, 5). For a 142 g ball of porosity 0.46 it is 270 when fresh and 29 at
     * 0.5 mol/kg.
     *
     * @param density of the piece, kg/m3
     * @param gasCapacity mol/kg
     * @param molarVolume m3/mol
     * @param porosity share of the piece that is open, above 0
     */
    public static double perEnteringWater(double density, double gasCapacity, double molarVolume, double porosity) {
        return density * gasCapacity * molarVolume / porosity;
    }

    /**
     * {@return the share of the carbon dioxide that reaches the surface as gas; the rest dissolves} Assumed, from
     * bubbles that dissolve on their way up (docs/physics/fizz.md, 6).
     *
     * @param gasShare share that is gas where it is made, 0 to 1
     * @param depth depth below the surface at which it is made, m, 0 or more
     */
    public static double seen(double gasShare, double depth) {
        return gasShare * Math.exp(-depth / SURVIVAL_DEPTH);
    }
}
