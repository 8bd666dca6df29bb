package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;

/**
 * A tree of bounding volumes over the facets of a mesh, for distances, rays and plane cuts. A node holds the box around
 * its facets and, up to 4096 of them, the disc around them: the slab between two planes across their mean normal, as wide
 * as they reach from the axis through the middle of the box. Inside a curved body nearly all facets are almost equally far,
 * and only the discs tell them apart. Built by halving at the median along the longest
 * side, O(n log n): about 0.5 s for a million facets. Immutable.
 */
public final class FacetTree {
    private static final int LEAF = 4;
    private static final int DISC = 4096;

    /** Lowest x, y, z, highest x, y, z, axis of the disc, its lower and its upper end, its radius. */
    private static final int STRIDE = 12;

    /** Coordinates of the corners of the facets in the order of the tree, m. */
    final double[] corner;

    private final TriangleMesh mesh;
    private final int[] facet;
    private double[] bound;

    /** Right child of an inner node, whose left one follows it; 0 for a leaf. */
    private int[] right;

    private int[] first;
    private int[] end;
    private int nodes;

    /** Tree of all facets of a mesh. */
    public FacetTree(TriangleMesh mesh) {
        this.mesh = mesh;
        FacetOrder order = new FacetOrder(mesh);
        int n = mesh.facetCount();
        int room = 2 * (n / 2 + 1);
        bound = new double[STRIDE * room];
        right = new int[room];
        first = new int[room];
        end = new int[room];
        corner = new double[9 * n];
        facet = order.facet;
        build(order, 0, n);
        bound = Arrays.copyOf(bound, STRIDE * nodes);
        right = Arrays.copyOf(right, nodes);
        first = Arrays.copyOf(first, nodes);
        end = Arrays.copyOf(end, nodes);
    }

    private void build(FacetOrder order, int from, int to) {
        int node = nodes++;
        first[node] = from;
        end[node] = to;
        if (to - from <= LEAF) {
            for (int i = from; i < to; i++) {
                for (int k = 0; k < 9; k++) {
                    corner[9 * i + k] = mesh.at(mesh.corner(facet[i], k / 3), k % 3);
                }
            }
        } else {
            int middle = order.halve(from, to);
            build(order, from, middle);
            right[node] = nodes;
            build(order, middle, to);
        }
        box(node);
        disc(node);
    }

    private void box(int node) {
        int b = STRIDE * node;
        for (int k = 0; k < 3; k++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            if (leaf(node)) {
                for (int i = 9 * first[node] + k; i < 9 * end[node]; i += 3) {
                    low = Math.min(low, corner[i]);
                    high = Math.max(high, corner[i]);
                }
            } else {
                int left = STRIDE * (node + 1);
                int other = STRIDE * right[node];
                low = Math.min(bound[left + k], bound[other + k]);
                high = Math.max(bound[left + 3 + k], bound[other + 3 + k]);
            }
            bound[b + k] = low;
            bound[b + 3 + k] = high;
        }
    }

    private void disc(int node) {
        int b = STRIDE * node + 6;
        if (end[node] - first[node] > DISC) {
            bound[b + 3] = Double.NEGATIVE_INFINITY;
            bound[b + 4] = Double.POSITIVE_INFINITY;
            bound[b + 5] = Double.POSITIVE_INFINITY;
            return;
        }
        double nx = 0;
        double ny = 0;
        double nz = 0;
        for (int i = 9 * first[node]; i < 9 * end[node]; i += 9) {
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
        double x = middle(node, 0);
        double y = middle(node, 1);
        double z = middle(node, 2);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        for (int i = 9 * first[node]; i < 9 * end[node]; i += 3) {
            double px = corner[i] - x;
            double py = corner[i + 1] - y;
            double pz = corner[i + 2] - z;
            double h = nx * px + ny * py + nz * pz;
            low = Math.min(low, h);
            high = Math.max(high, h);
            widest = Math.max(widest, px * px + py * py + pz * pz - h * h);
        }
        bound[b] = nx;
        bound[b + 1] = ny;
        bound[b + 2] = nz;
        bound[b + 3] = low;
        bound[b + 4] = high;
        bound[b + 5] = Math.sqrt(widest);
    }

    private double middle(int node, int axis) {
        return (bound[STRIDE * node + axis] + bound[STRIDE * node + axis + 3]) / 2;
    }

    /** Square of a distance from a point that no facet of a node falls below, m2. */
    double squaredBelow(int node, double x, double y, double z) {
        int b = STRIDE * node;
        double dx = Math.max(0, Math.max(bound[b] - x, x - bound[b + 3]));
        double dy = Math.max(0, Math.max(bound[b + 1] - y, y - bound[b + 4]));
        double dz = Math.max(0, Math.max(bound[b + 2] - z, z - bound[b + 5]));
        double box = dx * dx + dy * dy + dz * dz;
        double px = x - (bound[b] + bound[b + 3]) / 2;
        double py = y - (bound[b + 1] + bound[b + 4]) / 2;
        double pz = z - (bound[b + 2] + bound[b + 5]) / 2;
        double h = bound[b + 6] * px + bound[b + 7] * py + bound[b + 8] * pz;
        double off = Math.max(0, Math.max(bound[b + 9] - h, h - bound[b + 10]));
        double beside = Math.sqrt(Math.max(0, px * px + py * py + pz * pz - h * h)) - bound[b + 11];
        return Math.max(box, off * off + (beside > 0 ? beside * beside : 0));
    }

    /** The mesh. */
    public TriangleMesh mesh() {
        return mesh;
    }

    /** Number of nodes; node 0 holds all facets, and the left child of an inner node follows it. */
    public int nodes() {
        return nodes;
    }

    /** Whether a node has no children. */
    public boolean leaf(int node) {
        return right[node] == 0;
    }

    /** Right child of an inner node. */
    public int right(int node) {
        return right[node];
    }

    /** First of the facets of a node, in the order of the tree. */
    public int first(int node) {
        return first[node];
    }

    /** The facet after the last one of a node, in the order of the tree. */
    public int end(int node) {
        return end[node];
    }

    /** Number in the mesh of a facet in the order of the tree. */
    public int facet(int place) {
        return facet[place];
    }

    /** Lowest x, y, z (sides 0 to 2) or highest x, y, z (3 to 5) of the box of a node, m. */
    public double box(int node, int side) {
        return bound[STRIDE * node + side];
    }
}
