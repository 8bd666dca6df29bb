package org.fizzhull.shape;

import java.util.Arrays;
import org.fizzhull.mesh.DepthColumns;

/**
 * Depth profile of a body of revolution from its outline: the distances to the open edges are exact at the corners and
 * the middle of squares in the half plane, which are halved where the middle differs from the mean of the corners; the
 * twin in the plane of what the mesh package does with cubes, and finer.
 */
final class MeridianDepth {
    /** Blocks over the deepest depth; off a round number so that no level falls on a lattice line. */
    private static final double BLOCK = 0.5086;

    private static final int FINE = 128;
    private static final int POINTS = FINE + 1;
    private static final double TOLERANCE = 5e-4;
    /** Mean error of four triangles about the middle on a parabola, in shares of that at the middle. */
    private static final double PARABOLA = 1.0 / 3;

    /** The tests find a tenth of this. */
    private static final double ACCURACY = 1e-3;

    private static final double NOTHING = 1e-9;

    private final Meridian body;
    private final boolean tray;
    private final double fine;
    private final double tolerance;
    private final RingLevels levels;
    private final double[] value = new double[POINTS * POINTS];
    private int left;
    private int low;

    private MeridianDepth(Meridian body, boolean tray, double deepest) {
        this.body = body;
        this.tray = tray;
        this.fine = BLOCK * deepest / FINE;
        this.tolerance = TOLERANCE * deepest;
        this.levels = new RingLevels(DepthColumns.LEVELS + 1, deepest / DepthColumns.LEVELS);
    }

    /** The profile; on a tray the level face at the lowest height is shut. */
    static DepthProfile of(Meridian body, double volume, boolean tray) {
        double deepest = body.deepest(tray);
        MeridianDepth depth = new MeridianDepth(body, tray, deepest);
        double block = depth.fine * FINE;
        int across = (int) Math.ceil(body.widest() / block);
        int up = (int) Math.ceil(body.height() / block);
        for (int j = 0; j < up; j++) {
            for (int i = 0; i < across; i++) {
                depth.left = i * FINE;
                depth.low = j * FINE;
                Arrays.fill(depth.value, Double.NaN);
                depth.square(0, 0, FINE);
            }
        }
        DepthColumns table = DepthColumns.ofLevels(
                depth.levels.volumes(), deepest / DepthColumns.LEVELS, volume, body.area(tray), ACCURACY, NOTHING);
        return new DepthProfile(table.depth(), table.volume(), table.area(), table.relativeError());
    }

    private void square(int i, int j, int size) {
        int half = size / 2;
        double middle = at(i + half, j + half);
        if (middle < -Math.sqrt(2) * half * fine) {
            return;
        }
        double a = at(i, j);
        double b = at(i + size, j);
        double c = at(i + size, j + size);
        double d = at(i, j + size);
        double bulge = middle - (a + b + c + d) / 4;
        boolean smooth = Math.abs(bulge) <= tolerance;
        boolean seen = Math.max(Math.max(a, b), Math.max(c, d)) > 0 || middle > 0;
        if (half > 1 && (!smooth || !seen || size > FINE / 4)) {
            square(i, j, half);
            square(i + half, j, half);
            square(i + half, j + half, half);
            square(i, j + half, half);
            return;
        }
        double shift = smooth ? PARABOLA * bulge : 0;
        double r0 = (left + i) * fine;
        double rm = r0 + half * fine;
        double r1 = r0 + size * fine;
        double area = size * fine * size * fine / 4;
        double m = middle + shift;
        levels.add(area, m, rm, a + shift, r0, b + shift, r1);
        levels.add(area, m, rm, b + shift, r1, c + shift, r1);
        levels.add(area, m, rm, c + shift, r1, d + shift, r0);
        levels.add(area, m, rm, d + shift, r0, a + shift, r0);
    }

    private double at(int i, int j) {
        int here = j * POINTS + i;
        if (Double.isNaN(value[here])) {
            value[here] = body.depth(tray, (left + i) * fine, (low + j) * fine);
        }
        return value[here];
    }
}
