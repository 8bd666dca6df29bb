package org.fizzhull.voyage;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.geometry.DepthProfile;
import org.jspecify.annotations.Nullable;

/**
 * How a piece recedes that floats with a flat face, or the rim of a hollow, up and dry. All other faces recede at the
 * full speed v of a wet face (m/s), so that volume V (m3) is left when the front is at the depth e(V) (m) of {@link
 * org.fizzhull.shape.Shape#depthProfileAfloat}, and the time from V1 to V2 is (e(V2) - e(V1))/v. That the sides are
 * dry above the water line is neglected.
 *
 * <p>Error: against a level set in which only what is below the water line recedes, life to a hundredth of the volume
 * within 2 % for 0.94 of the volume under water and 4 % for 0.75 (rows {@code one-side-up} of VALIDATION.md;
 * docs/physics/voyage.md, 1). Depths are tabulated at the nodes of the grid of every face, on which the voyages step.
 *
 * <p>Profile and depths are worked out when they are first asked for, so it serves one thread until {@link #evaluate}
 * has been called.
 */
final class AfloatFront {
    /** Computes the profile of the faces that are wet afloat; empty where no flat face stays up. Called once. */
    private final Supplier<Optional<DepthProfile>> profile;
    /** Every face: the grid on which the voyages step. */
    private final ErosionGrid every;
    /** Depth at each node of that grid, m; NaN where not yet worked out. */
    private final double[] depth;
    /** Whether {@link #profile} has been called and {@link #own} is final. */
    private boolean asked;
    /** The faces that are wet afloat, on a grid of their own; null where no flat face keeps up. */
    private @Nullable ErosionGrid own;

    /**
     * The front of a shape.
     *
     * @param profile of the faces that are wet afloat; empty where no flat face keeps up
     * @param every grid of every face
     */
    AfloatFront(Supplier<Optional<DepthProfile>> profile, ErosionGrid every) {
        this.profile = profile;
        this.every = every;
        depth = new double[every.cells + 1];
        Arrays.fill(depth, Double.NaN);
    }

    /** Computes all values now: from then on it is immutable and safe for several threads. */
    void evaluate() {
        for (int i = 0; keepsUp() && i <= every.cells; i++) {
            depthAt(i);
        }
        if (keepsUp()) {
            grid().evaluate();
        }
    }

    /** Whether a flat face stays up; if not, no other method may be called. */
    boolean keepsUp() {
        if (!asked) {
            asked = true;
            // as many cells as every face has, so that a node is a good guess of the other
            own = profile.get().map(wet -> new ErosionGrid(wet, every.cells)).orElse(null);
        }
        return own != null;
    }

    /** Distance that the front moves, m, between two depths of the grid of every face, both in its steps. */
    double way(double from, int to) {
        int i = (int) from;
        double start = depthAt(i);
        if (from > i) {
            start += (from - i) * (depthAt(i + 1) - start);
        }
        return depthAt(to) - start;
    }

    /**
     * Area that recedes while a volume is left, m2.
     *
     * @param left m3
     * @param guess depth of every face there, in steps of its grid
     */
    double area(double left, double guess) {
        ErosionGrid grid = grid();
        return grid.areaAfter(grid.stepsTo(left, (int) guess));
    }

    private ErosionGrid grid() {
        if (!keepsUp() || own == null) {
            throw new IllegalStateException("no flat face keeps up");
        }
        return own;
    }

    /** Depth of the front when the volume of a node of every face is left, m. */
    private double depthAt(int node) {
        double known = depth[node];
        if (Double.isNaN(known)) {
            ErosionGrid grid = grid();
            known = grid.stepsTo(every.volumeAt(node), node) * grid.step;
            depth[node] = known;
        }
        return known;
    }
}
