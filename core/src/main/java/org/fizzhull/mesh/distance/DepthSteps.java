package org.fizzhull.mesh.distance;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.geometry.Vec3;

/**
 * Depth along lines through a body, as steps on which it changes linearly. The depth of a point is its distance to
 * the nearest open facet. Along a line it is linear where one plane is nearest, curved where the body is round, and
 * has a ridge where two facets are equally near. It is evaluated at even spacing, together with its derivative; where
 * the tangents of two neighbouring points intersect high above their chord, it is evaluated there too: a ridge
 * reaches the intersection, a curve does not.
 */
final class DepthSteps {
    /** Spacing of the points, as a share of the thickness of the body. */
    private static final double SPACING = 0.15;

    /** Number of depths at which shares are computed, evenly spaced down to the deepest. */
    static final int LEVELS = 1 << 10;

    /** Most points on a stretch of line. */
    private static final int MOST = 256;

    /** Error of depth that is neglected, as a share of the thickness of the body. */
    private static final double NEGLECTED = 1e-3;

    /** Distance from the surface at which depth is evaluated at the ends of a line, as a share of the spacing. */
    private static final double OFF = 1e-6;

    private final DepthLines lines;
    private final NearestFacet nearest;
    private final double neglected;
    private final double spacing;
    private final int begin;
    private double[] step = new double[1 << 12];
    private int used;

    /** End of the steps of each stretch of line. */
    private final int[] until;

    /** Depth at the point evaluated last, m. */
    private double depth;

    /** Derivative of the depth along the line there, -1 to 1. */
    private double rate;

    private Vec3 deepest = Vec3.ZERO;
    private double most;

    /**
     * Measures some of the stretches of the lines.
     *
     * @param nearest of the open facets
     * @param thickness of the body, m: three times its volume over its surface
     * @param begin first stretch
     * @param end stretch after the last
     */
    DepthSteps(DepthLines lines, NearestFacet nearest, double thickness, int begin, int end) {
        this.lines = lines;
        this.nearest = nearest;
        this.neglected = NEGLECTED * thickness;
        this.spacing = SPACING * thickness;
        this.begin = begin;
        until = new int[end - begin];
        for (int c = begin; c < end; c++) {
            walk(4 * c);
            until[c - begin] = used / 3;
        }
    }

    private void walk(int c) {
        double length = lines.stretch[c + 3];
        int parts = (int) Math.max(1, Math.min(MOST, Math.ceil(length / spacing)));
        double h = length / parts;
        // on a facet itself the distance has no derivative
        double off = Math.min(length / 4, OFF * spacing);
        evaluate(c, off);
        for (int i = 1; i <= parts; i++) {
            double fromDepth = depth;
            double fromRate = rate;
            evaluate(c, i == parts ? length - off : i * h);
            between(c, (i - 1) * h, h, fromDepth, fromRate, depth, rate);
        }
    }

    /**
     * Adds the steps between two points of a stretch: the first lies {@code from} metres along it, the second h (m)
     * farther; d0 and d1 are the depths there, m, g0 and g1 their derivatives along the line.
     */
    private void between(int c, double from, double h, double d0, double g0, double d1, double g1) {
        double t = (d1 - d0 - g1 * h) / (g0 - g1);
        boolean ridge = g0 > g1 && t > 0 && t < h;
        double top = d0 + g0 * t;
        if (!ridge || top - d0 - (d1 - d0) * t / h < neglected) {
            bend(d0, g0, d1, g1, h);
            return;
        }
        evaluate(c, from + t);
        if (Math.abs(depth - top) < neglected) {
            add(d0, depth, t);
            add(depth, d1, h - t);
        } else {
            bend(d0, g0, depth, rate, t);
            bend(depth, rate, d1, g1, h - t);
        }
        depth = d1;
        rate = g1;
    }

    /**
     * Adds an interval without a ridge, as two halves. The depth at its middle lies half way from the chord to the
     * tangents, exactly so for a parabola. Where the two tangents disagree, as when one end is on a ridge, the one
     * nearer to the chord is right, and their harmonic mean is close to it (van Leer's limiter, 1974; from memory).
     * The distance from the chord is enlarged by a third, so that the two linear halves have the mean of the
     * parabola.
     */
    private void bend(double d0, double g0, double d1, double g1, double h) {
        double chord = (d0 + d1) / 2;
        double one = d0 + g0 * h / 2 - chord;
        double other = d1 - g1 * h / 2 - chord;
        double bulge = one * other > 0 ? 4 * one * other / (one + other) / 3 : 0;
        double middle = Math.max(0, chord + bulge);
        add(d0, middle, h / 2);
        add(middle, d1, h / 2);
    }

    /** Evaluates depth and rate at a distance s, m, from the start of a stretch. */
    private void evaluate(int c, double s) {
        double[] u = lines.direction;
        double x = lines.stretch[c] + s * u[0];
        double y = lines.stretch[c + 1] + s * u[1];
        double z = lines.stretch[c + 2] + s * u[2];
        depth = nearest.distance(x, y, z);
        rate = nearest.rate(u[0], u[1], u[2]);
        if (depth > most) {
            most = depth;
            deepest = new Vec3(x, y, z);
        }
    }

    private void add(double from, double to, double length) {
        if (used + 3 > step.length) {
            step = Arrays.copyOf(step, 2 * step.length);
        }
        step[used++] = from;
        step[used++] = to;
        step[used++] = length;
    }

    /** Depth of the deepest point that was evaluated, m. */
    double most() {
        return most;
    }

    /** The deepest point that was evaluated, m. */
    Vec3 deepest() {
        return deepest;
    }

    /** Number of stretches of line. */
    int stretches() {
        return until.length;
    }

    /**
     * Share of the length of the lines of a part, or of all lines for -1, that is deeper than each level. A step
     * counts with its whole length for levels above its shallow end, then with a share that falls linearly to 0 at
     * its deep end.
     *
     * @param deepest depth of the last level, m; the first is the surface
     */
    static double[] deeper(List<DepthSteps> measured, int part, double deepest) {
        double[] constant = new double[LEVELS + 2];
        double[] slope = new double[LEVELS + 2];
        for (DepthSteps steps : measured) {
            for (int line = 0; line < steps.until.length; line++) {
                if (part < 0 || steps.lines.part(steps.begin + line) == part) {
                    int end = 3 * steps.until[line];
                    for (int i = line == 0 ? 0 : 3 * steps.until[line - 1]; i < end; i += 3) {
                        double from = steps.step[i] / deepest * LEVELS;
                        double to = steps.step[i + 1] / deepest * LEVELS;
                        enter(Math.min(from, to), Math.max(from, to), steps.step[i + 2], constant, slope);
                    }
                }
            }
        }
        double[] share = new double[LEVELS + 1];
        double held = 0;
        double falling = 0;
        for (int k = 0; k <= LEVELS; k++) {
            held += constant[k];
            falling += slope[k];
            share[k] = (held + falling * k) / constant[0];
        }
        return share;
    }

    private static void enter(double low, double high, double length, double[] constant, double[] slope) {
        int begin = (int) Math.min(LEVELS, Math.floor(low)) + 1;
        int end = (int) Math.min(LEVELS, Math.floor(high)) + 1;
        constant[0] += length;
        constant[begin] -= length;
        if (end > begin) {
            double rate = length / (high - low);
            constant[begin] += rate * high;
            constant[end] -= rate * high;
            slope[begin] -= rate;
            slope[end] += rate;
        }
    }
}
