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
 * <p>Error of the cubic: of the fourth order in the step. Two ways to make it, of which the values are the same to the
 * last bit: {@link #whole} evaluates the profile at every depth once and is immutable; {@link #forOneVoyage} evaluates a
 * depth when it is first asked for, which of most single voyages are few, and serves one thread. The grid belongs to the
 * shape as computed; a draw scales it ({@link QuickVoyage}).
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

    /** Depth at which nothing is left, m. */
    final double deepest;

    private ErosionGrid(DepthProfile profile, int cells) {
        this.profile = profile;
        this.cells = cells;
        volume = new double[cells + 1];
        area = new double[cells + 1];
        Arrays.fill(volume, Double.NaN);
        deepest = profile.deepest();
        double whole = profile.volume(0);
        step = depthOf(profile, Voyage.Outcome.END * whole, deepest / 2) / cells;
        crumb = depthOf(profile, Voyage.Outcome.CRUMB * whole, deepest / 2);
    }

    /** A profile in so many steps, evaluated where a voyage asks for it; serves one thread. */
    static ErosionGrid forOneVoyage(DepthProfile profile, int cells) {
        return new ErosionGrid(profile, cells);
    }

    /** A profile in so many steps, evaluated at all of them. */
    static ErosionGrid whole(DepthProfile profile, int cells) {
        ErosionGrid grid = new ErosionGrid(profile, cells);
        for (int i = 0; i <= cells; i++) {
            grid.evaluate(i);
        }
        return grid;
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

    /** Area there, m2: the derivative of that cubic, so that both belong together. */
    double area(int i, double t) {
        double s = 1 - t;
        return 6 * t * s * (volumeAt(i) - volumeAt(i + 1)) / step
                + areaAt(i) * s * (1 - 3 * t)
                + areaAt(i + 1) * t * (3 * t - 2);
    }

    /**
     * Depth at which a volume is left, in steps of the grid, by Newton's method in the cell that is found from a guess.
     * Below the end of the grid the area stays what it is there, so that a step tried too far finds something.
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

    /**
     * Depth at which a volume is left, m, by halving; the ends of the grid outside of it.
     *
     * @param left volume in the table, m3
     */
    double depthOf(double left) {
        if (left >= volumeAt(0)) {
            return 0;
        }
        if (left <= volumeAt(cells)) {
            return cells * step;
        }
        int low = 0;
        int high = cells;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (volumeAt(middle) >= left) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double from = 0;
        double to = 1;
        for (int pass = 0; pass < 50; pass++) {
            double t = (from + to) / 2;
            if (volume(low, t) >= left) {
                from = t;
            } else {
                to = t;
            }
        }
        return (low + from) * step;
    }
}
