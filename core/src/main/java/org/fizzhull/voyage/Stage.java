package org.fizzhull.voyage;

import org.fizzhull.shape.DepthProfile;

/**
 * A part of a voyage during which the same faces are wet: every face, or the outer ones of a hollow that holds air.
 *
 * @param profile what is left at each depth of those faces
 * @param grid the same on even depths
 * @param immersion of the hull, closed where the hollow holds air
 * @param facePerPlan area of those faces over the plan area
 * @param insetVolume what an inset displaces beside the body, m3
 * @param hollow volume of that air at the pressure of the surface, m3; 0 where there is none
 */
record Stage(
        DepthProfile profile,
        ErosionGrid grid,
        Immersion immersion,
        double facePerPlan,
        double insetVolume,
        double hollow) {

    private static final double ROUNDING = 1e-15;
    private static final int MOST_PASSES = 60;

    /** Depth at which the air is let out, m; endless where there is none. */
    double pierced() {
        return hollow > 0 ? grid.deepest : Double.POSITIVE_INFINITY;
    }

    /**
     * Depth at which a volume is left, m, by Newton's method from a guess, kept inside the profile.
     *
     * @param left m3; the ends stand for what lies beyond them
     */
    double depthOf(double left, double guess) {
        double whole = grid.volume[0];
        if (left >= whole) {
            return 0;
        }
        if (!(left > 0)) {
            return grid.deepest;
        }
        double low = 0;
        double high = grid.deepest;
        double d = guess;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double excess = profile.volume(d) - left;
            if (excess > 0) {
                low = d;
            } else {
                high = d;
            }
            if (Math.abs(excess) <= ROUNDING * whole) {
                return d;
            }
            double next = d + excess / profile.area(d);
            d = next > low && next < high ? next : (low + high) / 2;
        }
        return d;
    }
}
