package org.fizzhull.pressing;

/**
 * Pressure taken by the wall of a mould: Janssen (1895), Z. Ver. Dtsch. Ing. 39, 1045 (from memory), weight of the
 * powder neglected: P(z) = P0 exp(-x z/H) with x = 4 mu Kr H/D.
 */
public final class Janssen1895 {
    private Janssen1895() {}

    /**
     * {@return the exponent x; depth H over width D of a cylinder, friction mu, lateral ratio Kr, all 0 or more}
     *
     * @param friction coefficient of friction between powder and wall
     * @param lateralRatio pressure on the wall over pressure along the axis
     * @param depthOverWidth depth of the mould over its width
     */
    public static double exponent(double friction, double lateralRatio, double depthOverWidth) {
        return 4 * friction * lateralRatio * depthOverWidth;
    }

    /**
     * {@return the pressure at the bottom over pressure at the top}
     *
     * @param exponent x of {@link #exponent}
     */
    public static double bottomOverTop(double exponent) {
        return Math.exp(-exponent);
    }

    /**
     * {@return the mean pressure over pressure at the top, (1 - exp(-x))/x, exact to rounding down to x = 0}
     *
     * @param exponent x of {@link #exponent}
     */
    public static double meanOverTop(double exponent) {
        return exponent == 0 ? 1 : -Math.expm1(-exponent) / exponent;
    }
}
