package org.fizzhull.mesh.uniting;

/** Corners seen along an axis: two of their coordinates. */
final class Plane {
    private final double[] at;
    private final int u;
    private final int v;

    Plane(double[] at, int u, int v) {
        this.at = at;
        this.u = u;
        this.v = v;
    }

    double u(int point) {
        return at[3 * point + u];
    }

    double v(int point) {
        return at[3 * point + v];
    }

    /** Twice the area of a triangle, m2; above 0 where it runs anticlockwise. */
    double doubled(int a, int b, int c) {
        return (u(b) - u(a)) * (v(c) - v(a)) - (u(c) - u(a)) * (v(b) - v(a));
    }

    /** Twice the area of a loop, m2; above 0 where it runs anticlockwise. */
    double doubled(int[] loop) {
        double sum = 0;
        for (int i = 1; i + 1 < loop.length; i++) {
            sum += doubled(loop[0], loop[i], loop[i + 1]);
        }
        return sum;
    }

    double squared(int a, int b) {
        double du = u(b) - u(a);
        double dv = v(b) - v(a);
        return du * du + dv * dv;
    }

    /** Whether a loop runs around a point. */
    boolean around(int[] loop, int point) {
        boolean in = false;
        for (int i = 0; i < loop.length; i++) {
            int a = loop[i];
            int b = loop[i + 1 < loop.length ? i + 1 : 0];
            boolean up = v(a) <= v(point);
            if (up != v(b) <= v(point)) {
                in ^= doubled(a, b, point) > 0 == up;
            }
        }
        return in;
    }
}
