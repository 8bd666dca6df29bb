package org.fizzhull.forecast.limit;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;

/**
 * Checks a shape where it enters a predictor ({@link PieceLimits#checkPiece}): {@link Shape} is an open interface, so that its numbers may be anybody's.
 * Volume, surface and plan area have to be above 0 and finite, and the hull has to enclose the volume; of the library's own
 * kinds tests hold that it does. Stateless.
 */
public final class ShapeCheck {
    /** Hull and volume of one body may differ by this share: meshes and mended bodies (assumed). */
    private static final double APART = 0.02;

    private ShapeCheck() {}

    /**
     * Refuses a shape whose numbers are none, or whose hull is not that of its volume.
     *
     * @param shape form of a piece
     * @throws Refusal {@code out-of-range} or {@code contradiction}
     */
    public static void check(Shape shape) {
        positive("volume", shape.volume(), "m3");
        positive("surface", shape.surface(), "m2");
        positive("plan area", shape.planArea(), "m2");
        Shape bare = shape.bare();
        if (bare.getClass().getPackageName().equals(Sphere.class.getPackageName())) {
            return;
        }
        bare.hull().ifPresent(hull -> {
            // with the inset inside the hull or beside it: either may be how the shape is built
            double inside = hull.volume();
            double told = bare.volume() + bare.insetVolume();
            boolean agrees = Math.abs(inside - bare.volume()) <= APART * bare.volume()
                    || Math.abs(inside - told) <= APART * told;
            if (!agrees) {
                throw new Refusal(
                        "contradiction",
                        "shape",
                        "a hull of " + Units.inCubicCentimetres(inside) + " cm3 round a volume of "
                                + Units.inCubicCentimetres(bare.volume()) + " cm3",
                        "a hull that encloses the volume",
                        "Hull and volume of a shape describe the same body: mend one of them.");
            }
        });
    }

    /** Refuses what is not above 0 and finite, NaN included. */
    private static void positive(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new Refusal(
                    "out-of-range",
                    "shape",
                    "a " + what + " of " + value + ' ' + unit,
                    "more than 0 " + unit,
                    "A body without it cannot be asked about.");
        }
    }
}
