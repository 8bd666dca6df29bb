package org.fizzhull.medium.relation;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Saturation vapour pressure over liquid water: Wagner and Pruss (2002), equation 2.5,
 * <pre>  ln(e/p_c) = (T_c/T) (a1 x + a2 x^1.5 + a3 x^3 + a4 x^3.5 + a5 x^4 + a6 x^7.5),   x = 1 - T/T_c</pre>
 * T temperature and T_c critical temperature, K, e and p_c pressures, Pa. Range: 273.16 to 647.096 K; used below that
 * over supercooled water, as weather services report humidity. Error: 0.03 % or better, far below what a home
 * hygrometer can tell.
 *
 * <p>Source: W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387, eq. 2.5; coefficients as coded in public
 * open-source libraries [second-hand]. Stateless.
 */
public final class WagnerPruss2002 {
    /** Critical temperature of water, K. */
    public static final double CRITICAL_TEMPERATURE_K = 647.096;

    /** Critical pressure of water, Pa. */
    public static final double CRITICAL_PRESSURE_PA = 22.064e6;

    /** Temperature, K: triple point to critical point. */
    public static final ValidityRange VALIDITY =
            ValidityRange.ofTemperature("Vapour pressure by Wagner and Pruss (2002)", 273.16, CRITICAL_TEMPERATURE_K);

    private WagnerPruss2002() {}

    /**
     * {@return the saturation vapour pressure, Pa, at a temperature in K} Not checked; NaN gives NaN.
     *
     * @param kelvin temperature, K
     */
    public static double vapourPressure(double kelvin) {
        double theta = 1 - kelvin / CRITICAL_TEMPERATURE_K;
        double half = Math.sqrt(theta);
        double cube = theta * theta * theta;
        double sum = theta * (-7.85951783 + 1.84408259 * half)
                + cube * (-11.7866497 + 22.6807411 * half - 15.9618719 * theta)
                + 1.80122502 * cube * cube * theta * half;
        return CRITICAL_PRESSURE_PA * Math.exp(CRITICAL_TEMPERATURE_K / kelvin * sum);
    }
}
