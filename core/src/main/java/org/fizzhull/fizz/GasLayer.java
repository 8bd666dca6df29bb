package org.fizzhull.fizz;

/**
 * The layer of bubbles that clings to a fizzing surface. Coverage after Vogt and Balzer (2005), Electrochim. Acta 50,
 * 2073, for gas-evolving electrodes (second-hand), here at fluxes where it is extrapolated.
 */
public final class GasLayer {
    /** Gas flux at which the whole surface would be covered, m/s (their 3e5 A/m2 of hydrogen at 25 C). */
    public static final double FULL_COVERAGE_FLUX = 0.038;

    /** Below this capacity, mol/kg, nothing clings. */
    public static final double LEAST_CAPACITY = 0.02;

    private GasLayer() {}

    /**
     * Covered share of the surface, kept between 0.05 and 0.9.
     *
     * @param flux gas volume per area and time, m/s
     */
    public static double coverage(FizzParameters p, double flux) {
        return Math.min(0.9, Math.max(0.05, Math.pow(flux / FULL_COVERAGE_FLUX, 0.3) + p.coverageShift()));
    }

    /** Gas volume per wet area once the layer is full, m: spheres of the bubble diameter on the covered share. */
    public static double thickness(FizzParameters p, double flux) {
        return coverage(p, flux) * (2.0 / 3.0) * p.bubbleDiameter() * p.layerMultiplier();
    }
}
