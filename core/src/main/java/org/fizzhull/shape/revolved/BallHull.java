package org.fizzhull.shape.revolved;

import org.fizzhull.geometry.PlaneCut;

/**
 * Cut of a ball by a plane in closed form. With d the signed distance of the plane from the centre along n, m, h = R +
 * d the height of the part below and a^2 = (R - d)(R + d) the square of the radius of the cut face:
 * <pre>
 *   V = pi h^2 (3R - h)/3        volume below the plane, m3
 *   M = -pi a^4/4                first moment of it about the centre along n, m4
 *   A = pi a^2                   area of the cut face, m2
 *   J = pi a^4/4                 its second moment about every diameter, m4
 * </pre>
 *
 * <p>A plane beyond the ball touches it: everything or nothing is below. Exact. Source: docs/physics/hydrostatics.md,
 * 1. Immutable. Used by {@link RevolvedHull} in place of quadrature.
 */
final class BallHull {
    /** Height of the centre on the z axis, m. */
    private final double centre;
    /** R, m. */
    private final double radius;

    /** A ball about a point of the z axis: height of its centre and radius, m. */
    BallHull(double centre, double radius) {
        this.centre = centre;
        this.radius = radius;
    }

    /** Height of the centre on the z axis, m. */
    double centre() {
        return centre;
    }

    /** R, m. */
    double radius() {
        return radius;
    }

    /** Cuts by the plane {@code n . x = c}, as {@link org.fizzhull.geometry.Hull#cut} does. */
    void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        out.clear();
        out.frame(nx, ny, nz);
        double d = Math.max(-radius, Math.min(radius, c - nz * centre));
        double h = radius + d;
        double square = (radius - d) * h;
        out.volume = Math.PI * h * h * (3 * radius - h) / 3;
        double along = -Math.PI * square * square / 4;
        out.mx = along * nx;
        out.my = along * ny;
        out.mz = along * nz + out.volume * centre;
        out.area = Math.PI * square;
        out.ax = d * nx;
        out.ay = d * ny;
        out.az = d * nz + centre;
        out.juu = Math.PI * square * square / 4;
        out.jww = out.juu;
    }
}
