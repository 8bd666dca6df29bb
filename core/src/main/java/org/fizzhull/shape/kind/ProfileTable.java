package org.fizzhull.shape.kind;

import java.util.Arrays;
import org.fizzhull.geometry.DepthProfile;

/**
 * Fills a {@link DepthProfile} from formulas. The table is a cubic Hermite in V, so a stretch on which V is a cubic in
 * d is held exactly by any nodes; other stretches get nodes that crowd towards their end, where V runs out, and towards
 * their start where square roots begin there.
 *
 * <p>Next to the deepest point the formulas cancel to rounding: what comes out below 0 or rising is set to 0 or level
 * there, and the last node holds no volume. Stateless.
 */
final class ProfileTable {
    /** Cells of a stretch on which V is a cubic: exact with any number. */
    private static final int CELLS_OF_A_CUBIC = 16;
    /** Cells of a stretch at whose start square roots begin. */
    private static final int CELLS_FROM_A_ROOT = 256;
    /** Cells of a stretch that is smooth at its start. */
    private static final int CELLS_OF_A_CURVE = 128;
    /**
     * Share of V by which the Hermite polynomial may depart from a curve between nodes, over the first 99 % of the
     * depth (see the tests).
     */
    static final double BETWEEN_NODES = 1e-6;
    /** A piece shorter than this share of the deepest depth is joined to the next: V and A are continuous over it. */
    private static final double SHORTEST_PIECE = 1e-6;

    private ProfileTable() {}

    /** Table of a volume that is one cubic in d between each two of the rising breaks, which start at 0. */
    static DepthProfile cubic(Erosion erosion, double... breaks) {
        return fill(erosion, breaks.length, false, breaks);
    }

    /** Table of a volume that begins with square roots at each of the rising breaks, which start at 0. */
    static DepthProfile graded(Erosion erosion, double... breaks) {
        return fill(erosion, 0, true, breaks);
    }

    /** Table of a volume that is one cubic up to the first break after 0, and begins with square roots at the others. */
    static DepthProfile cubicAtFirst(Erosion erosion, double... breaks) {
        return fill(erosion, 1, true, breaks);
    }

    /** Table of a volume that is one cubic up to the first break after 0, and smooth from there until it runs out. */
    static DepthProfile smoothAfterCubic(Erosion erosion, double cubic, double deepest) {
        return fill(erosion, 1, false, new double[] {0, cubic, deepest});
    }

    /** The table of so many stretches between breaks that are a cubic, and others that are not. */
    private static DepthProfile fill(Erosion erosion, int cubics, boolean roots, double[] breaks) {
        double deepest = breaks[breaks.length - 1];
        int curved = roots ? CELLS_FROM_A_ROOT : CELLS_OF_A_CURVE;
        double[] depth = new double[curved * (breaks.length - 1) + 1];
        boolean exact = true;
        int n = 1;
        double from = 0;
        for (int b = 1; b < breaks.length; b++) {
            double to = breaks[b];
            // stretches too short for the rounding of their ends are joined to the next
            boolean last = b == breaks.length - 1;
            if (!(to - from > SHORTEST_PIECE * deepest) || (!last && !(deepest - to > SHORTEST_PIECE * deepest))) {
                continue;
            }
            // a cubic only where no other stretch was joined to it
            boolean cubic = b <= cubics && (cubics >= breaks.length || from == breaks[b - 1]);
            exact &= cubic;
            int cells = cubic ? CELLS_OF_A_CUBIC : curved;
            for (int i = 1; i <= cells; i++) {
                double t = (double) i / cells;
                double share = cubic ? t : crowded(t, roots);
                depth[n++] = i == cells ? to : from + (to - from) * share;
            }
            from = to;
        }
        // values at the nodes
        double[] nodes = Arrays.copyOf(depth, n);
        double[] volume = new double[n];
        double[] area = new double[n];
        for (int i = 0; i < n; i++) {
            boolean end = i == n - 1;
            // Next to the deepest point the formulas cancel to a few units of rounding of the whole volume.
            double[] left = erosion.left(nodes[i]);
            double v = end ? 0 : Math.max(0, left[0]);
            volume[i] = i == 0 ? v : Math.min(v, volume[i - 1]);
            area[i] = Math.max(0, left[1]);
        }
        return new DepthProfile(nodes, volume, area, exact ? 0 : BETWEEN_NODES);
    }

    /** From 0 to 1, in steps that shrink to the end as a cube and, where roots begin there, grow from the start. */
    private static double crowded(double t, boolean roots) {
        double left = roots ? (1 - t) * (1 + t) : 1 - t;
        return 1 - left * left * left;
    }
}
