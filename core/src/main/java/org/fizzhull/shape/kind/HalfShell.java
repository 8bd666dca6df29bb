package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.size.SizeCheck;

/**
 * What is left of half a hollow ball, outer radius R, inner r, open at the rim: V = 2/3 pi (R^3 - r^3)
 * (docs/physics/hydrostatics.md, 1). Of {@link Bowl} and so of {@link Geode}.
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

    /** What is left at each depth, exact; a tray covers nothing of a round side. */
    DepthProfile profile(DepthProfile.Exposure exposure) {
        double wall = outer - inner;
        return exposure == DepthProfile.Exposure.OUTSIDE
                ? ProfileTable.cubic(new FromOutside(outer, inner), 0, wall)
                : ProfileTable.cubic(this, 0, wall / 2);
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
