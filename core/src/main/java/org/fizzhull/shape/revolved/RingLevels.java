package org.fizzhull.shape.revolved;

/**
 * Volume of revolution above each of some evenly spaced levels, of functions that are linear on
 * triangles in the half plane of the axis: exact for each triangle. By Pappus a triangle of area F, m2, with centroid
 * at radius r, m, sweeps 2 pi r F, m3; a level cuts a triangle into a smaller one and the rest. With the values a, b, c
 * in rising order at the corners and a level t the smaller one has the share
 * <pre>
 *   (t - a)^2/((b - a)(c - a))      at the lowest corner, for t up to b
 *   (c - t)^2/((c - b)(c - a))      at the highest corner, for t from b on
 * </pre>
 * of the area.
 *
 * <p>Cost of a triangle: one step for each level between its values. Levels that lie below all three values are counted
 * at once ({@code whole}) and summed at the end. One to a measurement, not for use by several threads.
 */
final class RingLevels {
    /** Distance of the levels, in the unit of the function (here depth, m). */
    private final double step;
    /** Volume above each level, m3, of triangles that the level cuts. */
    private final double[] volume;
    /** Volume of triangles that lie wholly above a level but not above the next, m3. */
    private final double[] whole;

    /** Levels 0, step, 2 step and so on. */
    RingLevels(int levels, double step) {
        this.step = step;
        volume = new double[levels];
        whole = new double[levels];
    }

    /** Adds a triangle of an area (m2) with the values p, q, s and the radii rp, rq, rs (m) at its corners. */
    void add(double area, double p, double rp, double q, double rq, double s, double rs) {
        if (p > q) {
            add(area, q, rq, p, rp, s, rs);
        } else if (q > s) {
            add(area, p, rp, s, rs, q, rq);
        } else {
            sorted(2 * Math.PI * area, p, rp, q, rq, s, rs);
        }
    }

    /** Adds a triangle, area times 2 pi, with its values in rising order a, b, c. */
    private void sorted(double area, double a, double ra, double b, double rb, double c, double rc) {
        if (!(c > 0)) {
            return;
        }
        double mean = (ra + rb + rc) / 3;
        int from = 0;
        if (a >= 0) {
            int last = Math.min(whole.length - 1, (int) (a / step));
            whole[last] += area * mean;
            from = last + 1;
        }
        for (int k = from; k < whole.length; k++) {
            double t = k * step;
            if (t >= c) {
                return;
            }
            // where the level meets the longest side, a to c, and there the radius
            double ac = (t - a) / (c - a);
            double onAc = ra + ac * (rc - ra);
            if (t < b) {
                // the triangle at the lowest corner lies below the level
                double ab = (t - a) / (b - a);
                double onAb = ra + ab * (rb - ra);
                volume[k] += area * (mean - ab * ac * (ra + onAb + onAc) / 3);
            } else {
                // the triangle at the highest corner lies above it
                double cb = (c - t) / (c - b);
                double onBc = rc + cb * (rb - rc);
                volume[k] += area * cb * (1 - ac) * (rc + onBc + onAc) / 3;
            }
        }
    }

    /** Volume above each level, m3. */
    double[] volumes() {
        double[] sum = volume.clone();
        double below = 0;
        for (int k = sum.length - 1; k >= 0; k--) {
            below += whole[k];
            sum[k] += below;
        }
        return sum;
    }
}
