package org.fizzhull.mesh.uniting;

/** Projection of corners along a coordinate axis: two of their three coordinates. */
final class Plane {
    private final double[] at;
    private final int u;
    private final int v;

    private Plane(double[] at, int u, int v) {
        this.at = at;
        this.u = u;
        this.v = v;
    }

    /**
     * The projection in which a triangle is largest, with its axes in the order in which the triangle runs
     * anticlockwise.
     */
    static Plane across(double[] at, int a, int b, int c) {
        Plane best = new Plane(at, 0, 1);
        for (int k = 1; k < 3; k++) {
            Plane other = new Plane(at, k, (k + 1) % 3);
            best = Math.abs(other.twiceArea(a, b, c)) > Math.abs(best.twiceArea(a, b, c)) ? other : best;
        }
        return best.twiceArea(a, b, c) < 0 ? new Plane(at, best.v, best.u) : best;
    }

    /** Twice the area of a triangle, m2; above 0 where it runs anticlockwise. */
    double twiceArea(int a, int b, int c) {
        return along(a, b, u) * along(a, c, v) - along(a, c, u) * along(a, b, v);
    }

    /** Cotangent of the angle at c of the triangle a, b, c that runs anticlockwise. */
    double cotangent(int a, int c, int b) {
        return (along(c, a, u) * along(c, b, u) + along(c, a, v) * along(c, b, v)) / twiceArea(a, b, c);
    }

    private double along(int from, int to, int axis) {
        return at[3 * to + axis] - at[3 * from + axis];
    }
}
