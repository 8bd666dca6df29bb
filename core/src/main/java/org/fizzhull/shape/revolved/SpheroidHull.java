package org.fizzhull.shape.revolved;

import org.fizzhull.geometry.PlaneCut;

/**
 * Cut of a spheroid about the z axis by a plane in closed form: p half of it across, q half along the axis, a ball where
 * both are alike. Stretched to a ball, its cuts are those of the ball. With w the distance from the centre to the plane
 * that touches it across n, {@code w^2 = p^2 (nx^2 + ny^2) + q^2 nz^2}, d the signed distance of the plane from the
 * centre along n, h = w + d, a^2 = (w - d)(w + d), k = p^2 q/w^3 and e = (p^2 nx, p^2 ny, q^2 nz)/w^2:
 * <pre>
 *   V = k pi h^2 (3w - h)/3                        volume below the plane, m3
 *   M = -k pi a^4/4 e                              first moment of it about the centre, m4
 *   A = k pi a^2, at d e from the centre           area of the cut face, m2, and its centroid
 *   J = A a^2/4 (p/w)^2,  A a^2/4 (p q/w^2)^2      its second moments across the lean and along it, m4
 * </pre>
 *
 * <p>A plane beyond the body touches it: everything or nothing is below. Exact. Source: docs/physics/hydrostatics.md,
 * 1, for the ball; the stretched ones by the affine map, derived for this class. Immutable. Used by {@link RevolvedHull}
 * in place of quadrature.
 *
 * @param centre height of the centre on the z axis, m
 * @param across p, m
 * @param along q, m
 */
record SpheroidHull(double centre, double across, double along) {
    /** Whether it is a ball. */
    boolean ball() {
        return across == along;
    }

    /** Cuts by the plane {@code n . x = c}, as {@link org.fizzhull.geometry.Hull#cut} does. */
    void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        out.clear();
        out.frame(nx, ny, nz);
        double w = ball() ? across : Math.sqrt(across * across * (nx * nx + ny * ny) + along * along * nz * nz);
        double k = across * across / (w * w) * (along / w);
        double ex = across * across / (w * w);
        double ez = along * along / (w * w);
        double d = Math.max(-w, Math.min(w, c - nz * centre));
        double h = w + d;
        double square = (w - d) * h;
        out.volume = Math.PI * h * h * (3 * w - h) / 3 * k;
        double moment = -Math.PI * square * square / 4 * k;
        out.mx = moment * nx * ex;
        out.my = moment * ny * ex;
        out.mz = moment * nz * ez + out.volume * centre;
        out.area = Math.PI * square * k;
        out.ax = d * nx * ex;
        out.ay = d * ny * ex;
        out.az = d * nz * ez + centre;
        out.juu = Math.PI * square * square / 4 * k * ex;
        out.jww = Math.PI * square * square / 4 * k * ex * ez;
    }
}
