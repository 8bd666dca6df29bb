package org.fizzhull.validation.published;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * How fast dissolved carbon dioxide and carbonic acid turn into each other: Soli and Byrne (2002), in 0.65 molal sodium
 * chloride, 15 to 32.5 C. Carbonic acid loses its water within about 13 ms in a warm bath, so that the chemistry of a
 * piece waits for its grains, never for this step; the voyage takes it as done at once.
 *
 * <p>Source: A. L. Soli and R. H. Byrne, CO2 system hydration and dehydration kinetics, Mar. Chem. 78 (2002) 65; as
 * quoted in the documentation of a public open-source library [second-hand].
 */
public final class SoliByrne2002 {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY = ValidityRange.ofTemperature(
            "Hydration of carbon dioxide by Soli and Byrne (2002)", celsius(15), celsius(32.5));

    private SoliByrne2002() {}

    /**
     * {@return the rate of CO2 + H2O to H2CO3, 1/s, at a temperature in K}
     *
     * @param kelvin temperature, K
     */
    public static double hydration(double kelvin) {
        return Math.exp(22.66 - 7799 / kelvin);
    }

    /**
     * {@return the rate of H2CO3 to CO2 + H2O, 1/s, at a temperature in K}
     *
     * @param kelvin temperature, K
     */
    public static double dehydration(double kelvin) {
        return Math.exp(30.15 - 8018 / kelvin);
    }
}
