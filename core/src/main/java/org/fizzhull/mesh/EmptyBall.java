package org.fizzhull.mesh;

/**
 * Asks a {@link FacetTree} what reaches into a ball that touches the surface from inside. Parts of the surface that rise
 * from the tangent plane of the ball by less than half a crease go on smoothly from where it touches, and do not count.
 */
final class EmptyBall extends TreeDescent {
    /**
     * A part counts when it is nearer to the middle than the radius by this share, and a nearer one is not looked for when
     * it could be so by no more: rounding, and inside a round body all facets are nearly equally far.
     */
    private static final double SLACK = 5e-5;

    /** Sine of half a crease: at a crease the ball would touch both sides under it. */
    private static final double STEEP = Math.sin(FacetNormals.CREASE / 2);

    private double[] start = way;
    private double[] inward = way;
    private double size;
    private double best;
    private double radius;

    EmptyBall(FacetTree tree) {
        super(tree);
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
        size = r;
        radius = r;
        nearer(r * r * (1 - SLACK));
        descend();
        return Math.min(radius, r);
    }

    @Override
    boolean better(double squared) {
        if (squared < best) {
            double qx = size * inward[0] - way[0];
            double qy = size * inward[1] - way[1];
            double qz = size * inward[2] - way[2];
            double height = qx * inward[0] + qy * inward[1] + qz * inward[2];
            double far = qx * qx + qy * qy + qz * qz;
            if (height > 0 && height * height > STEEP * STEEP * far) {
                radius = far / (2 * height);
                nearer(squared);
                return true;
            }
        }
        return false;
    }

    private void nearer(double squared) {
        best = squared;
        double d = Math.max(0, Math.sqrt(squared) - SLACK * size);
        reach = d * d;
    }

    /** Not where the ball around the box of a node rises too little from the tangent plane everywhere. */
    @Override
    boolean worth(int node) {
        int b = FacetTree.STRIDE * node;
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
        return !(far > 0 && height < STEEP * far);
    }
}
