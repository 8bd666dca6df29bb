package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;

/**
 * How much of a hull is under water, and how much of its surface is wet, by how deep it lies; one attitude, tables that
 * are read between nodes. The voyage reads it in its inner loop, where a cut of the hull would cost too much.
 *
 * <p>Two tables of 64 cells: over the depth of the lowest point (share of the height, 0 to 1) the immersed fraction of
 * the volume with its slope; over that fraction the wet share of the surface and the depth. Between nodes: cubic
 * Hermite polynomials, over the fraction without overshoot. Over the last cell the wet share runs up to 1: a flat top
 * just awash is a wet one.
 *
 * <p>Error: that of the interpolation, beside the hull's own. Cost: when it is made a cut, a draft and a wetted
 * area a node; a value is one cubic. Immutable, safe for use by several threads.
 */
public final class Immersion {
    /** Cells of each table. */
    private static final int CELLS = 64;

    /** Immersed fraction of the volume, at even steps of the depth over the height. */
    private final double[] fractionAt = new double[CELLS + 1];
    /** Slope of that: area of the water plane times height over volume. */
    private final double[] slopeAt = new double[CELLS + 1];
    /** Wet share of the surface, at even steps of the immersed fraction. */
    private final double[] wetAt = new double[CELLS + 1];
    /** Depth over height, at even steps of the immersed fraction. */
    private final double[] heightAt = new double[CELLS + 1];
    /** Slope of the wet share a cell. */
    private final double[] wetSlope;
    /** Slope of the depth a cell. */
    private final double[] heightSlope;

    /**
     * Tabulates a hull in one attitude.
     *
     * @param hull closed surface of the body
     * @param up unit vector of the body frame that points up
     * @param whole area of the whole surface that can get wet, m2
     */
    public Immersion(Hull hull, Vec3 up, double whole) {
        double top = hull.reach(up.x(), up.y(), up.z());
        double bottom = -hull.reach(-up.x(), -up.y(), -up.z());
        double height = top - bottom;
        PlaneCut cut = new PlaneCut();
        for (int i = 0; i <= CELLS; i++) {
            // the end planes touch; just inside them the water plane is that of a flat end
            double x = Math.min(1 - 1e-9, Math.max(1e-9, (double) i / CELLS));
            hull.cut(up.x(), up.y(), up.z(), bottom + x * height, cut);
            fractionAt[i] = cut.volume / hull.volume();
            slopeAt[i] = cut.area * height / hull.volume();
        }
        fractionAt[0] = 0;
        fractionAt[CELLS] = 1;
        // the same turned round: a draft for each step of the fraction; the first one not quite dry, for a slope at the
        // start
        double level = Double.NaN;
        for (int i = 0; i < CELLS; i++) {
            double displaced = hull.volume() * Math.max(1e-6, (double) i / CELLS);
            level = Draft.level(hull, up.x(), up.y(), up.z(), displaced, level, cut);
            heightAt[i] = (level - bottom) / height;
            wetAt[i] = Math.min(1, hull.wettedArea(up.x(), up.y(), up.z(), level) / whole);
        }
        heightAt[0] = 0;
        heightAt[CELLS] = 1;
        wetAt[CELLS] = 1;
        wetSlope = slopes(wetAt);
        heightSlope = slopes(heightAt);
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
    private static double between(double[] table, double[] slope, double fraction) {
        if (fraction >= 1) {
            return table[CELLS];
        }
        double at = fraction > 0 ? fraction * CELLS : 0;
        int i = (int) at;
        double t = at - i;
        double s = 1 - t;
        double rise = table[i + 1] - table[i];
        return table[i] + t * t * (3 - 2 * t) * rise + t * s * (s * slope[i] - t * slope[i + 1]);
    }

    /**
     * Slopes a cell that keep a rising table rising: harmonic means of the neighbouring differences, F. N. Fritsch and
     * J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300 (from memory); 0 at a turn.
     */
    private static double[] slopes(double[] table) {
        double[] slope = new double[CELLS + 1];
        for (int i = 1; i < CELLS; i++) {
            double before = table[i] - table[i - 1];
            double after = table[i + 1] - table[i];
            slope[i] = before * after > 0 ? 2 * before * after / (before + after) : 0;
        }
        slope[0] = table[1] - table[0];
        slope[CELLS] = table[CELLS] - table[CELLS - 1];
        return slope;
    }
}
