package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * A depth profile fitted to the depths of points: the cubic Hermite table in V, with A = -dV/dd, that follows the share
 * of points lying deeper than each of many levels with the least squares, tied to what is exact: V(0), A(0) and V = 0 at
 * the deepest point. Nodes stand evenly in depth and in volume, half by half.
 */
final class DepthFit {
    private static final int LEVELS = 1 << 10;

    private DepthFit() {}

    /** Share of the length of the lines of a part, or of all lines for -1, that lies deeper than each level. */
    static double[] deeper(DepthSteps steps, int part, double deepest) {
        double[] constant = new double[LEVELS + 2];
        double[] slope = new double[LEVELS + 2];
        double whole = 0;
        for (int line = 0; line < steps.lines(); line++) {
            if (part < 0 || steps.part(line) == part) {
                for (int i = steps.first(line); i < steps.end(line); i++) {
                    double low = Math.min(steps.from(i), steps.to(i)) / deepest * LEVELS;
                    double high = Math.max(steps.from(i), steps.to(i)) / deepest * LEVELS;
                    add(low, high, steps.length(i), constant, slope);
                    whole += steps.length(i);
                }
            }
        }
        double[] share = new double[LEVELS + 1];
        double held = 0;
        double falling = 0;
        for (int k = 0; k <= LEVELS; k++) {
            held += constant[k];
            falling += slope[k];
            share[k] = (held + falling * k) / whole;
        }
        return share;
    }

    /** A step lies deeper with all its length up to its shallow end, then with a share that falls evenly to its deep end. */
    private static void add(double low, double high, double length, double[] constant, double[] slope) {
        int begin = (int) Math.min(LEVELS, Math.floor(low)) + 1;
        int end = (int) Math.min(LEVELS, Math.floor(high)) + 1;
        constant[0] += length;
        constant[begin] -= length;
        if (end > begin) {
            double rate = length / (high - low);
            constant[begin] += rate * high;
            constant[end] -= rate * high;
            slope[begin] -= rate;
            slope[end] += rate;
        }
    }

    static DepthColumns fit(double[] deeper, int cells, double volume, double area, double deepest, double error) {
        int[] at = nodes(deeper, cells);
        int n = at.length - 1;
        // unknown: V at nodes 1 to n - 1, then A times the deepest depth at nodes 1 to n; all as shares of V(0)
        int unknowns = 2 * n - 1;
        double slope = area * deepest / volume;
        double[][] rows = new double[LEVELS][unknowns];
        double[] right = new double[LEVELS];
        for (int q = 0; q < n; q++) {
            double h = (double) (at[q + 1] - at[q]) / LEVELS;
            for (int k = at[q]; k < at[q + 1]; k++) {
                double t = (double) (k - at[q]) / (at[q + 1] - at[q]);
                double s = 1 - t;
                right[k] = deeper[k];
                double v = (1 + 2 * t) * s * s;
                double a = -h * t * s * s;
                if (q == 0) {
                    right[k] -= v + a * slope;
                } else {
                    rows[k][q - 1] += v;
                    rows[k][n - 2 + q] += a;
                }
                if (q + 1 < n) {
                    rows[k][q] += (1 + 2 * s) * t * t;
                }
                rows[k][n - 1 + q] += h * t * t * s;
            }
        }
        for (int k = 0; k < LEVELS; k++) {
            double weight = 1 / Math.sqrt(deeper[k] * (1 - deeper[k]) + 0.1);
            right[k] *= weight;
            for (int i = 0; i < unknowns; i++) {
                rows[k][i] *= weight;
            }
        }
        double[] x = new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        double[] depth = new double[n + 1];
        double[] left = new double[n + 1];
        double[] front = new double[n + 1];
        for (int q = 0; q <= n; q++) {
            depth[q] = at[q] * deepest / LEVELS;
            left[q] = q == 0 ? volume : q == n ? 0 : Math.min(left[q - 1], Math.max(0, volume * x[q - 1]));
            front[q] = q == 0 ? area : x[n - 2 + q] * volume / deepest;
        }
        return DepthColumns.falling(depth, left, front, error);
    }

    private static int[] nodes(double[] deeper, int cells) {
        int[] at = new int[cells + 1];
        int used = 1;
        for (int k = 1; k < LEVELS - LEVELS / 64; k++) {
            double share = ((double) k / LEVELS + 1 - deeper[k]) / 2;
            if (share * cells >= used && k - at[used - 1] > 8) {
                at[used++] = k;
                used = Math.min(used, cells);
            }
        }
        at[used] = LEVELS;
        return Arrays.copyOf(at, used + 1);
    }
}
