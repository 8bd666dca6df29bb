package org.fizzhull.shape;

import org.fizzhull.numeric.Vec3;

/**
 * Half a hollow ball, outer radius R, inner r, open at the rim, which lies at the top: V = 2/3 pi (R^3 - r^3)
 * (docs/physics/hydrostatics.md, 1).
 */
record HalfShell(double outer, double inner) implements Erosion {
    /** Half shell of outer diameter and wall, m; refuses a wall that does not fit. */
    static HalfShell of(String what, double diameter, double wall) {
        SizeCheck.size("diameter", diameter);
        SizeCheck.between("wall", wall, diameter / 2, what, diameter, "Without a hollow it is a dome(diameter=...).");
        return new HalfShell(diameter / 2, diameter / 2 - wall);
    }

    double volume() {
        return volume(0);
    }

    double surface() {
        return front(0);
    }

    Vec3 centroid() {
        double under = 3 * (outer * outer + inner * inner) * (outer + inner) / (8 * squares());
        return new Vec3(0, 0, outer - under);
    }

    Extents extents() {
        return new Extents(2 * outer, 2 * outer, outer);
    }

    double planArea() {
        return Math.PI * outer * outer;
    }

    double closedVolume() {
        return 2 * Math.PI * outer * outer * outer / 3;
    }

    DepthProfile profile(Exposure exposure) {
        double wall = outer - inner;
        return exposure == Exposure.OUTSIDE
                ? ProfileTable.cubic(new FromOutside(outer, inner), 0, wall)
                : ProfileTable.cubic(this, 0, wall / 2);
    }

    Profile2D meridian() {
        return Profile2D.builder()
                .arc(outer, 0, outer, outer, 1, 0, outer)
                .inner()
                .arc(outer, 0, inner, inner, 1, outer - inner, outer)
                .build();
    }

    Hollow hollow() {
        Profile2D half =
                Profile2D.builder().arc(outer, 0, outer, outer, 1, 0, outer).build();
        double air = 2 * Math.PI * inner * inner * inner / 3;
        return Hollow.round(new RevolvedHull(half), outer, outer, air, outer - inner);
    }

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
