package org.fizzhull.mesh;

/**
 * Goes down a {@link FacetTree} from a point, nearer nodes first, and looks at every facet that can be nearer than what
 * was found before. Begins at the facet found last, so points asked in a row should be neighbours.
 */
abstract class TreeDescent {
    final FacetTree tree;
    final double[] way = new double[3];

    /** The point, m. */
    double x;

    double y;
    double z;

    /** Square of the distance from which facets no longer count, m2. */
    double reach;

    private final int[] stack = new int[FacetTree.DEEPEST];
    private final double[] least = new double[FacetTree.DEEPEST];
    private int last;
    private int top;

    TreeDescent(FacetTree tree) {
        this.tree = tree;
    }

    /** Looks at a facet at a square of a distance, m2; says whether it is the best so far. {@link #way} leads from it. */
    abstract boolean better(double squared);

    /** Whether something in a node can count. */
    abstract boolean worth(int node);

    /** Looks at all that counts. */
    final void descend() {
        look(last);
        top = 0;
        stack[0] = 0;
        least[0] = 0;
        while (top >= 0) {
            int node = stack[top];
            if (least[top--] >= reach) {
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
                look(i);
            }
        }
    }

    private void look(int facet) {
        if (better(PointTriangle.squared(tree.corner, 9 * facet, x, y, z, way))) {
            last = facet;
        }
    }

    private void push(int node, double distance) {
        if (distance < reach && worth(node)) {
            stack[++top] = node;
            least[top] = distance;
        }
    }
}
