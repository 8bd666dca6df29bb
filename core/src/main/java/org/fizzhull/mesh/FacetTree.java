package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Tree of facets for the distance from a point to the nearest of them. Each node holds the box around its facets and,
 * where they are few, the slab between two planes across their mean normal: inside a curved body nearly all facets are
 * almost equally far, and only the slab tells them apart. Immutable; each thread asks through a {@link Probe} of its own.
 */
final class FacetTree {
    private static final int LEAF = 4;
    private static final int SLAB = 4096;
    /** Box (6), slab normal (3), slab ends (2). */
    private static final int STRIDE = 11;

    private final double[] corner;
    private double[] bound;
    /** Right child of an inner node, or minus the first facet minus 1 of a leaf. */
    private int[] link;

    private int[] size;
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

    /** A fresh probe. */
    Probe probe() {
        return new Probe();
    }

    /** Asks for distances; begins at the facet found last, so points asked in a row should be neighbours. */
    final class Probe {
        private final int[] stack = new int[128];
        private final double[] least = new double[128];
        private int last;

        /** Distance from a point to the nearest facet, m, never below the true one nor above it by {@code slack}, m. */
        double distance(double x, double y, double z, double slack) {
            return distance(x, y, z, slack, 0);
        }

        /** The same, but any number not above {@code enough} (m) where the distance is not above it. */
        double distance(double x, double y, double z, double slack, double enough) {
            double best = PointTriangle.squared(corner, 9 * last, x, y, z);
            best = best >= 0 ? best : Double.POSITIVE_INFINITY;
            double reach = shortened(best, slack);
            int top = 0;
            stack[0] = 0;
            least[0] = 0;
            double stop = enough * enough;
            while (top >= 0 && best > stop) {
                int node = stack[top];
                if (least[top--] >= reach) {
                    continue;
                }
                int to = link[node];
                if (to < 0) {
                    int first = -to - 1;
                    for (int i = first; i < first + size[node]; i++) {
                        double d = PointTriangle.squared(corner, 9 * i, x, y, z);
                        if (d < best) {
                            best = d;
                            last = i;
                            reach = shortened(best, slack);
                        }
                    }
                    continue;
                }
                double left = below(STRIDE * (node + 1), x, y, z);
                double right = below(STRIDE * to, x, y, z);
                boolean leftFirst = left <= right;
                double far = leftFirst ? right : left;
                if (far < reach) {
                    stack[++top] = leftFirst ? to : node + 1;
                    least[top] = far;
                }
                double near = leftFirst ? left : right;
                if (near < reach) {
                    stack[++top] = leftFirst ? node + 1 : to;
                    least[top] = near;
                }
            }
            return Math.sqrt(best);
        }

        private double shortened(double best, double slack) {
            double d = Math.max(0, Math.sqrt(best) - slack);
            return d * d;
        }

        /** Square of a distance that no facet of the node falls below. */
        private double below(int b, double x, double y, double z) {
            double dx = Math.max(0, Math.max(bound[b] - x, x - bound[b + 3]));
            double dy = Math.max(0, Math.max(bound[b + 1] - y, y - bound[b + 4]));
            double dz = Math.max(0, Math.max(bound[b + 2] - z, z - bound[b + 5]));
            double box = dx * dx + dy * dy + dz * dz;
            double h = bound[b + 6] * x + bound[b + 7] * y + bound[b + 8] * z;
            double off = Math.max(0, Math.max(bound[b + 9] - h, h - bound[b + 10]));
            return Math.max(box, off * off);
        }
    }
}
