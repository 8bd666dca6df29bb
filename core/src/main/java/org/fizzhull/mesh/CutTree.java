package org.fizzhull.mesh;

import java.util.Arrays;
import org.fizzhull.geometry.PlaneCut;

/**
 * The facets of a closed mesh in a tree of boxes, each with the sums a plane cut needs of the facets in it. A plane
 * passes through few boxes: those wholly below it are added as one, those above are left out, so that a cut costs about
 * the square root of the number of facets and is as exact as one facet after another. Immutable.
 *
 * <p>With corners a, b, c from the origin and p on the plane, {@code det(a-p, b-p, c-p) = D - p . N} where
 * {@code D = det(a, b, c)} and {@code N = a x b + b x c + c x a}; with {@code S = a + b + c} the volume is the sum of that
 * over 6 and its moment about p the sum of {@code (D - p . N)(S - 3 p)} over 24. So the sums of D, N, D S and of the
 * products of S and N are all a box must hold (computed).
 */
final class CutTree {
    private static final int LEAF = 8;
    /** Box (6), D (1), N (3), D S (3), S N (9). */
    private static final int STRIDE = 22;

    private static final int SUMS = 6;

    private final TriangleMesh mesh;
    private final double[] origin;
    private final int[] corner;
    private double[] node;
    /** Node after this one and all below it. */
    private int[] next;
    /** First facet of a leaf, in the order of the tree, and the one after its last; an inner node has none. */
    private int[] first;

    private int[] end;

    private int nodes;
    private final double margin;

    /** Tree of all facets, with sums about an origin. */
    CutTree(TriangleMesh mesh, double ox, double oy, double oz) {
        this.mesh = mesh;
        this.origin = new double[] {ox, oy, oz};
        FacetOrder order = new FacetOrder(mesh, FaceSets.all(mesh));
        int n = order.count();
        int room = 4 * n / LEAF + 1;
        node = new double[STRIDE * room];
        next = new int[room];
        first = new int[room];
        end = new int[room];
        corner = new int[3 * n];
        build(order, 0, n);
        node = Arrays.copyOf(node, STRIDE * nodes);
        next = Arrays.copyOf(next, nodes);
        first = Arrays.copyOf(first, nodes);
        end = Arrays.copyOf(end, nodes);
        double size = 0;
        for (int k = 0; k < 3; k++) {
            size = Math.max(size, node[k + 3]);
        }
        margin = 1e-12 * size;
    }

    private void build(FacetOrder order, int from, int to) {
        int here = nodes++;
        if (to - from <= LEAF) {
            first[here] = from;
            end[here] = to;
            leaf(order, STRIDE * here, from, to);
        } else {
            int middle = order.halve(from, to);
            int left = nodes;
            build(order, from, middle);
            int right = nodes;
            build(order, middle, to);
            join(STRIDE * here, STRIDE * left, STRIDE * right);
        }
        next[here] = nodes;
    }

