package org.fizzhull.hydrostatics;

import java.util.Arrays;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.jspecify.annotations.Nullable;

/**
 * How much of a hull is under water, and how much of its surface is wet, by how deep it lies; one attitude, tables that
 * are read between nodes. The voyage reads it in its inner loop, where a cut of the hull would cost too much.
 *
 * <p>Two tables of 64 cells: over the depth of the lowest point (share of the height, 0 to 1) the immersed fraction of
 * the volume with its slope; over that fraction the wet share of the surface and the depth. Between nodes: cubic
 * Hermite polynomials, over the fraction without overshoot. Over the last cell the wet share runs up to 1: a flat top
 * just awash is a wet one.
 *
 * <p>Error: that of the interpolation, beside the hull's own. Cost of a node: a cut, a draft and a wetted area; of a
 * value one cubic. A node is worked out when it is first read, a dozen of them in a single voyage; so an instance
 * serves one thread until {@link #evaluate} has been called. An upright prism ({@link #ofPrism}) has straight lines and
 * needs no hull.
 */
public final class Immersion {
    /** Cells of each table. */
    private static final int CELLS = 64;

    /** The first step of the fraction is not quite dry, so that the wet share has a slope at the start. */
    private static final double NEARLY_DRY = 1e-6;

    /** The hull in its attitude; null for an upright prism. */
    private final @Nullable Hull hull;
    /** Unit vector of the body frame that points up. */
    private final Vec3 up;
    /** Area of the whole surface that can get wet, m2. */
    private final double whole;
    /** Area of one flat of a prism, m2; of a hull without meaning. */
    private final double flat;
    /** Height of the lowest point along {@link #up}, m. */
    private final double bottom;
    /** From there to the highest, m. */
    private final double height;
    /** Holds the last cut. */
    private final PlaneCut cut = new PlaneCut();

    /** Immersed fraction of the volume, at even steps of the depth over the height. */
    private final double[] fractionAt = unknown();
    /** Slope of that: area of the water plane times height over volume. */
    private final double[] slopeAt = unknown();
    /** Wet share of the surface, at even steps of the immersed fraction. */
    private final double[] wetAt = unknown();
    /** Depth over height, at even steps of the immersed fraction. */
    private final double[] heightAt = unknown();
    /** Slope of the wet share a cell. */
    private final double[] wetSlope = unknown();
    /** Slope of the depth a cell. */
    private final double[] heightSlope = unknown();

    /**
     * Tabulates a hull in one attitude.
     *
     * @param hull closed surface of the body
     * @param up unit vector of the body frame that points up
     * @param whole area of the whole surface that can get wet, m2
     */
    public Immersion(Hull hull, Vec3 up, double whole) {
        this(hull, up, whole, Double.NaN, -hull.reach(-up.x(), -up.y(), -up.z()), hull.reach(up.x(), up.y(), up.z()));
    }

    private Immersion(@Nullable Hull hull, Vec3 up, double whole, double flat, double bottom, double top) {
        this.hull = hull;
        this.up = up;
        this.whole = whole;
        this.flat = flat;
        this.bottom = bottom;
        height = top - bottom;
        fractionAt[0] = heightAt[0] = 0;
        fractionAt[CELLS] = heightAt[CELLS] = wetAt[CELLS] = 1;
    }

    /**
     * {@return that of a prism which floats with its flats level: fraction and depth are one, the side gets wet evenly}
     *
     * @param flat area of one flat, m2
     * @param whole area of both flats and the side, m2
     */
    public static Immersion ofPrism(double flat, double whole) {
        return new Immersion(null, Vec3.UP, whole, flat, 0, 1);
    }

    /** Works out every node: from then on it is immutable and safe for several threads. */
    public void evaluate() {
        for (int i = 0; i <= CELLS; i++) {
            section(i);
            slopes(i);
        }
    }

    /** A table of which no node is known yet. */
    private static double[] unknown() {
        double[] table = new double[CELLS + 1];
        Arrays.fill(table, Double.NaN);
        return table;
    }

    /** Works out the fraction at node i, and its slope. */
    private void section(int i) {
        if (!Double.isNaN(slopeAt[i])) {
            return;
        }
        if (hull == null) {
            fractionAt[i] = (double) i / CELLS;
            slopeAt[i] = 1;
            return;
        }
        // the end planes touch; just inside them the water plane is that of a flat end
        double x = Math.min(1 - 1e-9, Math.max(1e-9, (double) i / CELLS));
        hull.cut(up.x(), up.y(), up.z(), bottom + x * height, cut);
        if (i > 0 && i < CELLS) {
            fractionAt[i] = cut.volume / hull.volume();
        }
        slopeAt[i] = cut.area * height / hull.volume();
    }

