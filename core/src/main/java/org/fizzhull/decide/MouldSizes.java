package org.fizzhull.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Bowl;
import org.fizzhull.shape.Capsule;
import org.fizzhull.shape.Cone;
import org.fizzhull.shape.Dome;
import org.fizzhull.shape.Egg;
import org.fizzhull.shape.Geode;
import org.fizzhull.shape.Heart;
import org.fizzhull.shape.Puck;
import org.fizzhull.shape.Ring;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.Sphere;
import org.fizzhull.shape.Star;

/** Moulds that a maker may take in place of one. */
final class MouldSizes {
    private static final double STEP = 0.005;
    private static final int STEPS = 4;

    private MouldSizes() {}

    /** Larger, or smaller, moulds of the same kind, by five millimetres across each; none where the kind has no one size. */
    static List<Shape> others(Shape shape, boolean larger) {
        List<Shape> moulds = new ArrayList<>();
        for (int k = 1; k <= STEPS; k++) {
            resized(shape, (larger ? k : -k) * STEP).ifPresent(moulds::add);
        }
        return moulds;
    }

    /** One of each other kind that a shop sells, about as large (sizes usual in the trade: common practice, no source). */
    static List<Shape> otherKinds(Shape shape) {
        double across = Math.cbrt(6 * shape.volume() / Math.PI);
        double rounded = Math.round(across / STEP) * STEP;
        List<Shape> kinds = new ArrayList<>();
        add(kinds, shape, Sphere.ofDiameter(rounded));
        add(kinds, shape, Dome.ofDiameter(rounded + 3 * STEP));
        add(kinds, shape, new Puck(rounded + STEP, 6 * STEP, 0));
        add(kinds, shape, new Bowl(rounded + 5 * STEP, 3 * STEP));
        return kinds;
    }

    private static void add(List<Shape> kinds, Shape present, Shape other) {
        if (!other.kind().equals(present.kind())) {
            kinds.add(other);
        }
    }

    private static Optional<Shape> resized(Shape shape, double by) {
        try {
            return Optional.ofNullable(
                    shape instanceof Sphere s
                            ? new Sphere(s.diameter() + by, s.seam())
                            : shape instanceof Dome s
                                    ? new Dome(s.diameter() + by, s.height() * (s.diameter() + by) / s.diameter())
                                    : shape instanceof Puck s
                                            ? new Puck(s.diameter() + by, s.height(), s.edge())
                                            : shape instanceof Bowl s
                                                    ? new Bowl(s.diameter() + by, s.wall())
                                                    : shape instanceof Geode s
                                                            ? new Geode(s.diameter() + by, s.wall(), s.crystals())
                                                            : shape instanceof Ring s
                                                                    ? new Ring(s.diameter() + by, s.tube())
                                                                    : shape instanceof Egg s
                                                                            ? new Egg(
                                                                                    s.length() + by,
                                                                                    s.diameter()
                                                                                            * (s.length() + by)
                                                                                            / s.length())
                                                                            : shape instanceof Capsule s
                                                                                    ? new Capsule(
                                                                                            s.length() + by,
                                                                                            s.diameter())
                                                                                    : shape instanceof Cone s
                                                                                            ? new Cone(
                                                                                                    s.diameter() + by,
                                                                                                    s.height(),
                                                                                                    s.top())
                                                                                            : shape instanceof Star s
                                                                                                    ? new Star(
                                                                                                            s.points(),
                                                                                                            s.diameter()
                                                                                                                    + by,
                                                                                                            s.inner()
                                                                                                                    * (s
                                                                                                                                    .diameter()
                                                                                                                            + by)
                                                                                                                    / s
                                                                                                                            .diameter(),
                                                                                                            s.height())
                                                                                                    : shape
                                                                                                                    instanceof
                                                                                                                    Heart
                                                                                                                            s
                                                                                                            ? new Heart(
                                                                                                                    s
                                                                                                                                    .width()
                                                                                                                            + by,
                                                                                                                    s
                                                                                                                            .height())
                                                                                                            : null);
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }
}
