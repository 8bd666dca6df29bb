package org.fizzhull.fizz;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Ion product of water: Marshall and Franck (1981), adopted by IAPWS in 1980. 0 to 1000 C; 0.01 in pKw in a bath.
 *
 * <p>Source: W. L. Marshall and E. U. Franck, Ion product of water substance, 0-1000 C, J. Phys. Chem. Ref. Data 10
 * (1981) 295 [from memory].
 */
public final class MarshallFranck1981 {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY = ValidityRange.ofTemperature(
            "Ion product of water by Marshall and Franck (1981)", celsius(0), celsius(1000));

    private MarshallFranck1981() {}

    /**
     * {@return the lg Kw, molal}
     *
     * @param kelvin temperature, K
     * @param waterDensity of pure water, kg/m3
     */
    public static double lgIonProduct(double kelvin, double waterDensity) {
        double t = kelvin;
        return -4.098
                - 3245.2 / t
                + 2.2362e5 / (t * t)
                - 3.984e7 / (t * t * t)
                + (13.957 - 1262.3 / t + 8.5641e5 / (t * t)) * Math.log10(waterDensity / 1000);
    }
}