    /** Works out depth and wet share at node i of the fraction: the same turned round. */
    private void draft(int i) {
        if (!Double.isNaN(wetAt[i])) {
            return;
        }
        double share = Math.max(NEARLY_DRY, (double) i / CELLS);
        if (hull == null) {
            heightAt[i] = (double) i / CELLS;
            wetAt[i] = (flat + (whole - 2 * flat) * share) / whole;
            return;
        }
        // near that of a ball
        double guess = bottom + height * Draft.ballDraft(share);
        double level = Draft.level(hull, up.x(), up.y(), up.z(), hull.volume() * share, guess, cut);
        if (i > 0) {
            heightAt[i] = (level - bottom) / height;
        }
        wetAt[i] = Math.min(1, hull.wettedArea(up.x(), up.y(), up.z(), level) / whole);
    }

    /** Works out what a cubic of the tables over the fraction needs at node i: the node, and its slopes. */
    private void slopes(int i) {
        if (Double.isNaN(wetSlope[i])) {
            draft(Math.max(0, i - 1));
            draft(i);
            draft(Math.min(CELLS, i + 1));
            wetSlope[i] = slope(wetAt, i);
            heightSlope[i] = slope(heightAt, i);
        }
    }

    /**
     * {@return the share of the hull's volume under water, for the depth of the lowest point over the height, 0 to 1}
     *
     * @param depth depth of the lowest point below the water over the height of the body
     */
    public double fraction(double depth) {
        if (depth <= 0) {
            return 0;
        }
        if (depth >= 1) {
            return 1;
        }
        double at = depth * CELLS;
        int i = (int) at;
        section(i);
        section(i + 1);
        double t = at - i;
        double s = 1 - t;
        double share = fractionAt[i] * (1 + 2 * t) * s * s
                + fractionAt[i + 1] * (1 + 2 * s) * t * t
                + (slopeAt[i] * t * s * s - slopeAt[i + 1] * t * t * s) / CELLS;
        return share < 1 ? share : 1;
    }

    /**
     * {@return the area of the water plane times the height over the volume, for the same; 1.5 at most for a ball}
     *
     * @param depth depth of the lowest point below the water over the height of the body
     */
    public double plane(double depth) {
        if (!(depth > 0 && depth < 1)) {
            return 0;
        }
        double at = depth * CELLS;
        int i = (int) at;
        section(i);
        section(i + 1);
        return slopeAt[i] + (at - i) * (slopeAt[i + 1] - slopeAt[i]);
    }

    /**
     * {@return the share of the surface that is wet, for the share of the volume under water}
     *
     * @param fraction share of the volume that is under water, 0 to 1
     */
    public double wet(double fraction) {
        return between(wetAt, wetSlope, fraction);
    }

    /**
     * {@return the growth of the wet share with the share of the volume, the mean of a cell of the table}
     *
     * @param fraction share of the volume that is under water, 0 to 1
     */
    public double wetting(double fraction) {
        int at = (int) (fraction * CELLS);
        int i = at < 0 ? 0 : at < CELLS ? at : CELLS - 1;
        draft(i);
        draft(i + 1);
        return (wetAt[i + 1] - wetAt[i]) * CELLS;
    }

    /**
     * {@return the depth of the lowest point over the height, for the share of the volume under water}
     *
     * @param fraction share of the volume that is under water, 0 to 1
     */
    public double depth(double fraction) {
        return between(heightAt, heightSlope, fraction);
    }

    /** Value between nodes by a cubic without overshoot: a kink would make the full voyage take small steps. */
    private double between(double[] table, double[] slope, double fraction) {
        if (fraction >= 1) {
            return 1;
        }
        double at = fraction > 0 ? fraction * CELLS : 0;
        int i = (int) at;
        slopes(i);
        slopes(i + 1);
        double t = at - i;
        double s = 1 - t;
        double rise = table[i + 1] - table[i];
        return table[i] + t * t * (3 - 2 * t) * rise + t * s * (s * slope[i] - t * slope[i + 1]);
    }

    /**
     * Slope a cell at node i that keeps a rising table rising: the harmonic mean of the neighbouring differences, F. N.
     * Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300 (from memory); 0 at a turn.
     */
    private static double slope(double[] table, int i) {
        if (i == 0 || i == CELLS) {
            return i == 0 ? table[1] - table[0] : table[CELLS] - table[CELLS - 1];
        }
        double before = table[i] - table[i - 1];
        double after = table[i + 1] - table[i];
        return before * after > 0 ? 2 * before * after / (before + after) : 0;
    }
}
