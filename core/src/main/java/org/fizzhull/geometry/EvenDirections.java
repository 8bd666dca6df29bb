package org.fizzhull.geometry;

/**
 * The nearest plane that touches any hull, from even directions, the best of which is carried down by shrinking steps.
 */
final class EvenDirections {
    private static final int DIRECTIONS = 2000;
    private static final int AROUND = 8;
    private static final double GOLDEN = Math.PI * (3 - Math.sqrt(5));
    private static final double FIRST_STEP = 0.05;
    private static final double LAST_STEP = 1e-7;

    private EvenDirections() {}

    static Vec3 nearest(Hull hull) {
        Vec3 best = Vec3.UP;
        double least = support(hull, best);
        for (int i = 0; i < DIRECTIONS; i++) {
            double up = 1 - (2 * i + 1.0) / DIRECTIONS;
            double round = Math.sqrt(1 - up * up);
            Vec3 n = new Vec3(round * Math.cos(GOLDEN * i), round * Math.sin(GOLDEN * i), up);
            double h = support(hull, n);
            if (h < least) {
                least = h;
                best = n;
            }
        }
        double turn = 0;
        for (double step = FIRST_STEP; step > LAST_STEP; turn += GOLDEN) {
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

    private static double support(Hull hull, Vec3 n) {
        return hull.reach(n.x(), n.y(), n.z()) - n.dot(hull.centroid());
    }
}
