package org.fizzhull.voyage;

/**
 * Added mass of an oblate spheroid that moves along its axis in an endless ideal fluid, over the mass of the fluid it
 * displaces: {@code a/(2 - a)} with {@code a = 2 (1 + z^2)(1 - z (pi/2 - arctan z))}, {@code z = f/sqrt(1 - f^2)} and f
 * height over width. 1/2 for a ball, and without bound for a disc. Exact; used by {@link Resistance}. Stateless.
 *
 * <p>Source: H. Lamb, Hydrodynamics, 6th edition, Cambridge (1932), article 114 [from memory].
 */
public final class Lamb1932 {
    /** Flattening below which the closed form cancels, so that its first order is taken. */
    private static final double NEARLY_ROUND = 1e-4;

    private Lamb1932() {}

    /**
     * {@return the added mass of an oblate spheroid that moves along its axis, over the mass of the fluid it displaces}
     *
     * @param flatness height along the axis over the width, above 0, up to 1
     * @throws IllegalArgumentException for a prolate or degenerate spheroid
     */
    public static double oblate(double flatness) {
        if (!(flatness > 0 && flatness <= 1)) {
            throw new IllegalArgumentException("an oblate spheroid is no higher than wide: " + flatness);
        }
        if (1 - flatness < NEARLY_ROUND) {
            // to first order in the flattening; the closed form cancels here
            return 0.5 + 0.6 * (1 - flatness);
        }
        double z = flatness / Math.sqrt((1 - flatness) * (1 + flatness));
        double a = 2 * (1 + z * z) * (1 - z * (Math.PI / 2 - Math.atan(z)));
        return a / (2 - a);
    }
}
