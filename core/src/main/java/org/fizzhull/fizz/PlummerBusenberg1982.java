package org.fizzhull.fizz;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Carbon dioxide in water: Plummer and Busenberg (1982), {@code lg K = a + b T + c/T + d lg T + e/T^2}, molal, without
 * other salts. 0 to 90 C. Error: solubility 0.5 % (against Weiss and IAPWS G7-04 at 25 C), K1 and K2 0.01 in lg [from memory]. One set of constants that fit each other; Weiss (1974) is the check, in the validation module.
 *
 * <p>Source: L. N. Plummer and E. Busenberg, The solubilities of calcite, aragonite and vaterite in CO2-H2O solutions
 * between 0 and 90 C, Geochim. Cosmochim. Acta 46 (1982) 1011; coefficients as coded in public open-source programs
 * [second-hand].
 */
public final class PlummerBusenberg1982 {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY = ValidityRange.ofTemperature(
            "Carbon dioxide equilibria by Plummer and Busenberg (1982)", celsius(0), celsius(90));

    private PlummerBusenberg1982() {}

    /**
     * {@return the lg of the solubility K0, mol/(kg atm) of dissolved gas per partial pressure, at a temperature in K}
     *
     * @param kelvin temperature, K
     */
    public static double lgSolubility(double kelvin) {
        return lg(kelvin, 108.3865, 0.01985076, -6919.53, -40.45154, 669365);
    }

    /**
     * {@return the lg K1 of CO2(aq) + H2O = H+ + HCO3-, molal}
     *
     * @param kelvin temperature, K
     */
    public static double lgFirst(double kelvin) {
        return lg(kelvin, -356.3094, -0.06091964, 21834.37, 126.8339, -1684915);
    }

    /**
     * {@return the lg K2 of HCO3- = H+ + CO3--, molal}
     *
     * @param kelvin temperature, K
     */
    public static double lgSecond(double kelvin) {
        return lg(kelvin, -107.8871, -0.03252849, 5151.79, 38.92561, -563713.9);
    }

    private static double lg(double t, double a, double b, double c, double d, double e) {
        return a + b * t + c / t + d * Math.log10(t) + e / (t * t);
    }
}
