package org.fizzhull.shape.kind;

import org.fizzhull.mesh.TriangleMesh;

/** Upright prism over a polygon that is seen whole from one inner point. */
public final class PrismMesh {
    private PrismMesh() {}

    /**
     * {@return the prism from z = 0 to the height over the anticlockwise polygon, its flats fanned from the point (cx,
     * cy); m}
     */
    public static TriangleMesh of(double[] x, double[] y, double cx, double cy, double height) {
        int n = x.length;
        double[] xyz = new double[3 * (2 * n + 2)];
        int[] corners = new int[3 * 4 * n];
        for (int level = 0; level < 2; level++) {
            int first = level * (n + 1);
            double z = level * height;
            for (int i = 0; i < n; i++) {
                put(xyz, first + i, x[i], y[i], z);
            }
            put(xyz, first + n, cx, cy, z);
        }
        int top = n + 1;
        int at = 0;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            at = facet(corners, at, n, j, i);
            at = facet(corners, at, top + n, top + i, top + j);
            at = facet(corners, at, i, j, top + j);
            at = facet(corners, at, i, top + j, top + i);
        }
        return new TriangleMesh(xyz, corners);
    }

    /** {@return the largest less smallest} */
    public static double span(double[] values) {
        double low = values[0];
        double high = values[0];
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }

    public static void put(double[] xyz, int vertex, double x, double y, double z) {
        xyz[3 * vertex] = x;
        xyz[3 * vertex + 1] = y;
        xyz[3 * vertex + 2] = z;
    }

    public static int facet(int[] corners, int at, int a, int b, int c) {
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        return at + 3;
    }
}
