package org.fizzhull.shape.revolved;

import java.util.Arrays;
import org.fizzhull.geometry.DepthProfile;

/**
 * Depth profile of a body of revolution from its outline: how much volume lies deeper than each of 129 even depths.
 * <ol>
 *   <li>The half plane is covered by blocks about half the largest depth wide, each a lattice of 128 steps.
 *   <li>A square takes its depths at the four corners and the middle, exact distances to the open edges. It is
 *       quartered where the middle differs from the mean of the corners by more than 5e-4 of the largest depth, where
 *       it may hold a piece of the body that no sample saw, and down to a quarter of the block anyway.
 *   <li>A square that is left is four triangles about its middle, on which the depth is linear; {@link RingLevels} sums
 *       the volumes they sweep about the axis above each level, exactly.
 *   <li>{@link DepthLevels} turns levels into nodes with slopes, scaled to the exact volume.
 * </ol>
 * The mesh package does the same with cubes.
 *
 * <p>Faces that are shut (a base on a tray, the hollow of a boat) do not count for the depth but bound the body; where
 * they stand across the lattice the squares that they cut count by their share inside.
 *
 * <p>Error: 1e-3 of V over the first 90 % of the volume is promised, a tenth of it found. Cost: some tens of
 * milliseconds for a compact outline, up to seconds for a thin one of many points. One to a measurement.
 */
final class MeridianDepth {
    /** Blocks over the deepest depth; off a round number so that no level falls on a lattice line. */
    private static final double BLOCK = 0.5086;

    /** Steps of the lattice across a block: the smallest square has two. */
    private static final int FINE = 128;
    /** Points across a block, both ends included. */
    private static final int POINTS = FINE + 1;
    /** Bulge of the depth in a square up to which it is not quartered, as a share of the largest depth. */
    private static final double TOLERANCE = 5e-4;
    /** Mean error of four triangles about the middle on a parabola, in shares of that at the middle. */
    private static final double PARABOLA = 1.0 / 3;

    /** Promised bound on the relative error of V over the first 90 %; the tests find a tenth of it. */
    private static final double ACCURACY = 1e-3;

    /** Share of the volume below which the sums are rounding and the table ends. */
    private static final double NOTHING = 1e-9;

    /** Faces to which depths are measured. */
    private final Meridian body;
    /** Whether the shut faces of the body are left out of the depth. */
    private final boolean tray;
    /** Whether shut faces stand across the lattice, so that the depth does not fall to 0 at every face. */
    private final boolean walls;

    /** Step of the lattice, m. */
    private final double fine;
    /** Bulge up to which a square is smooth, m. */
    private final double tolerance;
    /** Volumes above the even depths, summed over all squares. */
    private final RingLevels levels;
    /** Depths to the open faces at the points of the block, m; NaN where not yet measured. */
    private final double[] value = new double[POINTS * POINTS];
    /** Depths to every face at the points of the block, m; NaN where not yet measured. Only for walls. */
    private final double[] surface = new double[POINTS * POINTS];
    /** Steps from the axis to the block. */
    private int left;
    /** Steps from height 0 to the block. */
    private int low;

    private MeridianDepth(Meridian body, boolean tray, boolean walls, double deepest) {
        this.body = body;
        this.tray = tray;
        this.walls = walls;
        this.fine = BLOCK * deepest / FINE;
        this.tolerance = TOLERANCE * deepest;
        this.levels = new RingLevels(DepthLevels.LEVELS + 1, deepest / DepthLevels.LEVELS);
    }

    /** The profile of a body of a volume, m3; on a tray the level face at the lowest height is shut. */
    static DepthProfile of(Meridian body, double volume, boolean tray) {
        return of(body, volume, tray, false);
    }

    /** The profile of a body of a volume, m3, of which any faces may be shut, as set by {@link Meridian#shutting}. */
    static DepthProfile withWalls(Meridian body, double volume) {
        return of(body, volume, true, true);
    }

