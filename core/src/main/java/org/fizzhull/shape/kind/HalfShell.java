package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;
import org.fizzhull.shape.size.SizeCheck;

/**
 * Half a hollow ball, outer radius R, inner r, open at the rim, which lies at the top: V = 2/3 pi (R^3 - r^3)
 * (docs/physics/hydrostatics.md, 1). The body of {@link Bowl} and {@link Geode}.
 *
 * <p>Exact. Immutable.
 *
 * @param outer R, m
 * @param inner r, m, above 0 and below R
 */
record HalfShell(double outer, double inner) implements Erosion {
    /**
     * Half shell of outer diameter and wall, m; {@code what} words the kind in a refusal, blanks included.
     *
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for a wall that does not fit
     */
    static HalfShell of(String what, double diameter, double wall) {
        SizeCheck.size("diameter", diameter);
        SizeCheck.between("wall", wall, diameter / 2, what, diameter, "Without a hollow it is a dome(diameter=...).");
        SizeCheck.thickness("wall", wall);
        return new HalfShell(diameter / 2, diameter / 2 - wall);
    }

    /** Volume of the shell, m3. */
    double volume() {
        return volume(0);
    }

    /** Surface of the shell, m2, hollow and rim included. */
    double surface() {
        return front(0);
    }

    /** Centroid of the shell, m: 3 (R^4 - r^4)/(8 (R^3 - r^3)) below the rim. */
    Vec3 centroid() {
        double under = 3 * (outer * outer + inner * inner) * (outer + inner) / (8 * squares());
        return new Vec3(0, 0, outer - under);
    }

    /** Box, m. */
    Extents extents() {
        return new Extents(2 * outer, 2 * outer, outer);
    }

    /** Horizontal projection, m2: a disc of radius R. */
    double planArea() {
        return Math.PI * outer * outer;
    }

    /** Volume with the hollow closed by the rim plane, m3. */
    double closedVolume() {
        return 2 * Math.PI * outer * outer * outer / 3;
    }

    /** What is left at each depth, exact; a tray covers nothing of a round side. */
    DepthProfile profile(DepthProfile.Exposure exposure) {
        double wall = outer - inner;
        return exposure == DepthProfile.Exposure.OUTSIDE
                ? ProfileTable.cubic(new FromOutside(outer, inner), 0, wall)
                : ProfileTable.cubic(this, 0, wall / 2);
    }

    /** Outer arc, less the inner one; the rim is a level face. */
    Profile2D meridian() {
        return Profile2D.builder()
                .arc(outer, 0, outer, outer, 1, 0, outer)
                .inner()
                .arc(outer, 0, inner, inner, 1, outer - inner, outer)
                .build();
    }

    /** The hollow, closed at the height of the rim. */
    Hollow hollow() {
        Profile2D half =
                Profile2D.builder().arc(outer, 0, outer, outer, 1, 0, outer).build();
        double air = 2 * Math.PI * inner * inner * inner / 3;
        return Hollow.round(new RevolvedHull(half), outer, outer, air, outer - inner);
    }

    /** R^2 + R r + r^2: what is left of R^3 - r^3 over R - r. */
    private double squares() {
        return outer * outer + outer * inner + inner * inner;
    }

    /**
     * All faces: the rim plane sinks by d, the outer ball shrinks and the hollow grows. V = pi (R-2d)^2 (2R-d)/3 -
     * pi r^2 (2r+3d)/3, written with the wall left, u, as a factor.
     */
    @Override
    public double volume(double d) {
        double u = outer - inner - 2 * d;
        return Math.PI * u * (2 * inner * inner + (2 * inner + u) * (2 * outer - d)) / 3;
    }

    @Override
    public double front(double d) {
        double k = outer - 2 * d;
        return Math.PI * (k * (4 * (2 * outer - d) + k) / 3 + inner * inner);
    }

    /** The outer face alone: V = 2/3 pi ((R-d)^3 - r^3). */
    private record FromOutside(double outer, double inner) implements Erosion {
        @Override
        public double volume(double d) {
            double x = outer - d;
            return 2 * Math.PI * (x - inner) * (x * x + x * inner + inner * inner) / 3;
        }

        @Override
        public double front(double d) {
            return 2 * Math.PI * (outer - d) * (outer - d);
        }
    }
}
