package org.fizzhull.mesh.cutting;

import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;

/**
 * For each node of a {@link FacetTree}, the sums a plane cut needs of the facets in it. A plane passes through few boxes:
 * those wholly below it are added as one, those above are left out, so that a cut costs about the square root of the
 * number of facets and is as exact as one facet after another. Immutable.
 *
 * <p>With corners a, b, c from the origin and p on the plane, {@code det(a-p, b-p, c-p) = D - p . N} where
 * {@code D = det(a, b, c)} and {@code N = a x b + b x c + c x a}; with {@code S = a + b + c} the volume is the sum of that
 * over 6 and its moment about p the sum of {@code (D - p . N)(S - 3 p)} over 24. So the sums of D, N, D S and of the
 * products of S and N are all a box must hold (computed).
 */
final class CutSums {
    /** D (1), N (3), D S (3), S N (9), area of the facets (1). */
    private static final int STRIDE = 17;

    private static final int AREA = 16;

    private final FacetTree tree;
    private final double[] origin;
    private final double[] sums;

    /** Node after this one and all below it. */
    private final int[] after;

    /** Vertices of the facets in the order of the tree. */
    private final int[] corners;

    private final double margin;

    /** Sums about an origin. */
    CutSums(FacetTree tree, double ox, double oy, double oz) {
        this.tree = tree;
        TriangleMesh mesh = tree.mesh();
        this.origin = new double[] {ox, oy, oz};
        sums = new double[STRIDE * tree.nodes()];
        after = new int[tree.nodes()];
        corners = new int[3 * mesh.facetCount()];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = mesh.corner(tree.facet(i / 3), i % 3);
        }
        // children stand behind their parents
        for (int node = tree.nodes() - 1; node >= 0; node--) {
            if (tree.leaf(node)) {
                after[node] = node + 1;
                leaf(node);
            } else {
                after[node] = after[tree.right(node)];
                for (int k = 0; k < STRIDE; k++) {
                    sums[STRIDE * node + k] = sums[STRIDE * (node + 1) + k] + sums[STRIDE * tree.right(node) + k];
                }
            }
        }
        double size = 0;
        for (int k = 0; k < 3; k++) {
            size = Math.max(size, tree.box(0, k + 3) - tree.box(0, k));
        }
        margin = 1e-12 * size;
    }

    private void leaf(int node) {
        int at = STRIDE * node;
        double[] v = new double[9];
        double[] n = new double[3];
        for (int i = tree.first(node); i < tree.end(node); i++) {
            for (int k = 0; k < 9; k++) {
                v[k] = tree.at(i, k) - origin[k % 3];
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
            sums[at] += d;
            sums[at + AREA] += area(i);
            for (int k = 0; k < 3; k++) {
                double s = v[k] + v[3 + k] + v[6 + k];
                sums[at + 1 + k] += n[k];
                sums[at + 4 + k] += d * s;
                for (int l = 0; l < 3; l++) {
                    sums[at + 7 + 3 * k + l] += s * n[l];
                }
            }
        }
    }

    /** Area of a facet in the order of the tree, m2. */
    double area(int i) {
        double ax = tree.at(i, 3) - tree.at(i, 0);
        double ay = tree.at(i, 4) - tree.at(i, 1);
        double az = tree.at(i, 5) - tree.at(i, 2);
        double bx = tree.at(i, 6) - tree.at(i, 0);
        double by = tree.at(i, 7) - tree.at(i, 1);
        double bz = tree.at(i, 8) - tree.at(i, 2);
        double x = ay * bz - az * by;
        double y = az * bx - ax * bz;
        double z = ax * by - ay * bx;
        return Math.sqrt(x * x + y * y + z * z) / 2;
    }

    /** Area of all facets of a node, m2. */
    double areaOf(int node) {
        return sums[STRIDE * node + AREA];
    }

    /** Node after this one and all below it: where a walk goes on that leaves this one out. */
    int after(int node) {
        return after[node];
    }

    /** 1 where every corner in a node lies above {@code n . (x - origin) = lift}, -1 where below, 0 where not sure. */
    int side(int node, double nx, double ny, double nz, double lift) {
        double height = lift + nx * origin[0] + ny * origin[1] + nz * origin[2];
        if (-tree.top(node, -nx, -ny, -nz) - height > margin) {
            return 1;
        }
        return tree.top(node, nx, ny, nz) - height < -margin ? -1 : 0;
    }

    /** Adds volume and moments about p of all facets of a node; p from the origin of the sums. */
    void add(int node, double px, double py, double pz, PlaneCut out) {
        int s = STRIDE * node;
        double d = sums[s] - (px * sums[s + 1] + py * sums[s + 2] + pz * sums[s + 3]);
        out.volume += d / 6;
        out.mx += (sums[s + 4] - (sums[s + 7] * px + sums[s + 8] * py + sums[s + 9] * pz) - 3 * px * d) / 24;
        out.my += (sums[s + 5] - (sums[s + 10] * px + sums[s + 11] * py + sums[s + 12] * pz) - 3 * py * d) / 24;
        out.mz += (sums[s + 6] - (sums[s + 13] * px + sums[s + 14] * py + sums[s + 15] * pz) - 3 * pz * d) / 24;
    }

    /** Vertex of a facet in the order of the tree. */
    int corner(int place, int k) {
        return corners[3 * place + k];
    }
}
