package org.fizzhull.mesh.distance;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.uncertainty.Workers;

/**
 * What is left of the body of a closed mesh at inward depths from its open facets, by sampling: V(d) is the volume whose
 * points lie farther than d from every open facet, A(d) = -dV/dd. The points lie on lines spread evenly through the
 * body ({@link DepthLines}), their distances are exact and between them follow the tangents ({@link DepthSteps}), and the
 * table is fitted to the shares ({@link DepthFit}).
 *
 * <p>Nothing hangs on the facets but distances to them, so that slivers, creases and facets without area do no harm
 * and the answer does not depend on how a body is meshed or turned. The error is estimated from eight independent
 * parts of the lines. Deterministic; 0.1 to 0.5 s for any body.
 */
public final class MeshDepth {
    /** Stretches of line that do for a compact body, and the most that are drawn. */
    private static final int FEW = 1 << 11;

    private static final int MANY = 1 << 15;

    /** Standard error of the volume from which more lines are drawn: what is promised of a profile. */
    private static final double AGREED = 0.005;

    private static final int CELLS = 14;
    private static final int PARTS = 8;
    private static final double MOSTLY = 0.1;

    /** What the table leaves of the curve between two nodes, as a share of the volume left. */
    private static final double ACCURACY = 0.002;

    /** Pieces that the new lines are measured in, whatever the number of threads, so that the answer is the same. */
    private static final int PIECES = 8;

    private final FacetTree tree;
    private final Workers workers;
    private final DepthLines lines;
    private final MassProperties body;

    /**
     * Prepares the depths of a closed mesh that faces outward; no line is drawn yet.
     *
     * @param tree tree of the facets
     * @param body volume, surface and moments of the mesh
     * @param workers what measures pieces of the lines
     */
    public MeshDepth(FacetTree tree, MassProperties body, Workers workers) {
        this.tree = tree;
        this.body = body;
        this.workers = workers;
        if (!(body.volume() > 0)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward");
        }
        lines = new DepthLines(tree.mesh(), body, PARTS);
    }

    /**
     * {@return depths from some of the facets}
     *
     * @param shut numbers in the mesh of facets at which the front does not start; it ends where it comes upon them
     */
    public DepthProfile from(BitSet shut) {
        double area = FaceSets.area(tree.mesh(), FaceSets.others(tree.mesh(), shut));
        if (!(area > 0)) {
            throw new IllegalArgumentException("a depth needs an open facet");
        }
        List<DepthSteps> steps = new ArrayList<>();
        for (int count = FEW; ; count *= 2) {
            lines.upTo(count);
            advance(steps, shut);
            double deepest = deepest(steps, shut);
            double[] deeper = DepthSteps.deeper(steps, -1, deepest);
            double error = Math.max(ACCURACY, error(steps, deeper, deepest) + lines.lost());
            if (count >= MANY || !(error > AGREED)) {
                return DepthFit.fit(deeper, CELLS, body.volume(), area, deepest, error);
            }
        }
    }

    /** Measures the lines that were drawn since. */
    private void advance(List<DepthSteps> steps, BitSet shut) {
        int from = steps.stream().mapToInt(DepthSteps::stretches).sum();
        int left = lines.count() - from;
        DepthSteps[] pieces = new DepthSteps[PIECES];
        double thickness = 3 * body.volume() / body.area();
        Workers.all(workers, PIECES, p -> {
            int begin = from + left * p / PIECES;
            int end = from + left * (p + 1) / PIECES;
            pieces[p] = new DepthSteps(lines, new NearestFacet(tree, shut), thickness, begin, end);
        });
        steps.addAll(List.of(pieces));
    }

    /** Depth of the deepest point, found from the deepest that was asked, m. */
    private double deepest(List<DepthSteps> steps, BitSet shut) {
        Vec3 start = Collections.max(steps, Comparator.comparingDouble(DepthSteps::most))
                .deepest();
        NearestFacet open = new NearestFacet(tree, shut);
        NearestFacet closed = new NearestFacet(tree, FaceSets.others(tree.mesh(), shut));
        double found = new DeepestPoint(open, new NearestFacet(tree), closed).from(start);
        return shut.isEmpty() ? Math.min(found, bound()) : found;
    }

    /** Half the smallest side, and the ball of the same volume: no point of the body is deeper, m. */
    private double bound() {
        double side = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            side = Math.min(side, tree.box(0, k + 3) - tree.box(0, k));
        }
        return Math.min(side / 2, Math.cbrt(3 * body.volume() / (4 * Math.PI)));
    }

    /**
     * Standard error of the volume left, as a share of it, in the first 90 % of the volume, as if the parts had been drawn
     * at random. They follow one another in the sequence and are each spread evenly, so that it is rather too large [for
     * compact closed forms twice the true error, for thin walls as large; measured].
     */
    private static double error(List<DepthSteps> steps, double[] all, double deepest) {
        double[] squares = new double[all.length];
        for (int p = 0; p < PARTS; p++) {
            double[] part = DepthSteps.deeper(steps, p, deepest);
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
     * {@return the depths of a mesh}
     *
     * @param mesh closed and facing outward
     * @param shutResting whether the flat face in the lowest horizontal plane is closed
     * @param shutHollows whether closed hollows are closed to the front, which then runs from the outside only
     */
    public static DepthProfile of(TriangleMesh mesh, boolean shutResting, boolean shutHollows) {
        return new MeshDepth(new FacetTree(mesh), MassProperties.of(mesh), Workers.CALLER)
                .from(FaceSets.shut(mesh, shutResting, shutHollows));
    }
}
