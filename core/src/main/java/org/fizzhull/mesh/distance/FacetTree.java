package org.fizzhull.mesh.distance;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/**
 * A tree of bounding volumes over the facets of a mesh, for distances, rays and plane cuts. A node holds the box around
 * its facets and, up to 512 of them, the disc around them: the slab between two planes across their mean normal, as wide
 * as they reach from the axis through the middle of the box. Inside a curved body nearly all facets are almost equally far,
 * and only the discs tell them apart. A node is parted at the middle of its longest side, O(n log n) in all: about 0.5 s
 * for a million facets. Immutable.
 */
public final class FacetTree {
    private static final int LEAF = 8;
    private static final int DISC = 512;

    /** Lowest x, y, z, highest x, y, z, axis of the disc, its lower and its upper end, its radius. */
    private static final int STRIDE = 12;

    /** Coordinates of the corners of the facets in the order of the tree, m. */
    final double[] corner;

    private final TriangleMesh mesh;
    private final int[] facet;
    private final double[] bound;

    /** Right child of an inner node, whose left one follows it; 0 for a leaf. */
    private final int[] right;

    private final int[] first;
    private final int[] end;
    private int nodes;

    /**
     * Tree of all facets of a mesh.
     *
     * @param mesh the mesh
     */
    public FacetTree(TriangleMesh mesh) {
        this.mesh = mesh;
        int n = mesh.facetCount();
        facet = new int[n];
        for (int f = 0; f < n; f++) {
            facet[f] = f;
        }
        right = new int[2 * n];
        first = new int[2 * n];
        end = new int[2 * n];
        build(0, n);
        corner = new double[9 * n];
        for (int i = 0; i < corner.length; i++) {
            corner[i] = mesh.at(mesh.corner(facet[i / 9], i / 3 % 3), i % 3);
        }
        bound = new double[STRIDE * nodes];
        // children stand behind their parents
        for (int node = nodes - 1; node >= 0; node--) {
            box(node);
            disc(node);
        }
    }

    private void build(int from, int to) {
        int node = nodes++;
        first[node] = from;
        end[node] = to;
        if (to - from > LEAF) {
            int middle = halve(from, to);
            build(from, middle);
            right[node] = nodes;
            build(middle, to);
        }
    }

