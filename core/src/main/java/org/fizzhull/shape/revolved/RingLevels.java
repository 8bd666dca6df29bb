package org.fizzhull.shape.revolved;

/**
 * Volume of revolution above each of some evenly spaced levels, and its rate of fall, of functions that are linear on
 * triangles in the half plane of the axis: exact for each triangle.
 */
final class RingLevels {
    private final double step;
    private final double[] volume;
    private final double[] rate;
    private final double[] whole;

    /** Levels 0, step, 2 step and so on. */
    RingLevels(int levels, double step) {
        this.step = step;
        volume = new double[levels];
        rate = new double[levels];
        whole = new double[levels];
    }

    /** Adds a triangle of an area (m2) with values and radii (m) at its corners. */
    void add(double area, double p, double rp, double q, double rq, double s, double rs) {
        if (p > q) {
            add(area, q, rq, p, rp, s, rs);
        } else if (q > s) {
            add(area, p, rp, s, rs, q, rq);
        } else {
            sorted(2 * Math.PI * area, p, rp, q, rq, s, rs);
        }
    }

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
            double ac = (t - a) / (c - a);
            double onAc = ra + ac * (rc - ra);
            if (t < b) {
                double ab = (t - a) / (b - a);
                double onAb = ra + ab * (rb - ra);
                volume[k] += area * (mean - ab * ac * (ra + onAb + onAc) / 3);
                rate[k] += area * 2 * ac / (b - a) * (onAb + onAc) / 2;
            } else {
                double cb = (c - t) / (c - b);
                double onBc = rc + cb * (rb - rc);
                volume[k] += area * cb * (1 - ac) * (rc + onBc + onAc) / 3;
                rate[k] += area * 2 * (1 - ac) / (c - b) * (onBc + onAc) / 2;
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

    /** Area of each level face, m2. */
    double[] rates() {
        return rate.clone();
    }
}
