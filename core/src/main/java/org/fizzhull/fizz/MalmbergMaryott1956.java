package org.fizzhull.fizz;

import static org.fizzhull.quantity.Units.ZERO_CELSIUS_K;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Relative permittivity of water at 1 atm: Malmberg and Maryott (1956), a cubic in t. 0 to 100 C; 0.1 %.
 *
 * <p>Source: C. G. Malmberg and A. A. Maryott, Dielectric constant of water from 0 to 100 C, J. Res. Natl. Bur. Stand.
 * 56 (1956) 1 [from memory].
 */
public final class MalmbergMaryott1956 {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY = ValidityRange.ofTemperature(
            "Permittivity of water by Malmberg and Maryott (1956)", celsius(0), celsius(100));

    private MalmbergMaryott1956() {}

    /**
     * {@return the relative permittivity at a temperature in K}
     *
     * @param kelvin temperature, K
     */
    public static double permittivity(double kelvin) {
        double t = kelvin - ZERO_CELSIUS_K;
        return 87.740 + t * (-0.40008 + t * (9.398e-4 - t * 1.410e-6));
    }
}
