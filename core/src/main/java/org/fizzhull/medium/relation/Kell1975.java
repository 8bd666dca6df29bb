package org.fizzhull.medium.relation;

import static org.fizzhull.quantity.Units.ZERO_CELSIUS_K;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Density of fresh, air-free water at 1 atm: Kell (1975), a rational function of t in C,
 * <pre>  rho = (999.84 + 16.945 t - 7.987e-3 t^2 - ...)/(1 + 16.880e-3 t) kg/m3</pre>
 * Range: 0 to 100 C. Error: within 0.004 kg/m3 of the reference equation of state for general use (IAPWS-95) from 10 to
 * 45 C; the temperature scale of 1968 is read as that of 1990, which costs 0.004 kg/m3 at 40 C at most.
 *
 * <p>Source: G. S. Kell, Density, thermal expansivity, and compressibility of liquid water from 0 to 150 C, J. Chem.
 * Eng. Data 20 (1975) 97; coefficients as coded in public open-source libraries [second-hand]. Stateless. With salt:
 * {@link LaliberteCooper2004}.
 */
public final class Kell1975 {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY =
            ValidityRange.ofTemperature("Water density by Kell (1975)", celsius(0), celsius(100));

    private Kell1975() {}

    /**
     * {@return the density, kg/m3, at a temperature in K} Not checked; NaN gives NaN.
     *
     * @param kelvin temperature, K
     */
    public static double density(double kelvin) {
        double t = kelvin - ZERO_CELSIUS_K;
        double numerator = 999.83952
                + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
        return numerator / (1 + 16.879850e-3 * t);
    }
}
