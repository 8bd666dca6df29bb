package org.fizzhull.medium;

import org.fizzhull.medium.relation.WagnerPruss2002;
import org.fizzhull.quantity.Units;

/**
 * Dew point and wet bulb of room air: ASHRAE Handbook of Fundamentals, chapter 1, with the vapour pressure of {@link
 * WagnerPruss2002} [formulas from memory]. With e the vapour pressure and p that of the air, Pa, t and t_w the
 * temperatures of air and wet bulb, C, and W_s the humidity ratio of saturated air at t_w:
 * <pre>
 *   W = 0.621945 e/(p - e)
 *   W = ((2501 - 2.326 t_w) W_s - 1.006 (t - t_w))/(2501 + 1.86 t - 4.186 t_w)
 * </pre>
 * Both are solved by bisection, 60 halvings: plain, certain, and far from any hot path. Stateless.
 */
final class Psychrometrics {
    /** Molar mass of water over that of dry air. */
    private static final double MOLAR_MASS_RATIO = 0.621945;

    private Psychrometrics() {}

    /** Humidity ratio, kg/kg, at vapour pressure e and air pressure p, Pa. */
    static double humidityRatio(double e, double p) {
        return MOLAR_MASS_RATIO * e / (p - e);
    }

    /** Dew point, K, of vapour pressure e, Pa; over supercooled water below 0 C. NaN below 1 Pa. */
    static double dewPoint(double e) {
        if (!(e >= 1)) {
            return Double.NaN;
        }
        double low = 200;
        double high = 373;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (WagnerPruss2002.vapourPressure(middle) < e) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Wet-bulb temperature of room air, K; above freezing. Found between -25 C and the temperature of the air. */
    static double wetBulb(RoomAir air) {
        double t = air.temperature() - Units.ZERO_CELSIUS_K;
        double w = air.humidityRatio();
        double low = -25;
        double high = t;
        for (int i = 0; i < 60; i++) {
            double wick = 0.5 * (low + high);
            double saturated =
                    humidityRatio(WagnerPruss2002.vapourPressure(wick + Units.ZERO_CELSIUS_K), air.pressure());
            double ratio = ((2501 - 2.326 * wick) * saturated - 1.006 * (t - wick)) / (2501 + 1.86 * t - 4.186 * wick);
            if (ratio < w) {
                low = wick;
            } else {
                high = wick;
            }
        }
        return 0.5 * (low + high) + Units.ZERO_CELSIUS_K;
    }
}
