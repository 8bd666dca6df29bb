package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.fizzhull.geometry.DepthProfile;

/**
 * A depth profile fitted to the depths of points: the cubic Hermite table in V, with A = -dV/dd, that follows the share
 * of points lying deeper than each of many levels with the least squares, tied to what is exact: V(0), A(0) and V = 0 at
 * the deepest point. Nodes stand evenly in depth and in volume, half by half.
 */
final class DepthFit {
    private static final int LEVELS = DepthSteps.LEVELS;

    /** Weight of the smoothness at a node against that of a level. */
    private static final double STIFFNESS = 1;

    private DepthFit() {}

    /**
     * Fits the table.
     *
     * @param deeper share of the volume that lies deeper than each level
     * @param cells number of stretches of the table
     * @param volume of the body, m3
     * @param area of the open faces, m2
     * @param deepest depth of the deepest point, m
     * @param error relative error of the volume left, handed on
     */
    static DepthProfile fit(double[] deeper, int cells, double volume, double area, double deepest, double error) {
        int[] at = nodes(deeper, cells);
        int n = at.length - 1;
        // in shares of the volume and of the deepest depth: columns V at nodes 0 to n, then A at nodes 0 to n
        double[][] rows = new double[LEVELS + n - 1][2 * n + 2];
        double[] right = new double[rows.length];
        for (int q = 0; q < n; q++) {
            levels(at, q, deeper, rows, right);
        }
        for (int q = 1; q < n; q++) {
            smooth(rows[LEVELS + q - 1], q, n, at[q] - at[q - 1], at[q + 1] - at[q]);
        }
        double slope = area * deepest / volume;
        double[] x = solved(rows, right, n, slope);
        double[] depth = new double[n + 1];
        double[] left = new double[n + 1];
        double[] front = new double[n + 1];
        for (int q = 0; q <= n; q++) {
            depth[q] = at[q] * deepest / LEVELS;
            left[q] = q == 0 ? volume : q == n ? 0 : Math.min(left[q - 1], Math.max(0, volume * x[q - 1]));
            front[q] = q == 0 ? area : x[n - 2 + q] * volume / deepest;
        }
        return DepthProfile.falling(depth, left, front, error);
    }

    /** Rows of the levels of one cell, weighted by how surely shares near 0 and 1 are known. */
    private static void levels(int[] at, int q, double[] deeper, double[][] rows, double[] right) {
        int n = at.length - 1;
        double h = (double) (at[q + 1] - at[q]) / LEVELS;
        for (int k = at[q]; k < at[q + 1]; k++) {
            double t = (double) (k - at[q]) / (at[q + 1] - at[q]);
            double s = 1 - t;
            double weight = 1 / Math.sqrt(deeper[k] * (1 - deeper[k]) + 0.1);
            right[k] = weight * deeper[k];
            rows[k][q] = weight * (1 + 2 * t) * s * s;
            rows[k][q + 1] = weight * (1 + 2 * s) * t * t;
            rows[k][n + 1 + q] = -weight * h * t * s * s;
            rows[k][n + 2 + q] = weight * h * t * t * s;
        }
    }

    /** A row that draws dA/dd on both sides of a node together, as in a spline: noise alone would part them. */
    private static void smooth(double[] row, int q, int n, int before, int after) {
        double g = (double) before / LEVELS;
        double h = (double) after / LEVELS;
        double weight = STIFFNESS * Math.min(g, h) * Math.min(g, h);
        row[q - 1] = weight * 6 / (g * g);
        row[q] = weight * (6 / (h * h) - 6 / (g * g));
        row[q + 1] = -weight * 6 / (h * h);
        row[n + q] = -weight * 2 / g;
        row[n + 1 + q] = -weight * (4 / g + 4 / h);
        row[n + 2 + q] = -weight * 2 / h;
    }

    /** Least squares without the columns of what is known: V(0), A(0) and V at the deepest point. */
    private static double[] solved(double[][] rows, double[] right, int n, double slope) {
        double[][] free = new double[rows.length][2 * n - 1];
        for (int k = 0; k < rows.length; k++) {
            right[k] -= rows[k][0] + slope * rows[k][n + 1];
            System.arraycopy(rows[k], 1, free[k], 0, n - 1);
            System.arraycopy(rows[k], n + 2, free[k], n - 1, n);
        }
        return new QRDecomposition(new Array2DRowRealMatrix(free, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
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
