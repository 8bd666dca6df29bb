package org.fizzhull.mesh.distance;

import java.util.BitSet;
import org.fizzhull.geometry.Vec3;

/**
 * The nearest facet of a {@link FacetTree} to a point: a branch-and-bound descent, nearer nodes first (Roussopoulos,
 * Kelley and Vincent 1995, from memory). Some facets can be left out. A query costs some microseconds; points asked in
 * a row should be neighbours, because a search begins with the leaf that held the last answer. Holds its answer: not thread-safe.
 */
public final class NearestFacet {
    /** Nodes that wait on the way down are never more. */
    private static final int DEEPEST = 128;

    /**
     * A node that could shorten a distance by less than this share is not opened: in the middle of a ball every facet is
     * as near as any other.
     */
    private static final double SAME = 1e-4;

    private final FacetTree tree;
    private final BitSet leftOut;
    private final double[] way = new double[3];
    private final double[] kept = new double[3];
    private final int[] stack = new int[DEEPEST];
    private final double[] least = new double[DEEPEST];
    private double x;
    private double y;
    private double z;
    private double squared;

    /** Square of a distance from which a node is not worth opening, m2. */
    private double enough;

    /** The leaf that held the nearest facet last. */
    private int leaf;

    /**
     * Over all facets of a tree.
     *
     * @param tree tree of the facets
     */
    public NearestFacet(FacetTree tree) {
        this(tree, new BitSet());
    }

    /**
     * Over some facets of a tree.
     *
     * @param tree tree of the facets
     * @param leftOut numbers in the mesh of facets that do not count
     */
    public NearestFacet(FacetTree tree, BitSet leftOut) {
        this.tree = tree;
        this.leftOut = leftOut;
        while (!tree.leaf(leaf)) {
            leaf++;
        }
    }

    /**
     * {@return distance from a point to the nearest facet, m; infinite where every facet is left out}
     *
     * @param px first coordinate of the point, m
     * @param py second coordinate, m
     * @param pz third coordinate, m
     */
    public double distance(double px, double py, double pz) {
        return distance(px, py, pz, Double.POSITIVE_INFINITY);
    }

    /**
     * {@return the same, or the limit where no facet is nearer than that, m} Only what lies within the limit is searched.
     *
     * @param px first coordinate of the point, m
     * @param py second coordinate, m
     * @param pz third coordinate, m
     * @param limit distance from which a facet does not count, m
     */
    public double distance(double px, double py, double pz, double limit) {
        x = px;
        y = py;
        z = pz;
        squared = limit * limit;
        enough = squared;
        look(leaf);
        int top = 0;
        stack[0] = 0;
        least[0] = 0;
        while (top >= 0) {
            int node = stack[top];
            if (least[top--] >= enough) {
                continue;
            }
            if (tree.leaf(node)) {
                look(node);
                continue;
            }
            int left = node + 1;
            int right = tree.right(node);
            double toLeft = tree.squaredBelow(left, x, y, z, enough);
            double toRight = tree.squaredBelow(right, x, y, z, enough);
            boolean leftFirst = toLeft <= toRight;
            double farther = leftFirst ? toRight : toLeft;
            double nearer = leftFirst ? toLeft : toRight;
            if (farther < enough) {
                stack[++top] = leftFirst ? right : left;
                least[top] = farther;
            }
            if (nearer < enough) {
                stack[++top] = leftFirst ? left : right;
                least[top] = nearer;
            }
        }
        return Math.sqrt(squared);
    }

    private void look(int node) {
        int end = tree.end(node);
        for (int i = tree.first(node); i < end; i++) {
            if (leftOut.get(tree.facet(i))) {
                continue;
            }
            double found = PointTriangle.squared(tree.corner, 9 * i, x, y, z, way);
            if (found < squared) {
                squared = found;
                enough = found * (1 - 2 * SAME);
                leaf = node;
                kept[0] = way[0];
                kept[1] = way[1];
                kept[2] = way[2];
            }
        }
    }

    /** The point of the facets that was nearest last. */
    Vec3 foot() {
        return new Vec3(x - kept[0], y - kept[1], z - kept[2]);
    }

    /**
     * Rate at which the distance found last changes along a direction of length 1, from -1 to 1; on a facet, where it is
     * 0, along the normal.
     */
    double rate(double ux, double uy, double uz) {
        return (kept[0] * ux + kept[1] * uy + kept[2] * uz) / Math.sqrt(squared);
    }
}
