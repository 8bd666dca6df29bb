package org.fizzhull.shape.body;

import org.fizzhull.mesh.TriangleMesh;

/**
 * Upright prism over a polygon that is seen whole from one inner point, as a closed triangle mesh: each flat is a fan
 * about that point, each side two facets. Every facet is anticlockwise seen from outside. Stateless. Used by {@link
 * Star}, {@link Heart} and {@link RoundedBlockMesh}.
 */
public final class PrismMesh {
    private PrismMesh() {}

    /**
     * {@return the prism from z = 0 to the height over the anticlockwise polygon, its flats fanned from the point (cx,
     * cy); m}
     *
     * @param x x of the corners, m, anticlockwise seen from above
     * @param y y of the corners, m, as many as x
     * @param cx x of a point inside that sees every corner, m
     * @param cy y of that point, m
     * @param height height of the prism, m
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
        // corners 0 to n - 1 below, n the point of the fan below; the same above from top on
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

    /**
     * {@return the largest less smallest}
     *
     * @param values at least one number
     */
    public static double span(double[] values) {
        double low = values[0];
        double high = values[0];
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }

    /**
     * Writes a vertex into a list of coordinates.
     *
     * @param xyz coordinates of all vertices, three each
     * @param vertex index of the vertex
     * @param x x, m
     * @param y y, m
     * @param z z, m
     */
    public static void put(double[] xyz, int vertex, double x, double y, double z) {
        xyz[3 * vertex] = x;
        xyz[3 * vertex + 1] = y;
        xyz[3 * vertex + 2] = z;
    }

    /**
     * Writes a facet into a list of vertex indices, anticlockwise seen from outside.
     *
     * @param corners vertex indices of all facets, three each
     * @param at place of the facet's first index
     * @param a first vertex
     * @param b second vertex
     * @param c third vertex
     * @return the place after the facet
     */
    public static int facet(int[] corners, int at, int a, int b, int c) {
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        return at + 3;
    }
}