    private void leaf(FacetOrder order, int at, int from, int to) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double[] v = new double[9];
        double[] n = new double[3];
        for (int i = from; i < to; i++) {
            for (int k = 0; k < 9; k++) {
                int c = mesh.corner(order.facet[i], k / 3);
                corner[3 * i + k / 3] = c;
                v[k] = mesh.at(c, k % 3) - origin[k % 3];
                low[k % 3] = Math.min(low[k % 3], v[k]);
                high[k % 3] = Math.max(high[k % 3], v[k]);
            }
            for (int k = 0; k < 3; k++) {
                int l = (k + 1) % 3;
                int m = (k + 2) % 3;
                n[k] = (v[l] * v[3 + m] - v[m] * v[3 + l])
                        + (v[3 + l] * v[6 + m] - v[3 + m] * v[6 + l])
                        + (v[6 + l] * v[m] - v[6 + m] * v[l]);
            }
            double d = v[0] * (v[4] * v[8] - v[5] * v[7])
                    + v[1] * (v[5] * v[6] - v[3] * v[8])
                    + v[2] * (v[3] * v[7] - v[4] * v[6]);
            node[at + SUMS] += d;
            for (int k = 0; k < 3; k++) {
                double s = v[k] + v[3 + k] + v[6 + k];
                node[at + SUMS + 1 + k] += n[k];
                node[at + SUMS + 4 + k] += d * s;
                for (int l = 0; l < 3; l++) {
                    node[at + SUMS + 7 + 3 * k + l] += s * n[l];
                }
            }
        }
        for (int k = 0; k < 3; k++) {
            node[at + k] = (low[k] + high[k]) / 2;
            node[at + 3 + k] = (high[k] - low[k]) / 2;
        }
    }

    private void join(int at, int left, int right) {
        for (int k = 0; k < 3; k++) {
            double low = Math.min(node[left + k] - node[left + 3 + k], node[right + k] - node[right + 3 + k]);
            double high = Math.max(node[left + k] + node[left + 3 + k], node[right + k] + node[right + 3 + k]);
            node[at + k] = (low + high) / 2;
            node[at + 3 + k] = (high - low) / 2;
        }
        for (int k = SUMS; k < STRIDE; k++) {
            node[at + k] = node[left + k] + node[right + k];
        }
    }

    int nodes() {
        return nodes;
    }

    /** Node after this one and all below it: where a walk goes on that leaves this one out. */
    int after(int i) {
        return next[i];
    }

    /** 1 where every corner in a node lies above {@code n . (x - origin) = lift}, -1 where below, 0 where not sure. */
    int side(int i, double nx, double ny, double nz, double lift) {
        int b = STRIDE * i;
        double middle = nx * node[b] + ny * node[b + 1] + nz * node[b + 2] - lift;
        double half = Math.abs(nx) * node[b + 3] + Math.abs(ny) * node[b + 4] + Math.abs(nz) * node[b + 5] + margin;
        return middle > half ? 1 : middle < -half ? -1 : 0;
    }

    /** Adds volume and moments about p of all facets of a node; p from the origin of the sums. */
    void add(int i, double px, double py, double pz, PlaneCut out) {
        int s = STRIDE * i + SUMS;
        double d = node[s] - (px * node[s + 1] + py * node[s + 2] + pz * node[s + 3]);
        out.volume += d / 6;
        out.mx += (node[s + 4] - (node[s + 7] * px + node[s + 8] * py + node[s + 9] * pz) - 3 * px * d) / 24;
        out.my += (node[s + 5] - (node[s + 10] * px + node[s + 11] * py + node[s + 12] * pz) - 3 * py * d) / 24;
        out.mz += (node[s + 6] - (node[s + 13] * px + node[s + 14] * py + node[s + 15] * pz) - 3 * pz * d) / 24;
    }

    /** First facet of a leaf, in the order of the tree. */
    int first(int i) {
        return first[i];
    }

    /** Facet after the last one of a leaf; 0 for an inner node, which has none of its own. */
    int end(int i) {
        return end[i];
    }

    /** Vertex of a facet in the order of the tree. */
    int corner(int facet, int k) {
        return corner[3 * facet + k];
    }

    /** Largest {@code n . x} over the corners, m. */
    double reach(double nx, double ny, double nz) {
        return reach(0, nx, ny, nz, Double.NEGATIVE_INFINITY);
    }

    private double reach(int i, double nx, double ny, double nz, double known) {
        double best = known;
        if (end[i] > 0) {
            for (int k = 3 * first[i]; k < 3 * end[i]; k++) {
                int v = corner[k];
                best = Math.max(best, nx * mesh.at(v, 0) + ny * mesh.at(v, 1) + nz * mesh.at(v, 2));
            }
            return best;
        }
        int left = i + 1;
        int right = next[left];
        double leftTop = top(left, nx, ny, nz);
        double rightTop = top(right, nx, ny, nz);
        boolean leftFirst = leftTop >= rightTop;
        if (Math.max(leftTop, rightTop) > best) {
            best = reach(leftFirst ? left : right, nx, ny, nz, best);
        }
        if (Math.min(leftTop, rightTop) > best) {
            best = reach(leftFirst ? right : left, nx, ny, nz, best);
        }
        return best;
    }

    /** A height that no corner of a node rises above, m. */
    private double top(int i, double nx, double ny, double nz) {
        int b = STRIDE * i;
        return nx * (origin[0] + node[b])
                + ny * (origin[1] + node[b + 1])
                + nz * (origin[2] + node[b + 2])
                + Math.abs(nx) * node[b + 3]
                + Math.abs(ny) * node[b + 4]
                + Math.abs(nz) * node[b + 5]
                + margin;
    }
}
