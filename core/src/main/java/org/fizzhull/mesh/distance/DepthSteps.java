package org.fizzhull.mesh.distance;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.geometry.Vec3;

/**
 * Depth along lines through a body, as steps on which it changes evenly. The depth of a point is its distance to the
 * nearest open facet. Along a line it is straight where one plane is nearest, bends where the body is round, and has a
 * ridge where two facets are as near. It is asked at even spacing, together with its rate. Where the tangents of two
 * neighbours meet well off their chord it is asked there too, and so on: at a ridge the meeting point is the ridge itself,
 * at a bend it comes four times nearer each time.
 */
final class DepthSteps {
    /** Spacing of the points, and what the tangents may stand off the chord, as shares of the thickness of the body. */
    private static final double SPACING = 0.2;

    private static final double NEGLECTED = 6e-3;

    /** Where the tangents of a parabola meet, a bend of the same mean reaches this share of their height over the chord. */
    private static final double PARABOLA = 2 / 3.0;

    /** Most points on a stretch of line, and the shortest step that is parted, as a share of the spacing. */
    private static final int MOST = 256;

    private static final double SHORTEST = 0.01;

    /** Distance from the surface at which the ends of a line are asked, as a share of the spacing. */
    private static final double OFF = 1e-6;

    /**
     * Depth at a point of a line.
     *
     * @param at length of line before it, m
     * @param depth m
     * @param rate at which the depth rises along the line, from -1 to 1
     */
    private record Sample(double at, double depth, double rate) {}

    private final NearestFacet nearest;
    private final double spacing;
    private final double neglected;
    private double[] step = new double[1 << 12];
    private int used;
    private Vec3 deepest = Vec3.ZERO;
    private double most;

    /**
     * Measures some stretches of line.
     *
     * @param nearest of the open facets
     * @param thickness of the body, m: three times its volume over its surface
     */
    DepthSteps(List<DepthLines.Stretch> stretches, NearestFacet nearest, double thickness) {
        this.nearest = nearest;
        this.spacing = SPACING * thickness;
        this.neglected = NEGLECTED * thickness;
        stretches.forEach(this::walk);
    }

    private void walk(DepthLines.Stretch line) {
        double length = line.length();
        int parts = (int) Math.max(1, Math.min(MOST, Math.ceil(length / spacing)));
        // on a facet itself the distance has no rate
        double off = Math.min(length / 4, OFF * spacing);
        Sample before = ask(line, 0, off);
        for (int i = 1; i <= parts; i++) {
            Sample next = ask(line, length * i / parts, i == parts ? -off : 0);
            between(line, before, next);
            before = next;
        }
    }

    private void between(DepthLines.Stretch line, Sample a, Sample b) {
        double h = b.at - a.at;
        // from a to where the two tangents meet
        double t = (b.depth - a.depth - b.rate * h) / (a.rate - b.rate);
        if (!(t > 0 && t < h)) {
            add(a.depth, b.depth, h);
            return;
        }
        double chord = a.depth + (b.depth - a.depth) * t / h;
        double over = a.depth + a.rate * t - chord;
        if (Math.abs(over) > neglected && h > SHORTEST * spacing) {
            Sample middle = ask(line, a.at + t, 0);
            between(line, a, middle);
            between(line, middle, b);
        } else {
            double middle = Math.max(0, chord + PARABOLA * over);
            add(a.depth, middle, t);
            add(middle, b.depth, h - t);
        }
    }

    /** Depth at a place of a line, asked a little off. */
    private Sample ask(DepthLines.Stretch line, double at, double off) {
        Vec3 u = DepthLines.DIRECTION;
        Vec3 there = line.start().plus(u.times(at + off));
        double depth = nearest.distance(there.x(), there.y(), there.z());
        if (depth > most) {
            most = depth;
            deepest = there;
        }
        return new Sample(at, depth, nearest.rate(u.x(), u.y(), u.z()));
    }

    private void add(double from, double to, double length) {
        if (used + 3 > step.length) {
            step = Arrays.copyOf(step, 2 * step.length);
        }
        step[used++] = from;
        step[used++] = to;
        step[used++] = length;
    }

    /** Depth of the deepest point that was asked, m. */
    double most() {
        return most;
    }

    /** That point. */
    Vec3 deepest() {
        return deepest;
    }

    /** Number of steps. */
    int count() {
        return used / 3;
    }

    /** Depth at the start of a step, m. */
    double from(int i) {
        return step[3 * i];
    }

    /** Depth at its end, m. */
    double to(int i) {
        return step[3 * i + 1];
    }

    /** Length of a step, m. */
    double length(int i) {
        return step[3 * i + 2];
    }
}
