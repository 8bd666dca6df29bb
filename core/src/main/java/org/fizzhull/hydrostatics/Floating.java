package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;

/**
 * A body held in one attitude with the right draft: its energy and the derivatives of the energy, none of them by
 * finite differences. For the unit vector n that points up, with G the centre of mass and B that of the displaced
 * water,
 * <pre>
 *   U(n) = (G - B) . n            potential energy over weight, m
 *   gradient on the sphere        (G - B) less its part along n
 *   second derivative             K = J/V - U 1 in the frame of the water plane
 * </pre>
 * with J the second moments of the water plane about its own centroid, m4, and V the displaced volume, m3
 * (docs/physics/hydrostatics.md, 2). The eigenvalues of K in equilibrium are the two metacentric heights, m. The
 * gradient needs no term for B: as the body turns, B moves parallel to the water plane (Dupin).
 *
 * <p>Range: displaced volumes above 0 and below that of the hull. Error: that of the hull's cuts. Cost of a turn: one
 * draft. Mutable, one to a search.
 */
final class Floating {
    /** What displaces the water. */
    final Hull hull;
    /** G, body frame, m. */
    final Vec3 massCentre;
    /** V, mass over water density, m3. */
    final double displaced;
    /** Largest side of the box around the body, m: the scale of tolerances. */
    final double size;

    /** Cut at the water plane, as the last turn left it. */
    final PlaneCut cut = new PlaneCut();
    /** Unit vector n of the body frame that points up. */
    double nx;
    /** Second component of n. */
    double ny;
    /** Third component of n. */
    double nz;
    /** Height of the water plane along n, m. */
    double level = Double.NaN;
    /** U, m. */
    double energy;
    /** Component of the gradient along u of the cut, m. */
    double gu;

    /** Component of the gradient along w, m. */
    double gw;
    /** Element of K along u, m. */
    double kuu;
    /** Mixed element of K, m. */
    double kuw;
    /** Element of K along w, m. */
    double kww;
    /** Whether the cut is that of a former attitude, near which the next level may be guessed. */
    private boolean placed;

    Floating(Hull hull, Vec3 massCentre, double displaced) {
        this.hull = hull;
        this.massCentre = massCentre;
        this.displaced = displaced;
        size = Math.max(
                hull.reach(1, 0, 0) + hull.reach(-1, 0, 0),
                Math.max(hull.reach(0, 1, 0) + hull.reach(0, -1, 0), hull.reach(0, 0, 1) + hull.reach(0, 0, -1)));
    }

    /** Turns the body so that n points up and finds its draft. */
    void at(double x, double y, double z) {
        double guess = Double.NaN;
        if (placed) {
            // a small turn at constant volume is about the centroid of the water plane
            guess = x * cut.ax + y * cut.ay + z * cut.az;
        }
        nx = x;
        ny = y;
        nz = z;
        level = Draft.level(hull, x, y, z, displaced, guess, cut);
        placed = true;
        // G - B
        double gx = massCentre.x() - cut.mx / cut.volume;
        double gy = massCentre.y() - cut.my / cut.volume;
        double gz = massCentre.z() - cut.mz / cut.volume;
        energy = gx * x + gy * y + gz * z;
        gu = gx * cut.ux + gy * cut.uy + gz * cut.uz;
        gw = gx * cut.wx + gy * cut.wy + gz * cut.wz;
        kuu = cut.juu / cut.volume - energy;
        kuw = cut.juw / cut.volume;
        kww = cut.jww / cut.volume - energy;
    }

    void at(Vec3 up) {
        at(up.x(), up.y(), up.z());
    }

    /** Length of the gradient, m: 0 in equilibrium. */
    double slope() {
        return Math.sqrt(gu * gu + gw * gw);
    }

    /** Smaller eigenvalue of K, m: in equilibrium the smaller metacentric height. */
    double smallerGm() {
        return (kuu + kww) / 2 - spread();
    }

    /** Larger eigenvalue of K, m. */
    double largerGm() {
        return (kuu + kww) / 2 + spread();
    }

    /** Half the difference of the eigenvalues, m. */
    private double spread() {
        double half = (kuu - kww) / 2;
        return Math.sqrt(half * half + kuw * kuw);
    }

    /** Angle in the u w frame of the eigenvector of the smaller eigenvalue, rad. */
    double softAngle() {
        return 0.5 * Math.atan2(2 * kuw, kuu - kww) + Math.PI / 2;
    }

    Vec3 up() {
        return new Vec3(nx, ny, nz);
    }

    /** First axis of the water plane, a unit vector. */
    Vec3 u() {
        return new Vec3(cut.ux, cut.uy, cut.uz);
    }

    /** Second axis of the water plane, a unit vector. */
    Vec3 w() {
        return new Vec3(cut.wx, cut.wy, cut.wz);
    }

    /** Vector a u + b w in the water plane. */
    Vec3 tangent(double a, double b) {
        return u().times(a).plus(w().times(b));
    }
}
