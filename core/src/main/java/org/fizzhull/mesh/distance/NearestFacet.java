package org.fizzhull.mesh.distance;

/**
 * The nearest facet of a {@link FacetTree} to a point: a branch-and-bound descent, nearer nodes first (Roussopoulos,
 * Kelley and Vincent 1995, from memory). Some facets can be left out. A query costs about a microsecond; points asked in
 * a row should be neighbours, because a descent begins with the facet found last. Holds its answer: not thread-safe.
 */
public final class NearestFacet {
    /** Nodes that wait on the way down are never more. */
    private static final int DEEPEST = 128;

    /**
     * A node that could shorten a distance by less than this share is not opened: in the middle of a ball every facet is
     * as near as any other.
     */
    private static final double SAME = 1e-5;

    private final FacetTree tree;
    private final boolean[] leftOut;
    private final double[] way = new double[3];
    private final double[] kept = new double[3];
    private final int[] stack = new int[DEEPEST];
    private final double[] least = new double[DEEPEST];
    private double x;
    private double y;
    private double z;
    private double squared;
    private int place;

    /** Over all facets of a tree. */
    public NearestFacet(FacetTree tree) {
        this(tree, new boolean[0]);
    }

    /**
     * Over some facets of a tree.
     *
     * @param leftOut flags, by number in the mesh, of facets that do not count; empty for none
     */
    public NearestFacet(FacetTree tree, boolean[] leftOut) {
        this.tree = tree;
        this.leftOut = leftOut;
    }

    /** Distance from a point to the nearest facet, m; infinite where every facet is left out. */
    public double distance(double px, double py, double pz) {
        x = px;
        y = py;
        z = pz;
        squared = Double.POSITIVE_INFINITY;
        look(place);
        int top = 0;
        stack[0] = 0;
        least[0] = 0;
        while (top >= 0) {
            int node = stack[top];
            if (least[top--] >= squared * (1 - 2 * SAME)) {
                continue;
            }
            if (tree.leaf(node)) {
                for (int i = tree.first(node); i < tree.end(node); i++) {
                    look(i);
                }
                continue;
            }
            int left = node + 1;
            int right = tree.right(node);
            double toLeft = tree.squaredBelow(left, x, y, z);
            double toRight = tree.squaredBelow(right, x, y, z);
            boolean leftFirst = toLeft <= toRight;
            stack[++top] = leftFirst ? right : left;
            least[top] = Math.max(toLeft, toRight);
            stack[++top] = leftFirst ? left : right;
            least[top] = Math.min(toLeft, toRight);
        }
        return Math.sqrt(squared);
    }

    private void look(int i) {
        if (leftOut.length > 0 && leftOut[tree.facet(i)]) {
            return;
        }
        double found = PointTriangle.squared(tree.corner, 9 * i, x, y, z, way);
        if (found < squared) {
            squared = found;
            place = i;
            kept[0] = way[0];
            kept[1] = way[1];
            kept[2] = way[2];
        }
    }

    /**
     * Rate at which the distance found last changes along a direction of length 1, from -1 to 1; on a facet, where it is
     * 0, along the normal.
     */
    double rate(double ux, double uy, double uz) {
        return (kept[0] * ux + kept[1] * uy + kept[2] * uz) / Math.sqrt(squared);
    }
}
