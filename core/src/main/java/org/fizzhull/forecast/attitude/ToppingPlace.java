package org.fizzhull.forecast.attitude;

import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/**
 * Whether the layer on top of a piece shows in an attitude: where its highest part lies to the water.
 *
 * <p>The layer covers the top of the shape as listed; in another attitude it lies where that face has come to. Read off
 * the hull: the lowest and highest point of its top part in the attitude, moved by the thickness of the layer along up.
 * Stateless.
 */
final class ToppingPlace {
    /** The layer covers what lies above this share of the height as listed (assumed). */
    private static final double TOP = 0.97;

    private ToppingPlace() {}

    /**
     * For a hull with its {@code up} upward.
     *
     * @param draft depth of its lowest point under the water, m
     */
    static FloatingAttitude.Topping of(Shape shape, Hull hull, Vec3 up, double draft) {
        if (!(shape instanceof Loaded loaded) || loaded.toppings().isEmpty()) {
            return FloatingAttitude.Topping.NONE;
        }
        // lowest and highest point of the covered top along up, and the water line on the same scale, m
        double[] span = hull.heightsAbove(TOP * hull.reach(0, 0, 1), up);
        double water = draft - hull.reach(-up.x(), -up.y(), -up.z());
        double thickness = loaded.toppingHeight() * up.z();
        if (Math.min(span[0], span[0] + thickness) >= water) {
            return FloatingAttitude.Topping.SHOWS;
        }
        return Math.max(span[1], span[1] + thickness) <= water
                ? FloatingAttitude.Topping.UNDER_WATER
                : FloatingAttitude.Topping.AT_WATER_LINE;
    }
}