    /** Parts facets at the middle of the longest side of the box around their middles; by number where that parts none. */
    private int halve(int from, int to) {
        int axis = 0;
        double longest = -1;
        double half = 0;
        for (int k = 0; k < 3; k++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                double at = sum(facet[i], k);
                low = Math.min(low, at);
                high = Math.max(high, at);
            }
            if (high - low > longest) {
                axis = k;
                longest = high - low;
                half = (low + high) / 2;
            }
        }
        int middle = from;
        for (int i = from; i < to; i++) {
            if (sum(facet[i], axis) < half) {
                int swapped = facet[middle];
                facet[middle++] = facet[i];
                facet[i] = swapped;
            }
        }
        return middle > from && middle < to ? middle : (from + to) / 2;
    }

    /** Three times a coordinate of the middle of a facet, m. */
    private double sum(int f, int axis) {
        return mesh.at(mesh.corner(f, 0), axis) + mesh.at(mesh.corner(f, 1), axis) + mesh.at(mesh.corner(f, 2), axis);
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
            bound[b + 5] = Double.POSITIVE_INFINITY;
            return;
        }
        Vec3 sum = Vec3.ZERO;
        for (int i = first[node]; i < end[node]; i++) {
            Vec3 from = corner(9 * i);
            sum = sum.plus(corner(9 * i + 3).minus(from).cross(corner(9 * i + 6).minus(from)));
        }
        Vec3 axis = sum.norm() > 0 ? sum.unit() : Vec3.UP;
        Vec3 middle = new Vec3(middle(b - 6), middle(b - 5), middle(b - 4));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        for (int i = 9 * first[node]; i < 9 * end[node]; i += 3) {
            Vec3 at = corner(i).minus(middle);
            double h = axis.dot(at);
            low = Math.min(low, h);
            high = Math.max(high, h);
            widest = Math.max(widest, at.dot(at) - h * h);
        }
        bound[b] = axis.x();
        bound[b + 1] = axis.y();
        bound[b + 2] = axis.z();
        bound[b + 3] = low;
        bound[b + 4] = high;
        bound[b + 5] = Math.sqrt(widest);
    }

    private Vec3 corner(int i) {
        return new Vec3(corner[i], corner[i + 1], corner[i + 2]);
    }

    /** Middle of a box along the axis of the lower of its two sides at {@code side}, m. */
    private double middle(int side) {
        return (bound[side] + bound[side + 3]) / 2;
    }

    /**
     * Square of a distance from a point that no facet of a node falls below, m2.
     *
     * @param enough the disc is not asked where the box alone is as far as this, m2
     */
    double squaredBelow(int node, double x, double y, double z, double enough) {
        int b = STRIDE * node;
        double dx = beyond(bound[b], bound[b + 3], x);
        double dy = beyond(bound[b + 1], bound[b + 4], y);
        double dz = beyond(bound[b + 2], bound[b + 5], z);
        double box = dx * dx + dy * dy + dz * dz;
        double radius = bound[b + 11];
        if (box >= enough || radius == Double.POSITIVE_INFINITY) {
            return box;
        }
        double px = x - middle(b);
        double py = y - middle(b + 1);
        double pz = z - middle(b + 2);
        double h = bound[b + 6] * px + bound[b + 7] * py + bound[b + 8] * pz;
        double off = beyond(bound[b + 9], bound[b + 10], h);
        double beside = px * px + py * py + pz * pz - h * h;
        double disc = off * off;
        if (beside > radius * radius) {
            double out = Math.sqrt(beside) - radius;
            disc += out * out;
        }
        return disc > box ? disc : box;
    }

    private static double beyond(double low, double high, double at) {
        return at < low ? low - at : at > high ? at - high : 0;
    }

    /**
     * {@return the corner that lies farthest along a direction, m}
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     */
    public Vec3 farthest(double nx, double ny, double nz) {
        return corner(farthest(0, nx, ny, nz, -1));
    }

    private int farthest(int node, double nx, double ny, double nz, int known) {
        int best = known;
        double most = best < 0 ? Double.NEGATIVE_INFINITY : along(best, nx, ny, nz);
        if (leaf(node)) {
            for (int i = 9 * first[node]; i < 9 * end[node]; i += 3) {
                double at = along(i, nx, ny, nz);
                best = at > most ? i : best;
                most = at > most ? at : most;
            }
            return best;
        }
        int left = node + 1;
        double leftTop = top(left, nx, ny, nz);
        double rightTop = top(right[node], nx, ny, nz);
        boolean leftFirst = leftTop >= rightTop;
        if (Math.max(leftTop, rightTop) > most) {
            best = farthest(leftFirst ? left : right[node], nx, ny, nz, best);
            most = best < 0 ? most : along(best, nx, ny, nz);
        }
        if (Math.min(leftTop, rightTop) > most) {
            best = farthest(leftFirst ? right[node] : left, nx, ny, nz, best);
        }
        return best;
    }

    private double along(int i, double nx, double ny, double nz) {
        return nx * corner[i] + ny * corner[i + 1] + nz * corner[i + 2];
    }

    /**
     * {@return a height along a direction that no corner of a node rises above, m, but for rounding}
     *
     * @param node number of the node
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     */
    public double top(int node, double nx, double ny, double nz) {
        int b = STRIDE * node;
        return nx * bound[nx > 0 ? b + 3 : b] + ny * bound[ny > 0 ? b + 4 : b + 1] + nz * bound[nz > 0 ? b + 5 : b + 2];
    }

    /** {@return the mesh} */
    public TriangleMesh mesh() {
        return mesh;
    }

    /** {@return number of nodes; node 0 holds all facets, and the left child of an inner node follows it} */
    public int nodes() {
        return nodes;
    }

    /**
     * {@return whether a node has no children}
     *
     * @param node number of the node
     */
    public boolean leaf(int node) {
        return right[node] == 0;
    }

    /**
     * {@return right child of an inner node}
     *
     * @param node number of the node
     */
    public int right(int node) {
        return right[node];
    }

    /**
     * {@return first of the facets of a node, in the order of the tree}
     *
     * @param node number of the node
     */
    public int first(int node) {
        return first[node];
    }

    /**
     * {@return the facet after the last one of a node, in the order of the tree}
     *
     * @param node number of the node
     */
    public int end(int node) {
        return end[node];
    }

    /**
     * {@return number in the mesh of a facet in the order of the tree}
     *
     * @param place place in the order of the leaves
     */
    public int facet(int place) {
        return facet[place];
    }

    /**
     * {@return coordinate i (0 to 8: x, y, z of the first corner, and so on) of a facet in the order of the tree, m}
     *
     * @param place place in the order of the leaves
     * @param i 0 to 8
     */
    public double at(int place, int i) {
        return corner[9 * place + i];
    }

    /**
     * {@return lowest x, y, z (sides 0 to 2) or highest x, y, z (3 to 5) of the box of a node, m}
     *
     * @param node number of the node
     * @param side 0 to 5
     */
    public double box(int node, int side) {
        return bound[STRIDE * node + side];
    }
}
