package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Tree of facets for {@link NearestFacet}, {@link EmptyBall} and {@link FacetCrossings}. Each node holds the box around its facets and, where
 * they are few, the slab between two planes across their mean normal: inside a curved body nearly all facets are almost
 * equally far, and only the slab tells them apart. Immutable once made.
 */
final class FacetTree {
    private static final int LEAF = 4;
    private static final int SLAB = 4096;
    /** Box (6), slab normal (3), slab ends (2). */
    static final int STRIDE = 11;

    /** Nodes that wait on the way down are never more. */
    static final int DEEPEST = 128;

    /** Coordinates of the corners of the facets, neighbours near each other, m. */
    final double[] corner;

    /** Number in the mesh of each facet. */
    final int[] facet;

    /** For each node lowest x, y, z, highest x, y, z, the unit normal of the slab, its lower and its upper end, m. */
    double[] bound;

    /** Right child of an inner node, whose left one follows it, or minus the first facet minus 1 of a leaf. */
    int[] link;

    /** Number of facets in a node. */
    int[] size;

    private int nodes;

    /** Tree of the facets that are flagged; at least one must be. */
    FacetTree(TriangleMesh mesh, boolean[] wanted) {
        FacetOrder order = new FacetOrder(mesh, wanted);
        int n = order.count();
        int room = 2 * (n / 2 + 1);
        bound = new double[STRIDE * room];
        link = new int[room];
        size = new int[room];
        corner = new double[9 * n];
        build(mesh, order, 0, n);
        facet = order.facet;
        bound = Arrays.copyOf(bound, STRIDE * nodes);
        link = Arrays.copyOf(link, nodes);
        size = Arrays.copyOf(size, nodes);
    }

    private void build(TriangleMesh mesh, FacetOrder order, int from, int to) {
        int node = nodes++;
        size[node] = to - from;
        if (to - from <= LEAF) {
            link[node] = -from - 1;
            for (int i = from; i < to; i++) {
                for (int k = 0; k < 9; k++) {
                    corner[9 * i + k] = mesh.at(mesh.corner(order.facet[i], k / 3), k % 3);
                }
            }
        } else {
            int middle = order.halve(from, to);
            build(mesh, order, from, middle);
            link[node] = nodes;
            build(mesh, order, middle, to);
        }
        box(node, from, to);
        slab(node, from, to);
    }

    private void box(int node, int from, int to) {
        int b = STRIDE * node;
        for (int k = 0; k < 3; k++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            if (to - from <= LEAF) {
                for (int i = 9 * from + k; i < 9 * to; i += 3) {
                    low = Math.min(low, corner[i]);
                    high = Math.max(high, corner[i]);
                }
            } else {
                int left = STRIDE * (node + 1);
                int right = STRIDE * link[node];
                low = Math.min(bound[left + k], bound[right + k]);
                high = Math.max(bound[left + 3 + k], bound[right + 3 + k]);
            }
            bound[b + k] = low;
            bound[b + 3 + k] = high;
        }
    }

    private void slab(int node, int from, int to) {
        int b = STRIDE * node + 6;
        if (to - from > SLAB) {
            bound[b + 3] = Double.NEGATIVE_INFINITY;
            bound[b + 4] = Double.POSITIVE_INFINITY;
            return;
        }
        double nx = 0;
        double ny = 0;
        double nz = 0;
        for (int i = 9 * from; i < 9 * to; i += 9) {
            double ux = corner[i + 3] - corner[i];
            double uy = corner[i + 4] - corner[i + 1];
            double uz = corner[i + 5] - corner[i + 2];
            double wx = corner[i + 6] - corner[i];
            double wy = corner[i + 7] - corner[i + 1];
            double wz = corner[i + 8] - corner[i + 2];
            nx += uy * wz - uz * wy;
            ny += uz * wx - ux * wz;
            nz += ux * wy - uy * wx;
        }
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        nx = length > 0 ? nx / length : 0;
        ny = length > 0 ? ny / length : 0;
        nz = length > 0 ? nz / length : 1;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 9 * from; i < 9 * to; i += 3) {
            double h = nx * corner[i] + ny * corner[i + 1] + nz * corner[i + 2];
            low = Math.min(low, h);
            high = Math.max(high, h);
        }
        bound[b] = nx;
        bound[b + 1] = ny;
        bound[b + 2] = nz;
        bound[b + 3] = low;
        bound[b + 4] = high;
    }

    /** Square of a distance from a point that no facet of a node falls below, m2. */
    double below(int node, double x, double y, double z) {
        int b = STRIDE * node;
        double dx = Math.max(0, Math.max(bound[b] - x, x - bound[b + 3]));
        double dy = Math.max(0, Math.max(bound[b + 1] - y, y - bound[b + 4]));
        double dz = Math.max(0, Math.max(bound[b + 2] - z, z - bound[b + 5]));
        double box = dx * dx + dy * dy + dz * dz;
        double h = bound[b + 6] * x + bound[b + 7] * y + bound[b + 8] * z;
        double off = Math.max(0, Math.max(bound[b + 9] - h, h - bound[b + 10]));
        return Math.max(box, off * off);
    }
}
