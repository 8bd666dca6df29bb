package org.fizzhull.fizz;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Gas fraction of the water above a fizzing piece: drift flux, Zuber and Findlay with Ishii's velocity (from memory).
 *
 * <pre>  alpha = j/(1.2 j + v_d),   v_d = 1.53 (sigma g/rho)^(1/4)</pre>
 *
 * <p>alpha gas fraction, j gas volume per plan area and time (m/s), v_d drift velocity (m/s), sigma surface tension
 * (N/m), rho density of the water (kg/m3). Derivation: docs/physics/voyage.md, 4. Stateless.
 */
public final class Plume {
    /** Distribution parameter of drift flux in a round plume (Zuber and Findlay, from memory). */
    private static final double DISTRIBUTION = 1.2;

    private Plume() {}

    /**
     * {@return the gas fraction, 0 to 1}
     *
     * @param superficialVelocity gas volume per plan area and time, m/s
     * @param driftVelocity of {@link #driftVelocity}, m/s
     */
    public static double gasFraction(double superficialVelocity, double driftVelocity) {
        return superficialVelocity / (DISTRIBUTION * superficialVelocity + driftVelocity);
    }

    /**
     * {@return the drift velocity v_d of distorted bubbles, m/s; about 0.25 in a bath}
     *
     * @param surfaceTension sigma of the water, N/m
     * @param waterDensity rho of the water, kg/m3
     */
    public static double driftVelocity(double surfaceTension, double waterDensity) {
        return 1.53 * Math.sqrt(Math.sqrt(surfaceTension * PhysicalConstants.GRAVITY / waterDensity));
    }
}
