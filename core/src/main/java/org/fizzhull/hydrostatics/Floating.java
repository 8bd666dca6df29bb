package org.fizzhull.hydrostatics;

import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.Hull;

/**
 * A body held in one attitude with the right draft: its energy and the derivatives of the energy, none of them by
 * finite differences. For the unit vector n that points up, with G the centre of mass and B that of the displaced
 * water,
 * <pre>
 *   U(n) = (G - B) . n            potential energy over weight, m
 *   gradient on the sphere        (G - B) less its part along n
 *   second derivative             K = J/V - U 1 in the frame of the water plane
 * </pre>
 * with J the second moments of the water plane about its own centroid and V the displaced volume
 * (docs/physics/hydrostatics.md, 2). The eigenvalues of K at rest are the two metacentric heights. Mutable, one to a
 * search.
 */
final class Floating {
    final Hull hull;
    final Vec3 massCentre;
    final double displaced;
    /** Largest side of the box around the body, m: the scale of tolerances. */
    final double size;

    final PlaneCut cut = new PlaneCut();
    double nx;
    double ny;
    double nz;
    double level = Double.NaN;
    double energy;
    /** Components of the gradient along u and w of the cut, m. */
    double gu;

    double gw;
    double kuu;
    double kuw;
    double kww;
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

    /** Length of the gradient, m: 0 at rest. */
    double slope() {
        return Math.sqrt(gu * gu + gw * gw);
    }

    double smallerGm() {
        return (kuu + kww) / 2 - spread();
    }

    double largerGm() {
        return (kuu + kww) / 2 + spread();
    }

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
}
