package org.fizzhull.mesh.distance;

/**
 * The deepest point of a body, from a point near it: steps in directions spread over the sphere, never longer than the
 * distance to the surface so that no step leaves the body, halved when none leads deeper. Finds the top of a ridge to a
 * few ten thousandths of the depth.
 */
final class DeepestPoint {
    private static final int DIRECTIONS = 24;
    private static final double SHORTEST = 1e-4;
    private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

    private final NearestFacet open;
    private final NearestFacet any;
    private final double[] at = new double[3];

    /**
     * @param open facets that depth is measured from
     * @param any all facets
     */
    DeepestPoint(NearestFacet open, NearestFacet any) {
        this.open = open;
        this.any = any;
    }

    /** Depth that is reached from a point inside, m. */
    double from(double x, double y, double z) {
        at[0] = x;
        at[1] = y;
        at[2] = z;
        double depth = open.distance(x, y, z);
        double step = Math.min(depth, any.distance(x, y, z)) / 2;
        double least = SHORTEST * depth;
        int turn = 0;
        while (step > least) {
            double deeper = step(step, depth, turn);
            turn += DIRECTIONS;
            if (deeper > depth) {
                depth = deeper;
                step = Math.min(step * 1.5, any.distance(at[0], at[1], at[2]) / 2);
            } else {
                step /= 2;
            }
        }
        return depth;
    }

    /** Goes to the deepest of the points around, or stays. */
    private double step(double step, double depth, int turn) {
        double best = depth;
        double bx = at[0];
        double by = at[1];
        double bz = at[2];
        for (int i = 0; i < DIRECTIONS; i++) {
            double height = 1 - (2 * i + 1.0) / DIRECTIONS;
            double flat = Math.sqrt(1 - height * height);
            double angle = (i + turn) * GOLDEN_ANGLE;
            double x = at[0] + step * flat * Math.cos(angle);
            double y = at[1] + step * flat * Math.sin(angle);
            double z = at[2] + step * height;
            double found = open.distance(x, y, z);
            if (found > best) {
                best = found;
                bx = x;
                by = y;
                bz = z;
            }
        }
        at[0] = bx;
        at[1] = by;
        at[2] = bz;
        return best;
    }
}
