package org.fizzhull.mesh;

/**
 * Asks a {@link FacetTree} what reaches into a ball that touches the surface from inside. Parts of the surface that rise
 * from the tangent plane of the ball by less than half a crease go on smoothly from where it touches, and do not count.
 */
final class EmptyBall {
    /**
     * A part counts when it is nearer to the middle than the radius by this share, and a nearer one is not looked for when
     * it could be so by no more: rounding, and inside a round body all facets are nearly equally far.
     */
    private static final double SLACK = 5e-5;

    private final FacetTree tree;
    private final double steep;
    private final int[] stack = new int[FacetTree.DEEPEST];
    private final double[] least = new double[FacetTree.DEEPEST];
    private final double[] way = new double[3];
    private double[] start = way;
    private double[] inward = way;
    private double x;
    private double y;
    private double z;
    private double slack;
    private double best;
    private double reach;
    private double radius;
    private int last;
    private int top;

    /**
     * @param tree of the facets that count
     * @param crease of the surface, rad: there the ball would touch both sides under half of it
     */
    EmptyBall(FacetTree tree, double crease) {
        this.tree = tree;
        this.steep = Math.sin(crease / 2);
    }

    /**
     * Radius of the ball that touches at the same place and goes through the point that is nearest to the middle of a
     * ball, m; the radius of that ball where nothing reaches into it.
     *
     * @param touch where the ball touches, m
     * @param u direction of length 1 from there to its middle
     * @param r its radius, m
     */
    double shrunk(double[] touch, double[] u, double r) {
        start = touch;
        inward = u;
        x = touch[0] + r * u[0];
        y = touch[1] + r * u[1];
        z = touch[2] + r * u[2];
        slack = SLACK * r;
        radius = r;
        nearer(r * r * (1 - SLACK));
        look(last, r);
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
                look(i, r);
            }
        }
        return Math.min(radius, r);
    }

    private void look(int facet, double r) {
        double d = PointTriangle.squared(tree.corner, 9 * facet, x, y, z, way);
        if (d < best) {
            double qx = r * inward[0] - way[0];
            double qy = r * inward[1] - way[1];
            double qz = r * inward[2] - way[2];
            double height = qx * inward[0] + qy * inward[1] + qz * inward[2];
            double far = qx * qx + qy * qy + qz * qz;
            if (height > 0 && height * height > steep * steep * far) {
                radius = far / (2 * height);
                last = facet;
                nearer(d);
            }
        }
    }

    private void nearer(double squared) {
        best = squared;
        double d = Math.max(0, Math.sqrt(squared) - slack);
        reach = d * d;
    }

    private void push(int node, double distance) {
        if (distance < reach && !smooth(FacetTree.STRIDE * node)) {
            stack[++top] = node;
            least[top] = distance;
        }
    }

    /** Whether the ball around the box of a node rises too little from the tangent plane everywhere. */
    private boolean smooth(int b) {
        double[] bound = tree.bound;
        double mx = (bound[b] + bound[b + 3]) / 2 - start[0];
        double my = (bound[b + 1] + bound[b + 4]) / 2 - start[1];
        double mz = (bound[b + 2] + bound[b + 5]) / 2 - start[2];
        double hx = bound[b + 3] - bound[b];
        double hy = bound[b + 4] - bound[b + 1];
        double hz = bound[b + 5] - bound[b + 2];
        double half = Math.sqrt(hx * hx + hy * hy + hz * hz) / 2;
        double height = mx * inward[0] + my * inward[1] + mz * inward[2] + half;
        double far = Math.sqrt(mx * mx + my * my + mz * mz) - half;
        return far > 0 && height < steep * far;
    }
}
