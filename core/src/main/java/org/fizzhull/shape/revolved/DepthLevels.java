package org.fizzhull.shape.revolved;

import org.fizzhull.geometry.DepthProfile;

/**
 * A depth profile of volumes measured above evenly spaced depths. Stateless.
 */
final class DepthLevels {
    /** Number of fine levels a field is measured on, the one at depth 0 not counted. */
    static final int LEVELS = 128;

    private static final int EVERY = 4;
    /** Sums of x^2, x^4 and x^6 over the whole numbers from -4 to 4. */
    private static final double X2 = 60;

    private static final double X4 = 708;
    private static final double X6 = 9780;

    /**
     * {@return profile through every fourth level} The rate there is the slope of the cubic that fits the nine levels
     * around it best: a rate at one level alone follows the squares of the lattice. Levels are scaled so that the
     * first is the exact volume, since what squares lose along edges they lose along the ridges under the edges as
     * well.
     *
     * @param level volume above each of the evenly spaced depths, m3
     * @param step distance of the depths, m
     * @param volume exact volume, m3
     * @param area exact area of the open faces, m2
     * @param error bound on the relative error
     * @param nothing share of the volume below which the levels are rounding: the table ends there
     */
    static DepthProfile profile(double[] level, double step, double volume, double area, double error, double nothing) {
        double scale = volume / level[0];
        int nodes = LEVELS / EVERY;
        while (nodes > 2 && level[(nodes - 1) * EVERY] <= nothing * level[0]) {
            nodes--;
        }
        double[] depth = new double[nodes + 1];
        double[] left = new double[nodes + 1];
        double[] front = new double[nodes + 1];
        for (int q = 0; q <= nodes; q++) {
            depth[q] = q * EVERY * step;
            left[q] = q == 0 ? volume : q == nodes ? 0 : Math.min(left[q - 1], scale * Math.max(0, level[q * EVERY]));
        }
        for (int q = 1; q < nodes; q++) {
            front[q] = -scale * slope(level, q * EVERY) / step;
        }
        front[0] = area;
        return DepthProfile.falling(depth, left, front, error);
    }

    private DepthLevels() {}

    private static double slope(double[] level, int at) {
        double first = 0;
        double third = 0;
        for (int x = -EVERY; x <= EVERY; x++) {
            first += x * level[at + x];
            third += (double) x * x * x * level[at + x];
        }
        return (X6 * first - X4 * third) / (X2 * X6 - X4 * X4);
    }
}
