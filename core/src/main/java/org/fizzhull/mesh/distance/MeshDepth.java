package org.fizzhull.mesh.distance;

import org.fizzhull.mesh.FaceSets;
import org.fizzhull.mesh.MassProperties;
import org.fizzhull.mesh.TriangleMesh;

/**
 * What is left of the body of a closed mesh at inward depths from its open facets, by sampling: V(d) is the volume whose
 * points lie farther than d from every open facet, A(d) = -dV/dd. The points lie on lines spread evenly through the
 * body ({@link DepthLines}), their distances are exact and between them follow the tangents ({@link DepthSteps}), and the
 * table is fitted to the shares ({@link DepthFit}).
 *
 * <p>Nothing hangs on the facets but distances to them, so that slivers, creases and facets without area do no harm and
 * the answer does not depend on how a body is meshed or turned. The error is told from eight independent parts of the
 * lines. Deterministic; 0.1 to 0.3 s for any body.
 */
public final class MeshDepth {
    /** Stretches of line that do for a compact body, and the most that are drawn. */
    private static final int FEW = 1 << 12;

    private static final int MANY = 1 << 14;

    /** Standard error from which the few do not do. */
    private static final double AGREED = 0.004;

    private static final int CELLS = 14;
    private static final int PARTS = 8;
    private static final double MOSTLY = 0.1;

    /** What the table leaves of the curve between two nodes, as a share of the volume left. */
    private static final double ACCURACY = 0.002;

    private final FacetTree tree;
    private final DepthLines lines;
    private final MassProperties body;

    /** Draws lines through a closed mesh that faces outward. */
    public MeshDepth(FacetTree tree) {
        this.tree = tree;
        body = MassProperties.of(tree.mesh());
        if (!(body.volume() > 0)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward");
        }
        lines = new DepthLines(tree, body, PARTS);
        lines.upTo(FEW);
    }

    /**
     * Measures from some of the facets.
     *
     * @param shut facets, by number in the mesh, at which the front does not start; it ends where it comes upon them
     */
    public DepthColumns from(boolean[] shut) {
        TriangleMesh mesh = tree.mesh();
        double area = FaceSets.area(mesh, FaceSets.without(FaceSets.all(mesh), shut));
        if (!(area > 0)) {
            throw new IllegalArgumentException("a depth needs an open facet");
        }
        NearestFacet open = new NearestFacet(tree, shut);
        DepthSteps steps = new DepthSteps(lines, open, 3 * body.volume() / body.area());
        steps.advance();
        DepthColumns found = measured(steps, open, shut, area);
        for (int count = 2 * FEW; count <= MANY && found.relativeError() > AGREED; count *= 2) {
            lines.upTo(count);
            steps.advance();
            found = measured(steps, open, shut, area);
        }
        return found;
    }

    private DepthColumns measured(DepthSteps steps, NearestFacet open, boolean[] shut, double area) {
        double[] top = steps.deepest();
        double deepest = new DeepestPoint(open, new NearestFacet(tree)).from(top[0], top[1], top[2]);
        deepest = FaceSets.any(shut) ? deepest : Math.min(deepest, bound());
        double[] all = DepthFit.deeper(steps, -1, deepest);
        double error = Math.max(ACCURACY, error(steps, all, deepest) + lines.lost());
        return DepthFit.fit(all, CELLS, body.volume(), area, deepest, error);
    }

    /** Half the smallest side, and the ball of the same volume: no point of the body is deeper, m. */
    private double bound() {
        double side = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            side = Math.min(side, tree.box(0, k + 3) - tree.box(0, k));
        }
        return Math.min(side / 2, Math.cbrt(3 * body.volume() / (4 * Math.PI)));
    }

    /** Standard error of the volume left, as a share of it, in the first 90 % of the volume. */
    private double error(DepthSteps steps, double[] all, double deepest) {
        double[] squares = new double[all.length];
        for (int p = 0; p < PARTS; p++) {
            double[] part = DepthFit.deeper(steps, p, deepest);
            for (int k = 0; k < all.length; k++) {
                squares[k] += Math.pow(part[k] / all[k] - 1, 2);
            }
        }
        double worst = 0;
        for (int k = 0; k < all.length && all[k] >= MOSTLY; k++) {
            worst = Math.max(worst, squares[k]);
        }
        return Math.sqrt(worst / (PARTS - 1) / PARTS);
    }

    /**
     * Measures a mesh.
     *
     * @param mesh closed and facing outward
     * @param shutResting whether the flat face in the lowest horizontal plane is closed
     * @param shutHollows whether closed hollows are closed to the front, which then runs from the outside only
     */
    public static DepthColumns of(TriangleMesh mesh, boolean shutResting, boolean shutHollows) {
        boolean[] none = new boolean[mesh.facetCount()];
        boolean[] hollow = shutHollows ? FaceSets.hollows(mesh) : none;
        boolean[] resting = shutResting ? FaceSets.resting(mesh) : none;
        return new MeshDepth(new FacetTree(mesh)).from(FaceSets.either(resting, hollow));
    }
}
