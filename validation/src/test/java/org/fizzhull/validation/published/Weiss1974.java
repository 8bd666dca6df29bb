package org.fizzhull.validation.published;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;
import org.fizzhull.fizz.PlummerBusenberg1982;

/**
 * Solubility of carbon dioxide in water and sea water: Weiss (1974),
 * {@code ln K0 = A1 + A2 (100/T) + A3 ln(T/100) + S [B1 + B2 (T/100) + B3 (T/100)^2]}. -1 to 40 C, salinity 0 to 40
 * g/kg; 0.3 %. The independent check of {@link PlummerBusenberg1982}.
 *
 * <p>Source: R. F. Weiss, Carbon dioxide in water and seawater: the solubility of a non-ideal gas, Mar. Chem. 2 (1974)
 * 203; coefficients as coded in public open-source libraries [second-hand].
 */
public final class Weiss1974 {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY =
            ValidityRange.ofTemperature("Solubility of carbon dioxide by Weiss (1974)", celsius(-1), celsius(40));

    private Weiss1974() {}

    /**
     * {@return the solubility, mol/(L atm), at a temperature in K}
     *
     * @param kelvin temperature, K
     * @param salinity g of sea salt per kg
     */
    public static double perLitre(double kelvin, double salinity) {
        return Math.exp(ln(kelvin, salinity, -58.0931, 90.5069, 22.2940, 0.027766, -0.025888, 0.0050578));
    }

    /**
     * {@return the solubility, mol/(kg atm), at a temperature in K}
     *
     * @param kelvin temperature, K
     * @param salinity g of sea salt per kg
     */
    public static double perKilogram(double kelvin, double salinity) {
        return Math.exp(ln(kelvin, salinity, -60.2409, 93.4517, 23.3585, 0.023517, -0.023656, 0.0047036));
    }

    private static double ln(
            double kelvin, double salinity, double a1, double a2, double a3, double b1, double b2, double b3) {
        double t = kelvin / 100;
        return a1 + a2 / t + a3 * Math.log(t) + salinity * (b1 + t * (b2 + t * b3));
    }
}
