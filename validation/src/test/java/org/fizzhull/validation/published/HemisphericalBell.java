package org.fizzhull.validation.published;

import org.fizzhull.hydrostatics.Draft;

/**
 * Half of a hollow ball, open side down, with gas in the hollow: all forces of water and gas on its two round faces go
 * through the common centre, so that the flat rim alone decides how firmly it stands, whatever the gas. Closed forms of
 * docs/physics/hydrostatics.md, 3. Holds for a true half ball with a flat rim that is wet all round, and gas that does
 * not spill.
 *
 * @param outer outer radius, m
 * @param inner radius of the hollow, m
 */
public record HemisphericalBell(double outer, double inner) {
    /**
     * Checks the radii.
     *
     * @param outer outer radius, m
     * @param inner radius of the hollow, m
     */
    public HemisphericalBell {
        if (!(inner > 0 && outer > inner)) {
            throw new IllegalArgumentException("radii " + outer + " m and " + inner + " m do not make a bell");
        }
    }

    /** {@return the depth of the centre of mass of the wall below the rim plane, open side up, m} */
    public double centreDepth() {
        return 3 * (Math.pow(outer, 4) - Math.pow(inner, 4)) / (8 * (Math.pow(outer, 3) - Math.pow(inner, 3)));
    }

    /**
     * {@return the metacentric height open side down, m, for the ratio s of the density of the wall to that of the
     * water}
     *
     * @param s density of the wall over that of the water, above 0
     */
    public double metacentricHeight(double s) {
        return centreDepth() * (1 - s) / s;
    }

    /**
     * {@return the height of the inner water level above the rim plane, m, with gas in a share (0 to 1) of the hollow}
     *
     * @param gasShare volume of gas over the volume of the hollow, 0 to 1
     */
    public double waterHeight(double gasShare) {
        // (r - y)^2 (2r + y) = 2 r^3 share: a cap of the ball, as for the draft of a ball
        return inner * (1 - 2 * Draft.ballDraft(gasShare / 2));
    }

    /**
     * {@return the heel beyond which gas spills, rad, with gas in a share (0 to 1) of the hollow}
     *
     * @param gasShare volume of gas over the volume of the hollow, 0 to 1
     */
    public double spillHeel(double gasShare) {
        return Math.asin(waterHeight(gasShare) / inner);
    }

    /**
     * {@return the volume of the gas over its volume at the surface (Boyle), at a depth in m}
     *
     * @param depth depth of the gas below the surface, m
     * @param airPressure pressure of the air, Pa
     * @param waterDensity density of the water, kg/m3
     * @param gravity standard acceleration of gravity, m/s2
     */
    public static double squeezed(double depth, double airPressure, double waterDensity, double gravity) {
        return airPressure / (airPressure + waterDensity * gravity * depth);
    }
}
