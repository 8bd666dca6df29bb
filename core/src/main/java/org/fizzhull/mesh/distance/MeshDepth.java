package org.fizzhull.mesh.distance;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.fizzhull.geometry.DepthProfile;
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
 * <p>Nothing hangs on the facets but distances to them, so that slivers, creases and facets without area do no harm and
 * the answer does not depend on how a body is meshed or turned. The error is told from eight independent parts of the
 * lines. Deterministic; 0.1 to 0.5 s for any body.
 */
public final class MeshDepth {
    /** Stretches of line that do for a compact body, and the most that are drawn. */
    private static final int FEW = 1 << 12;

    private static final int MANY = 1 << 15;

    /** Standard error of the volume from which more lines are drawn: what is promised of a profile. */
    private static final double AGREED = 0.005;

    private static final int CELLS = 14;
    private static final int PARTS = 8;

    /** Points from which the deepest one is looked for: a body may have several that are nearly as deep. */
    private static final int STARTS = 4;

    private static final double MOSTLY = 0.1;

    /** What the table leaves of the curve between two nodes, as a share of the volume left. */
    private static final double ACCURACY = 0.002;

    private final FacetTree tree;
    private final Workers workers;
    private final MassProperties body;

    /**
     * Of a closed mesh that faces outward.
     *
     * @param tree tree of the facets
     * @param body volume, surface and moments of the mesh
     * @param workers what measures parts of the lines; the answer is the same for any number of threads
     */
    public MeshDepth(FacetTree tree, MassProperties body, Workers workers) {
        this.tree = tree;
        this.body = body;
        this.workers = workers;
        if (!(body.volume() > 0)) {
            throw new IllegalArgumentException("a depth needs a closed mesh that faces outward");
        }
    }

    /**
     * {@return depths from some of the facets}
     *
     * @param shut numbers in the mesh of facets at which the front does not start; it ends where it comes upon
     *     them
     */
    public DepthProfile from(BitSet shut) {
        BitSet open = new BitSet();
        open.set(0, tree.mesh().facetCount());
        open.andNot(shut);
        if (!(FaceSets.area(tree.mesh(), open) > 0)) {
            throw new IllegalArgumentException("a depth needs an open facet");
        }
        List<List<DepthSteps>> parts = new ArrayList<>();
        for (int p = 0; p < PARTS; p++) {
            parts.add(new ArrayList<>());
        }
        double lost = advance(parts, shut, 0, FEW);
        DepthProfile found = measured(parts, lost, shut, open);
        for (int count = FEW; count < MANY && found.relativeError() > AGREED; count *= 2) {
            lost = Math.max(lost, advance(parts, shut, count, 2 * count));
            found = measured(parts, lost, shut, open);
        }
        return found;
    }

    /** Adds steps to each part, from so many stretches of line up to so many; returns the share of the lines that was lost. */
    private double advance(List<List<DepthSteps>> parts, BitSet shut, int from, int to) {
        DepthLines lines = new DepthLines(tree.mesh(), from, to, PARTS);
        double thickness = 3 * body.volume() / body.area();
        Workers.all(
                workers,
                PARTS,
                p -> parts.get(p).add(new DepthSteps(lines.parts().get(p), new NearestFacet(tree, shut), thickness)));
        return lines.lost();
    }

    private DepthProfile measured(List<List<DepthSteps>> parts, double lost, BitSet shut, BitSet open) {
        List<DepthSteps> all = parts.stream().flatMap(List::stream).toList();
        DeepestPoint search =
                new DeepestPoint(new NearestFacet(tree, shut), new NearestFacet(tree), new NearestFacet(tree, open));
        double deepest = all.stream()
                .sorted(Comparator.comparingDouble(DepthSteps::most).reversed())
                .limit(STARTS)
                .mapToDouble(steps -> search.from(steps.deepest()))
                .max()
                .orElseThrow();
        deepest = shut.isEmpty() ? Math.min(deepest, bound()) : deepest;
        double[] deeper = DepthFit.deeper(all, deepest);
        double error = Math.max(ACCURACY, error(parts, deeper, deepest) + lost);
        return DepthFit.fit(deeper, CELLS, body.volume(), FaceSets.area(tree.mesh(), open), deepest, error);
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
    private static double error(List<List<DepthSteps>> parts, double[] all, double deepest) {
        double[] squares = new double[all.length];
        for (List<DepthSteps> steps : parts) {
            double[] part = DepthFit.deeper(steps, deepest);
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
