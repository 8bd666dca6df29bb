package org.fizzhull.mesh;

/**
 * Volume above each of some evenly spaced levels, and its rate of fall, of functions that are linear on tetrahedra. Both
 * are exact for each tetrahedron: the rate is a quadratic B-spline of the level whose knots are the corner values.
 */
final class LevelVolumes {
    private final double step;
    private final int levels;
    private final double[] whole;
    private final double[] volume;
    private final double[] rate;

    /** Levels 0, step, 2 step and so on. */
    LevelVolumes(int levels, double step) {
        this.levels = levels;
        this.step = step;
        whole = new double[levels];
        volume = new double[levels];
        rate = new double[levels];
    }

    /** Adds a tetrahedron of a volume (m3, negative to take it away) with the values at its corners. */
    void add(double tetrahedron, double p, double q, double r, double s) {
        double p0 = Math.min(p, q);
        double p1 = Math.max(p, q);
        double q0 = Math.min(r, s);
        double q1 = Math.max(r, s);
        double a = Math.min(p0, q0);
        double e = Math.max(p1, q1);
        double m = Math.max(p0, q0);
        double n = Math.min(p1, q1);
        double b = Math.min(m, n);
        double c = Math.max(m, n);
        if (!(e > 0)) {
            return;
        }
        int from = 0;
        if (a >= 0) {
            int last = Math.min(levels - 1, (int) (a / step));
            whole[last] += tetrahedron;
            from = last + 1;
        }
        for (int k = from; k < levels; k++) {
            double t = k * step;
            if (t >= e) {
                return;
            }
            if (t < b) {
                double x = (t - a) / (c - a) * ((t - a) / (e - a));
                volume[k] += tetrahedron * (1 - x * (t - a) / (b - a));
                rate[k] += 3 * tetrahedron * x / (b - a);
            } else if (t < c) {
                double ca = (c - t) / (c - a);
                double cb = (c - t) / (c - b);
                double ea = (e - t) / (e - a);
                double eb = (e - t) / (e - b);
                volume[k] += tetrahedron * (ca * cb + ea * (eb * (1 - cb) + cb * (1 - ca)));
                rate[k] += 3 * tetrahedron * ((1 - ca) * cb + eb * (1 - cb)) / (e - a);
            } else {
                double x = (e - t) / (e - b) * ((e - t) / (e - a));
                volume[k] += tetrahedron * x * (e - t) / (e - c);
                rate[k] += 3 * tetrahedron * x / (e - c);
            }
        }
    }

    /** Share of a tetrahedron with these corner values in which the linear function is positive. */
    static double positive(double p, double q, double r, double s) {
        int above = (p > 0 ? 1 : 0) + (q > 0 ? 1 : 0) + (r > 0 ? 1 : 0) + (s > 0 ? 1 : 0);
        if (above == 0 || above == 4) {
            return above / 4.0;
        }
        if (above == 3) {
            return 1 - positive(-p, -q, -r, -s);
        }
        if (above == 1) {
            // the corner above, and its shares of the three edges
            double e = Math.max(Math.max(p, q), Math.max(r, s));
            double product = 1;
            product *= p > 0 ? 1 : e / (e - p);
            product *= q > 0 ? 1 : e / (e - q);
            product *= r > 0 ? 1 : e / (e - r);
            return product * (s > 0 ? 1 : e / (e - s));
        }
        if (p > 0 && q > 0) {
            return wedge(p, q, r, s);
        }
        if (p > 0) {
            return r > 0 ? wedge(p, r, q, s) : wedge(p, s, q, r);
        }
        return q > 0 ? (r > 0 ? wedge(q, r, p, s) : wedge(q, s, p, r)) : wedge(r, s, p, q);
    }

    /** The part above 0 between two corners c and e above and two below. */
    private static double wedge(double c, double e, double a, double b) {
        double ca = c / (c - a);
        double cb = c / (c - b);
        double ea = e / (e - a);
        double eb = e / (e - b);
        return ca * cb + ea * (eb * (1 - cb) + cb * (1 - ca));
    }

    /** Volume above each level, m3. */
    double[] volumes() {
        double[] sum = volume.clone();
        double below = 0;
        for (int k = levels - 1; k >= 0; k--) {
            below += whole[k];
            sum[k] += below;
        }
        return sum;
    }

    /** Area of each level face, {@code -dV/dlevel}, m2. */
    double[] rates() {
        return rate.clone();
    }
}
