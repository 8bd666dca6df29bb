package org.fizzhull.medium.relation;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.evidence.published.ValidityRange;
import org.fizzhull.quantity.Units;

/**
 * Diffusivity of water vapour in air,
 * <pre>  D = 2.178e-5 (T/273.15)^1.81 (101325/p) m2/s</pre>
 * T temperature, K, p air pressure, Pa. Error: about 5 %. It carries the vapour from a drying piece into the room.
 *
 * <p>Source: W. J. Massman, Atmos. Environ. 32 (1998) 1111, table 2; values as coded in public open-source libraries
 * [second-hand]. Stateless.
 */
public final class Massman1998 {
    /** Temperature of room air in which the power law is used here, K. */
    public static final ValidityRange VALIDITY =
            ValidityRange.ofTemperature("Diffusivity of water vapour by Massman (1998)", 263.15, 373.15);

    private Massman1998() {}

    /**
     * {@return the diffusivity, m2/s, at a temperature in K and an air pressure in Pa} Not checked.
     *
     * @param kelvin temperature, K
     * @param pascal air pressure, Pa
     */
    public static double diffusivity(double kelvin, double pascal) {
        return 2.178e-5 * Math.pow(kelvin / Units.ZERO_CELSIUS_K, 1.81) * (PhysicalConstants.ATMOSPHERE / pascal);
    }
}
