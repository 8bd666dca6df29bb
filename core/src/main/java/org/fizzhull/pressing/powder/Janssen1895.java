package org.fizzhull.pressing.powder;

/**
 * Pressure taken by the wall of a mould: Janssen (1895), Z. Ver. Dtsch. Ing. 39, 1045 (from memory), weight of the
 * powder neglected:
 *
 * <pre>
 * P(z) = P0 exp(-x z/H),   P_mean/P0 = (1 - exp(-x))/x,   x = 4 mu Kr H/D
 * </pre>
 *
 * P0 pressure under the plunger (Pa), z depth below it (m), H depth of the powder (m), D width (m), mu friction between
 * powder and wall (0.35 +- 0.12), Kr pressure on the wall over pressure along the axis (0.43 +- 0.07). For a straight
 * cylinder pressed from one side; other moulds take the cylinder of the same face ({@link MouldDimensions#of}). Stateless.
 */
public final class Janssen1895 {
    private Janssen1895() {}

    /**
     * {@return the exponent x, without unit}
     *
     * @param friction mu, coefficient of friction between powder and wall, 0 or more
     * @param lateralRatio Kr, pressure on the wall over pressure along the axis, 0 or more
     * @param depthOverWidth H/D, depth of the powder over the width of the mould, 0 or more
     */
    public static double exponent(double friction, double lateralRatio, double depthOverWidth) {
        return 4 * friction * lateralRatio * depthOverWidth;
    }

    /**
     * {@return the pressure at the bottom over that at the top, 0 to 1}
     *
     * @param exponent x of {@link #exponent}, 0 or more
     */
    public static double bottomOverTop(double exponent) {
        return Math.exp(-exponent);
    }

    /**
     * {@return the mean pressure over that at the top, (1 - exp(-x))/x, exact to rounding down to x = 0}
     *
     * @param exponent x of {@link #exponent}, 0 or more
     */
    public static double meanOverTop(double exponent) {
        return exponent == 0 ? 1 : -Math.expm1(-exponent) / exponent;
    }
}
