package org.fizzhull.voyage;

import org.fizzhull.geometry.DepthProfile;

/**
 * A depth profile at evenly spaced depths from 0 to where 1 % of the volume is left: the steps of the quick voyage, and
 * the table that the full one reads. With V and A the volume and area left at depth d, dV/dd = -A, so that between
 * nodes V is the cubic through both ends with these slopes, and A its derivative: volume and area belong together at
 * any depth.
 *
 * <p>Error of the cubic: of the fourth order in the step. Cost: one evaluation of the profile a depth when it is made,
 * none later. Immutable. The grid belongs to the shape as computed; a draw scales it ({@link QuickVoyage}).
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

    /** Volume left at each node, m3, from the whole down; {@code cells + 1} of them. */
    final double[] volume;
    /** Area of what is left at each node, m2. */
    final double[] area;

    /** Between nodes, m. */
    final double step;

    /** Depth at which a tenth of the volume is left, m: less is a crumb ({@link Outcome#CRUMB}). */
    final double crumb;

    /** Depth at which nothing is left, m. */
    final double deepest;

    /** Tabulates a profile in so many steps. */
    ErosionGrid(DepthProfile profile, int cells) {
        this.cells = cells;
        volume = new double[cells + 1];
        area = new double[cells + 1];
        deepest = profile.deepest();
        double whole = profile.volume(0);
        step = depthOf(profile, Outcome.END * whole, deepest / 2) / cells;
        crumb = depthOf(profile, Outcome.CRUMB * whole, deepest / 2);
        for (int i = 0; i <= cells; i++) {
            volume[i] = profile.volume(i * step);
            area[i] = profile.area(i * step);
        }
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
        return volume[i] * (1 + 2 * t) * s * s
                + volume[i + 1] * (1 + 2 * s) * t * t
                - step * (area[i] * t * s * s - area[i + 1] * t * t * s);
    }

    /** Area there, m2: the derivative of that cubic, so that both belong together. */
    double area(int i, double t) {
        double s = 1 - t;
        return 6 * t * s * (volume[i] - volume[i + 1]) / step
                + area[i] * s * (1 - 3 * t)
                + area[i + 1] * t * (3 * t - 2);
    }

    /**
     * Depth at which a volume is left, in steps of the grid, by Newton's method in the cell that is found from a guess.
     * Below the end of the grid the area stays what it is there, so that a step tried too far finds something.
     *
     * @param left m3, not above the whole
     * @param guess number of a cell
     */
    double stepsTo(double left, int guess) {
        if (left <= volume[cells]) {
            return cells + (volume[cells] - left) / (area[cells] * step);
        }
        int i = guess < cells ? guess : cells - 1;
        while (i > 0 && volume[i] < left) {
            i--;
        }
        while (volume[i + 1] >= left) {
            i++;
        }
        double t = (volume[i] - left) / (volume[i] - volume[i + 1]);
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
        if (left >= volume[0]) {
            return 0;
        }
        if (left <= volume[cells]) {
            return cells * step;
        }
        int low = 0;
        int high = cells;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (volume[middle] >= left) {
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
