package org.fizzhull.geometry;

/**
 * The nearest plane that touches a hull, for any hull: the direction n that minimises {@code h(n) = max n . (x - c)}
 * over the body, the support function about the centroid c.
 *
 * <ol>
 *   <li>h is evaluated in 2,000 evenly spread directions (a Fibonacci lattice on the sphere).
 *   <li>The best is improved by a pattern search: eight neighbours at one angular step, taken where lower; the step is
 *       halved where none is, from 0.05 rad to 1e-7 rad. The ring of neighbours turns by the golden angle from pass to
 *       pass, so that a narrow valley is not missed every time.
 * </ol>
 *
 * <p>A second minimum less than the spacing of the lattice (about 0.08 rad) wide can be missed. Cost: 2,000 to 3,000
 * calls of {@link Hull#reach}. Used by {@link Hull#nearestPlane} for hulls that have no way of their own. Stateless.
 */
final class EvenDirections {
    /** Directions of the lattice. */
    private static final int DIRECTIONS = 2000;
    /** Neighbours that are tried around the best direction. */
    private static final int AROUND = 8;
    /** First step of the search, rad: two thirds of the spacing of the lattice. */
    private static final double FIRST_STEP = 0.05;
    /** Step at which the search ends, rad: the accuracy of the direction. */
    private static final double LAST_STEP = 1e-7;

    private EvenDirections() {}

    /** Unit vector of the body frame from the centroid to the nearest touching plane. */
    static Vec3 nearest(Hull hull) {
        Vec3 best = Vec3.UP;
        double least = support(hull, best);
        for (int i = 0; i < DIRECTIONS; i++) {
            Vec3 n = Vec3.spread(i, DIRECTIONS);
            double h = support(hull, n);
            if (h < least) {
                least = h;
                best = n;
            }
        }
        // the best direction goes downhill on a ring of neighbours, in the plane of u and w across it
        double turn = 0;
        for (double step = FIRST_STEP; step > LAST_STEP; turn += Vec3.GOLDEN_ANGLE) {
            Vec3 u = (Math.abs(best.x()) < 0.6 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0))
                    .cross(best)
                    .unit();
            Vec3 w = best.cross(u);
            Vec3 lower = best;
            boolean found = false;
            for (int k = 0; k < AROUND; k++) {
                double angle = turn + 2 * Math.PI * k / AROUND;
                Vec3 n = best.plus(u.times(step * Math.cos(angle)))
                        .plus(w.times(step * Math.sin(angle)))
                        .unit();
                double h = support(hull, n);
                if (h < least) {
                    least = h;
                    lower = n;
                    found = true;
                }
            }
            step = found ? step : step / 2;
            best = lower;
        }
        return best;
    }

    /** Distance of the touching plane with the outward normal n from the centroid, m. */
    private static double support(Hull hull, Vec3 n) {
        return hull.reach(n.x(), n.y(), n.z()) - n.dot(hull.centroid());
    }
}
