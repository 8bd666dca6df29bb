package org.fizzhull.fizz;

/**
 * Gas that clings to a fizzing face, as volume per area (m):
 *
 * <pre>  l = kappa d_b c(u) [1 + q (A_plan/A - 1/4)],   c(u) = min(1, (u/u_f)^0.3)</pre>
 *
 * <p>d_b diameter of a bubble as it leaves (m), kappa volume per area of a fully covered face over that diameter, u gas
 * given off per area and time (m/s), u_f = 2.5e-4 m/s, q what undersides hold beyond the mean, A_plan/A projected over
 * whole surface in the attitude of the body.
 *
 * <ul>
 *   <li>kappa: equal spheres in one layer hold at most 0.605 (hexagonal packing, {@link #MONOLAYER}); their mean over a
 *       life of growth is 0.8 of that; rough faces seen from above are covered by 0.9. Hence 0.45, 0.2 to 0.605.
 *   <li>c: the power 0.3 of Vogt and Balzer (2005), Electrochim. Acta 50, 2073 (second-hand) holds for the area in
 *       contact, full at 0.038 m/s: {@link #contactCoverage}. Projected coverage, which lifts, is full far sooner: on
 *       porous nickel at 200 mA/cm2 of hydrogen or below, 2.5e-4 m/s (Rox et al., arXiv:2209.11550, abstract). A piece
 *       gives 2.5 to 10 mm/s, so c is 1 but for one that is nearly spent.
 *   <li>q: undersides hold single large bubbles, upright faces many small ones (Stanic et al., Metals 11 (2021) 965,
 *       abstract). The form is the simplest that leaves the mean over all attitudes alone: by Cauchy's theorem a convex
 *       body shows on average a quarter of its surface. The size of q is assumed, 0 to 1.
 * </ul>
 */
public final class GasLayer {
    /** Gas flux at which the area in contact would be covered wholly, m/s (3e5 A/m2 of hydrogen at 25 C). */
    public static final double CONTACT_FULL_FLUX = 0.038;

    /** Gas flux at which a rough face looks covered wholly, m/s (2e3 A/m2 of hydrogen at 25 C). */
    public static final double PROJECTED_FULL_FLUX = 2.5e-4;

    /** Volume per area of a hexagonal layer of equal spheres over their diameter, pi/(3 sqrt 3). */
    public static final double MONOLAYER = Math.PI / (3 * Math.sqrt(3));

    /** Power of the gas flux (Vogt and Balzer 2005, second-hand). */
    private static final double POWER = 0.3;
    /** Projected over whole surface of a convex body, the mean of all attitudes (Cauchy). */
    private static final double MEAN_PLAN_SHARE = 0.25;

    private GasLayer() {}

    /**
     * {@return the share of a face in contact with bubbles, 0 to 1: a lower bound of what they cover}
     *
     * @param flux u, gas given off per area and time, m/s, 0 or more
     */
    public static double contactCoverage(double flux) {
        return Math.min(1, Math.pow(flux / CONTACT_FULL_FLUX, POWER));
    }

    /**
     * {@return c(u), the covered share of a face over that of one that fizzes hard, 0 to 1}
     *
     * @param flux u, gas given off per area and time, m/s, 0 or more
     */
    public static double coverage(double flux) {
        return flux >= PROJECTED_FULL_FLUX ? 1 : Math.pow(flux / PROJECTED_FULL_FLUX, POWER);
    }

    /**
     * {@return l, the gas volume per wet area once the layer is full, m; the mean over attitudes}
     *
     * @param p parameters of fizzing, of the mix ({@link FizzParameters#in})
     * @param flux u, gas given off per area and time, m/s, 0 or more
     */
    public static double thickness(FizzParameters p, double flux) {
        return p.layerRatio() * p.bubbleDiameter() * coverage(flux);
    }

    /**
     * {@return the factor that the attitude puts on the layer, 1 + q (A_plan/A - 1/4)}
     *
     * @param p parameters of fizzing
     * @param planShare projected area over whole surface, A_plan/A; 1/4 for a ball, near 1/2 for a thin disc that lies flat
     */
    public static double attitudeFactor(FizzParameters p, double planShare) {
        return 1 + p.undersideExcess() * (planShare - MEAN_PLAN_SHARE);
    }
}
