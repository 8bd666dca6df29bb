package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;

/**
 * Prolate spheroid with half axes a &lt; c, eroded along its inward normals.
 *
 * <p>A normal runs undisturbed until it meets the axis, since the points with more than one nearest surface point lie
 * on the axis between the two centres of curvature of the tips. With zeta = z/c and N^2 = 1/a^2 - zeta^2 (1/a^2 -
 * 1/c^2) that reach is a^2 N, the principal curvatures are 1/(a^2 N) and 1/(a^2 c^2 N^3), and dS = 2 pi a^2 c N dzeta.
 * So V(d) is the integral of (1 - k1 s)(1 - k2 s) over the surface and over s from d to the reach: powers of N from 2
 * to -3, each of which integrates in closed form with zeta = sin(psi)/e, a N = cos(psi), e the eccentricity. With q =
 * a/c, t = d/a and zeta_d the height up to which normals reach deeper than d
 * <pre>
 *   V = 4 pi a c (a (I2/2 - q^2 zeta_d/6) - d I1 + d^2 (zeta_d + q^2 I-2)/(2a) - d^3 q^2 I-3/(3 a^2))
 *   A = 4 pi a c (I1 - t (zeta_d + q^2 I-2) + t^2 q^2 I-3),      Ik = INT_0^zeta_d (a N)^k dzeta
 * </pre>
 * Derived for this class. The eroded body is no spheroid; beyond d = a^2/c it has pointed ends.
 *
 * <p>Range: d from 0 to a. Error: rounding at the nodes and up to d = a^2/c, beyond that 1e-6 of V between nodes. Immutable. The body of {@link Egg}.
 *
 * @param a half axis across, m, above 0
 * @param c half axis along, m, above a: a ball has formulas of its own ({@link BeltedBall})
 */
record SpheroidErosion(double a, double c) implements Erosion {
    /** What is left at each depth; a break at the radius of curvature of the tips, a^2/c. */
    DepthProfile profile() {
        // up to the first break every normal reaches deeper, so that the volume is a cubic in d
        return ProfileTable.smoothAfterCubic(this, a * a / c, a);
    }

    @Override
    public double volume(double d) {
        return left(d)[0];
    }

    @Override
    public double front(double d) {
        return left(d)[1];
    }

    /** Both at once: they share their integrals. */
    @Override
    public double[] left(double d) {
        double e = eccentricity();
        double zeta = highest(d, e);
        double q2 = a / c * (a / c);
        double t = d / a;
        // sine and cosine of psi
        double sin = Math.min(1, e * zeta);
        double cos = cosine(zeta, e);
        // integrals of (a N)^2, a N, and 1/(a N)^2 and 1/(a N)^3 times q^2; atanh(sin) = ln((1 + sin)/cos)
        double square = zeta - e * e * zeta * zeta * zeta / 3;
        double first = (Math.atan2(sin, cos) + sin * cos) / (2 * e);
        double atanh = sin < 0.5 ? Math.log1p(2 * sin / (1 - sin)) / 2 : Math.log((1 + sin) / cos);
        double second = zeta + q2 * (atanh / e);
        double third = q2 * (zeta / cos);
        double scale = 4 * Math.PI * a * c;
        return new double[] {
            scale * a * (square / 2 - q2 * zeta / 6 - t * first + t * t * second / 2 - t * t * t * third / 3),
            scale * (first - t * second + t * t * third)
        };
    }

    /** e = sqrt(1 - a^2/c^2). */
    private double eccentricity() {
        return Math.sqrt((c - a) * (c + a)) / c;
    }

    /** Height, as a share of c, up to which normals reach deeper than d. */
    private double highest(double d, double e) {
        return d <= a * a / c ? 1 : Math.min(1, Math.sqrt(Math.max(0, (a - d) * (a + d))) / (a * e));
    }

    /** a N at a height zeta: the cosine of psi; at the tip a/c, without the cancellation. */
    private double cosine(double zeta, double e) {
        double q = a / c;
        return zeta == 1 ? q : Math.sqrt(Math.max(q * q, (1 - e * zeta) * (1 + e * zeta)));
    }
}
