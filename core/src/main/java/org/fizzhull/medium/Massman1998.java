package org.fizzhull.medium;

import org.fizzhull.evidence.ValidityRange;

/**
 * Diffusivity of water vapour in air: Massman (1998), Atmos. Environ. 32, 1111, table 2. About 5 %.
 *
 * <p>Source: W. J. Massman, Atmos. Environ. 32 (1998) 1111, table 2; values as coded in public open-source libraries
 * [second-hand].
 */
final class Massman1998 {
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
        return 2.178e-5 * Math.pow(kelvin / 273.15, 1.81) * (101325 / pascal);
    }
}
