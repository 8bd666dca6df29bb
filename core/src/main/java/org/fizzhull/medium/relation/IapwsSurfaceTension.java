package org.fizzhull.medium.relation;

import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Surface tension of pure water against its vapour: IAPWS R1-76(2014),
 * <pre>  sigma = 0.2358 tau^1.256 (1 - 0.625 tau) N/m,   tau = 1 - T/T_c</pre>
 * T temperature, T_c critical temperature, K. Range: 0.01 C to the critical point. Error: about 0.5 % near room
 * temperature. Soap, oil and fragrance in a bath lower it to 25-45 mN/m, which this relation leaves out. It sets the
 * size of bubbles and the gas that clings.
 *
 * <p>Source: IAPWS R1-76(2014), Revised release on surface tension of ordinary water substance (release page seen,
 * coefficients as coded in public open-source libraries) [second-hand]. Stateless.
 */
public final class IapwsSurfaceTension {
    /** Temperature, K. */
    public static final ValidityRange VALIDITY = ValidityRange.ofTemperature(
            "Surface tension by IAPWS R1-76(2014)", celsius(0.01), WagnerPruss2002.CRITICAL_TEMPERATURE_K);

    private IapwsSurfaceTension() {}

    /**
     * {@return the surface tension, N/m, at a temperature in K} Not checked; NaN gives NaN.
     *
     * @param kelvin temperature, K
     */
    public static double surfaceTension(double kelvin) {
        double tau = 1 - kelvin / WagnerPruss2002.CRITICAL_TEMPERATURE_K;
        return 0.2358 * Math.pow(tau, 1.256) * (1 - 0.625 * tau);
    }
}
