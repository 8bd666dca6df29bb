package org.fizzhull.mesh;

/** Asks a {@link FacetTree} for distances; begins at the facet found last, so points asked in a row should be neighbours. */
final class NearestFacet {
    private final FacetTree tree;
    private final int[] stack = new int[FacetTree.DEEPEST];
    private final double[] least = new double[FacetTree.DEEPEST];
    private final double[] way = new double[3];
    private double best;
    private int last;
    private int top;

    NearestFacet(FacetTree tree) {
        this.tree = tree;
    }

    /** Distance from a point to the nearest facet, m. */
    double distance(double x, double y, double z) {
        best = PointTriangle.squared(tree.corner, 9 * last, x, y, z, way);
        top = 0;
        stack[0] = 0;
        least[0] = 0;
        while (top >= 0) {
            int node = stack[top];
            if (least[top--] >= best) {
                continue;
            }
            int right = tree.link[node];
            if (right >= 0) {
                double one = tree.below(node + 1, x, y, z);
                double two = tree.below(right, x, y, z);
                push(one <= two ? right : node + 1, Math.max(one, two));
                push(one <= two ? node + 1 : right, Math.min(one, two));
                continue;
            }
            int first = -right - 1;
            for (int i = first; i < first + tree.size[node]; i++) {
                double d = PointTriangle.squared(tree.corner, 9 * i, x, y, z, way);
                if (d < best) {
                    best = d;
                    last = i;
                }
            }
        }
        return Math.sqrt(best);
    }

    private void push(int node, double distance) {
        if (distance < best) {
            stack[++top] = node;
            least[top] = distance;
        }
    }
}
