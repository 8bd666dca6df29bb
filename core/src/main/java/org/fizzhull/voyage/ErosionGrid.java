package org.fizzhull.voyage;

import java.util.Arrays;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.voyage.result.Voyage;

/**
 * A depth profile at evenly spaced depths from 0 to where 1 % of the volume is left: the steps of the quick voyage, and
 * the table that the full one reads. With V and A the volume and area left at depth d, dV/dd = -A, so that between
 * nodes V is the cubic through both ends with these slopes, and A its derivative: volume and area belong together at
 * any depth.
 *
 * <p>Error of the cubic: of the fourth order in the step. A node is evaluated at its first use, since a single voyage
 * mostly needs few of them; so a grid serves one thread until {@link #evaluate} has been called. The grid belongs to
 * the shape as computed; a draw scales it ({@link QuickVoyage}).
 */
final class ErosionGrid {
    /** Usual number of steps. */
    static final int USUAL = 200;

    /** Share of the whole volume to which a depth is solved: a few roundings. */
    private static final double ROUNDING = 1e-15;

    /** Newton's method squares its error: after a move this small, in steps, nothing is left of it. */
    private static final double NEWTON_DONE = 1e-8;

    /** Most passes of Newton's method; a dozen are usual. */
    private static final int MOST_PASSES = 60;

    /** Number of steps. */
    final int cells;

    /** What is left at any depth. */
    private final DepthProfile profile;
    /** Volume left at each node, m3, from the whole down; {@code cells + 1} of them, NaN before it is evaluated. */
    private final double[] volume;
    /** Area of what is left at each node, m2; evaluated with the volume. */
    private final double[] area;

    /** Between nodes, m. */
    final double step;

    /** Depth at which a tenth of the volume is left, m: less is a crumb ({@link Voyage.Outcome#CRUMB}). */
    final double crumb;

    /** A profile in so many steps. */
    ErosionGrid(DepthProfile profile, int cells) {
        this.profile = profile;
        this.cells = cells;
        volume = new double[cells + 1];
        area = new double[cells + 1];
        Arrays.fill(volume, Double.NaN);
        double deepest = profile.deepest();
        double whole = profile.volume(0);
        step = depthOf(profile, Voyage.Outcome.END * whole, deepest / 2) / cells;
        crumb = depthOf(profile, Voyage.Outcome.CRUMB * whole, deepest / 2);
    }

    /** Evaluates every depth: from then on it is immutable and safe for several threads. */
    void evaluate() {
        for (int i = 0; i <= cells; i++) {
            volumeAt(i);
        }
    }

    /** Volume left at node i, m3, 0 to {@link #cells}. */
    double volumeAt(int i) {
        double known = volume[i];
        return Double.isNaN(known) ? evaluate(i) : known;
    }

    /** Area of what is left at node i, m2. */
    double areaAt(int i) {
        volumeAt(i);
        return area[i];
    }

    /** Evaluates the profile at node i; volume left, m3. */
    private double evaluate(int i) {
        volume[i] = profile.volume(i * step);
        area[i] = profile.area(i * step);
        return volume[i];
    }

    /**
     * Depth at which a volume is left, m, by Newton's method from a guess, kept inside the profile.
     *
     * @param left m3; the ends stand for what lies beyond them
     */
    static double depthOf(DepthProfile profile, double left, double guess) {
        double whole = profile.volume(0);
        if (left >= whole) {
            return 0;
        }
        double high = profile.deepest();
        if (!(left > 0)) {
            return high;
        }
        double low = 0;
        double d = guess;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double excess = profile.volume(d) - left;
            if (Math.abs(excess) <= ROUNDING * whole) {
                return d;
            }
            if (excess > 0) {
                low = d;
            } else {
                high = d;
            }
            // dV/dd = -A; a step out of the bracket is replaced by halving
            double next = d + excess / profile.area(d);
            d = next > low && next < high ? next : (low + high) / 2;
        }
        return d;
    }

    /**
     * Volume left at a share t (0 to 1) of the way from node i to the next, m3: the cubic with the volumes and areas of
     * both.
     */
    double volume(int i, double t) {
        double s = 1 - t;
        return volumeAt(i) * (1 + 2 * t) * s * s
                + volumeAt(i + 1) * (1 + 2 * s) * t * t
                - step * (areaAt(i) * t * s * s - areaAt(i + 1) * t * t * s);
    }

    /**
     * Area at a share t (0 to 1) of the way from node i to the next, m2: the exact derivative of {@link #volume(int,
     * double)}.
     */
    double area(int i, double t) {
        double s = 1 - t;
        return 6 * t * s * (volumeAt(i) - volumeAt(i + 1)) / step
                + areaAt(i) * s * (1 - 3 * t)
                + areaAt(i + 1) * t * (3 * t - 2);
    }

    /** Volume left at a depth in steps of the grid, m3; 0 to {@link #cells}. */
    double volumeAfter(double steps) {
        int i = cell(steps);
        return volume(i, steps - i);
    }

    /** Area of what is left at a depth in steps of the grid, m2; beyond the end of the grid the area at the end. */
    double areaAfter(double steps) {
        int i = cell(steps);
        return area(i, Math.min(1, steps - i));
    }

    private int cell(double steps) {
        return Math.min(cells - 1, (int) steps);
    }

    /**
     * Depth at which a volume is left, in steps of the grid, by Newton's method in the cell that is found from a
     * guess. Beyond the end of the grid the area is taken as constant, so that an integration step tried too far
     * stays defined.
     *
     * @param left m3, not above the whole
     * @param guess number of a cell
     */
    double stepsTo(double left, int guess) {
        if (left <= volumeAt(cells)) {
            return cells + (volumeAt(cells) - left) / (areaAt(cells) * step);
        }
        int i = guess < cells ? guess : cells - 1;
        while (i > 0 && volumeAt(i) < left) {
            i--;
        }
        while (volumeAt(i + 1) >= left) {
            i++;
        }
        double t = (volumeAt(i) - left) / (volumeAt(i) - volumeAt(i + 1));
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double next = t + (volume(i, t) - left) / (area(i, t) * step);
            double kept = next > 0 ? next < 1 ? next : 1 : 0;
            double moved = Math.abs(kept - t);
            t = kept;
            if (moved < NEWTON_DONE) {
                break;
            }
        }
        return i + t;
    }
}