    private static DepthProfile of(Meridian body, double volume, boolean tray, boolean walls) {
        // sizes of lattice and levels follow the largest depth: a thin body gets a fine lattice
        double deepest = body.deepest(tray);
        MeridianDepth depth = new MeridianDepth(body, tray, walls, deepest);
        double block = depth.fine * FINE;
        int across = (int) Math.ceil(body.widest() / block);
        int up = (int) Math.ceil(body.height() / block);
        // block by block, so that the depths of one lattice are kept and no more
        for (int j = 0; j < up; j++) {
            for (int i = 0; i < across; i++) {
                depth.left = i * FINE;
                depth.low = j * FINE;
                Arrays.fill(depth.value, Double.NaN);
                Arrays.fill(depth.surface, Double.NaN);
                depth.square(0, 0, FINE);
            }
        }
        return DepthLevels.profile(
                depth.levels.volumes(), deepest / DepthLevels.LEVELS, volume, body.area(tray), ACCURACY, NOTHING);
    }

    /**
     * Takes a square of so many steps with its lower corner at point (i, j) of the block: quarters it, or adds it to
     * the levels.
     */
    private void square(int i, int j, int size) {
        int half = size / 2;
        // no point of the square is further than this from its middle
        double reach = Math.sqrt(2) * half * fine;
        // of a body with shut walls, squares that its surface may cut are a case of their own
        double off = walls ? surface(i + half, j + half) : 0;
        if (walls && Math.abs(off) <= reach) {
            onAWall(i, j, size, off);
            return;
        }
        double middle = at(i + half, j + half);
        // wholly outside
        if (middle < -reach) {
            return;
        }
        // corners anticlockwise from the lower inner one
        double a = at(i, j);
        double b = at(i + size, j);
        double c = at(i + size, j + size);
        double d = at(i, j + size);
        double bulge = middle - (a + b + c + d) / 4;
        // linear to within the tolerance, and not a square in whose corners alone the body could stand
        boolean smooth = Math.abs(bulge) <= tolerance;
        boolean seen = Math.max(Math.max(a, b), Math.max(c, d)) > 0 || middle > 0;
        if (half > 1 && (!smooth || !seen || size > FINE / 4)) {
            square(i, j, half);
            square(i + half, j, half);
            square(i + half, j + half, half);
            square(i, j + half, half);
            return;
        }
        // the triangles miss a third of the bulge of a parabola on average; rings have the radii of their corners
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

    /** A square across the surface: its share inside, at the depths to the open faces alone. */
    private void onAWall(int i, int j, int size, double off) {
        int half = size / 2;
        if (half > 1) {
            square(i, j, half);
            square(i + half, j, half);
            square(i + half, j + half, half);
            square(i, j + half, half);
            return;
        }
        double area = size * fine * size * fine / 4;
        double middle = Math.abs(at(i + half, j + half));
        // the four triangles about the middle, corner by corner around
        double rm = (left + i + half) * fine;
        for (int k = 0; k < 4; k++) {
            int ai = i + size * (k % 3 == 0 ? 0 : 1);
            int aj = j + size * (k / 2);
            int bi = i + size * (k < 2 ? 1 : 0);
            int bj = j + size * (k % 3 == 0 ? 0 : 1);
            double share = positive(off, surface(ai, aj), surface(bi, bj));
            if (share > 0) {
                double a = Math.abs(at(ai, aj));
                double b = Math.abs(at(bi, bj));
                levels.add(share * area, middle, rm, a, (left + ai) * fine, b, (left + bi) * fine);
            }
        }
    }

    /**
     * Share of a triangle in which a linear function with these corner values is above 0: the triangle cut off at a
     * corner, or the rest of it.
     */
    private static double positive(double p, double q, double r) {
        int above = (p > 0 ? 1 : 0) + (q > 0 ? 1 : 0) + (r > 0 ? 1 : 0);
        if (above == 0 || above == 3) {
            return above == 0 ? 0 : 1;
        }
        if (above == 2) {
            return 1 - positive(-p, -q, -r);
        }
        double top = Math.max(p, Math.max(q, r));
        double share = 1;
        share *= p == top ? 1 : top / (top - p);
        share *= q == top ? 1 : top / (top - q);
        return share * (r == top ? 1 : top / (top - r));
    }

    /** Distance to the nearest face, open or shut, m, negative outside. */
    private double surface(int i, int j) {
        int here = j * POINTS + i;
        if (Double.isNaN(surface[here])) {
            surface[here] = body.depth(false, (left + i) * fine, (low + j) * fine);
        }
        return surface[here];
    }

    /** Depth to the nearest open face at a point of the block, m, negative outside. */
    private double at(int i, int j) {
        int here = j * POINTS + i;
        if (Double.isNaN(value[here])) {
            value[here] = body.depth(tray, (left + i) * fine, (low + j) * fine);
        }
        return value[here];
    }
}
