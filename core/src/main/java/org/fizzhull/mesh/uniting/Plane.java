package org.fizzhull.mesh.uniting;

/** Corners seen along an axis: two of their coordinates. */
final class Plane {
    private final double[] at;
    private final int u;
    private final int v;

    private Plane(double[] at, int u, int v) {
        this.at = at;
        this.u = u;
        this.v = v;
    }

    /** Across the axis along which a triangle looks largest, and so that it runs anticlockwise. */
    static Plane across(double[] at, int a, int b, int c) {
        Plane best = new Plane(at, 0, 1);
        for (int k = 1; k < 3; k++) {
            Plane other = new Plane(at, k, (k + 1) % 3);
            best = Math.abs(other.doubled(a, b, c)) > Math.abs(best.doubled(a, b, c)) ? other : best;
        }
        return best.doubled(a, b, c) < 0 ? new Plane(at, best.v, best.u) : best;
    }

    /** Twice the area of a triangle, m2; above 0 where it runs anticlockwise. */
    double doubled(int a, int b, int c) {
        return along(a, b, u) * along(a, c, v) - along(a, c, u) * along(a, b, v);
    }

    /** Cotangent of the angle at c of the triangle a, b, c that runs anticlockwise. */
    double cotangent(int a, int c, int b) {
        return (along(c, a, u) * along(c, b, u) + along(c, a, v) * along(c, b, v)) / doubled(a, b, c);
    }

    private double along(int from, int to, int axis) {
        return at[3 * to + axis] - at[3 * from + axis];
    }
}
