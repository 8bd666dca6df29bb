package org.fizzhull.pressing;

import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;

/**
 * What pressing needs to know of a mould: five sizes, of which depth over width decides how much pressure the wall takes
 * ({@link Janssen1895}). Immutable.
 *
 * @param volume volume inside, m3
 * @param area area pressed on, projected along the plunger, m2
 * @param depth mean depth of powder under the plunger, m
 * @param height height of the piece standing by itself, m
 * @param surface surface of the piece, m2
 */
public record MouldDimensions(double volume, double area, double depth, double height, double surface) {
    /**
     * Checks the sizes.
     *
     * @param volume volume inside, m3
     * @param area area pressed on, projected along the plunger, m2
     * @param depth mean depth of powder under the plunger, m
     * @param height height of the piece standing by itself, m
     * @param surface surface of the piece, m2
     * @throws IllegalArgumentException for a size of 0 or less, or NaN
     */
    public MouldDimensions {
        if (!(volume > 0 && area > 0 && depth > 0 && height > 0 && surface > 0)) {
            throw new IllegalArgumentException("a mould needs sizes above 0");
        }
    }

    /** How it is filled. */
    public enum Filling {
        /** Two halves filled each and closed on one another: a hand presses on each half's open face. */
        TWO_HALVES,
        /** One cavity pressed from its open side by one plunger or thumb. */
        ONE_PLUNGER;

        /**
         * {@return how a shape is usually pressed: what is round on every side in two halves, everything else, files
         * included, from its open side (common practice, no source)}
         *
         * @param shape form of the piece the mould makes
         */
        public static Filling usual(Shape shape) {
            return shape.mouldedInHalves() ? TWO_HALVES : ONE_PLUNGER;
        }
    }

    /**
     * {@return the mould of a shape} Depth is volume over projected area (halved for two halves): the depth of the
     * straight-walled mould of the same face, since a rounded one narrows away from it.
     *
     * @param shape form of the piece the mould makes
     * @param filling how it is pressed
     */
    public static MouldDimensions of(Shape shape, Filling filling) {
        Given.all("filling", filling);
        double mean = shape.volume() / shape.planArea();
        double depth = filling == Filling.TWO_HALVES ? mean / 2 : mean;
        return new MouldDimensions(
                shape.volume(), shape.planArea(), depth, shape.extents().height(), shape.surface());
    }

    /** {@return the depth of powder over the width of a round mould of the same face, H/D} */
    public double depthOverWidth() {
        return depth / Math.sqrt(4 * area / Math.PI);
    }
}
