package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.revolved.Profile2D;

/**
 * Two half balls of radius R with a cylinder of length L between them, axis along z, standing on a pole: the body of a
 * {@link Sphere} with a seam and of a {@link Capsule}.
 * <pre>
 *   V(d) = pi r^2 (L + 4r/3),   A(d) = 2 pi r (L + 2r),   r = R - d
 * </pre>
 *
 * <p>What is left at depth d is the same body with R - d (docs/physics/hydrostatics.md, 1), down to a line on the axis
 * at d = R. Exact. Immutable.
 *
 * @param radius R, m, above 0
 * @param belt L, m, 0 or more; 0 is a plain ball
 */
record BeltedBall(double radius, double belt) implements Erosion {
    /** What is left at each depth, every face open; V is a cubic in d, so the table is exact. */
    DepthProfile profile() {
        return ProfileTable.cubic(this, 0, radius);
    }

    /** Meridian with the lower pole at height 0. */
    Profile2D meridian() {
        double r = radius;
        if (belt == 0) {
            return Profile2D.builder().arc(r, 0, r, r, 1, 0, 2 * r).build();
        }
        return Profile2D.builder()
                .arc(r, 0, r, r, 1, 0, r)
                .line(r, r, r + belt, r)
                .arc(r + belt, 0, r, r, 1, r + belt, 2 * r + belt)
                .build();
    }

    @Override
    public double volume(double d) {
        double r = radius - d;
        return Math.PI * r * r * (belt + 4 * r / 3);
    }

    @Override
    public double front(double d) {
        double r = radius - d;
        return 2 * Math.PI * r * (belt + 2 * r);
    }
}
