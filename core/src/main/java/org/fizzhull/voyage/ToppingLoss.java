package org.fizzhull.voyage;

import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/**
 * Loss of a topping as the face under it recedes: at depth d of the front the share min(1, d/h) of it has come off, h
 * the thickness of the layer (m). Assumed: nobody has measured how grains stick to a fizzing face. Immutable.
 *
 * @param mass of the whole layer, kg; 0 for none
 * @param volume of the whole layer, m3
 * @param thickness its height, m: the recession by which all of it has come off
 */
record ToppingLoss(double mass, double volume, double thickness) {
    /** The loss of the topping of a shape; always 0 where there is none. */
    static ToppingLoss of(Shape shape) {
        return shape instanceof Loaded loaded && !loaded.toppings().isEmpty()
                ? new ToppingLoss(loaded.toppingMass(), loaded.toppingVolume(), loaded.toppingHeight())
                : new ToppingLoss(0, 0, 1);
    }

    /** Whether there is a topping. */
    boolean any() {
        return mass > 0;
    }

    /** Mass that has come off, kg, when the front has moved in by a depth of the table, m. */
    double mass(double depth) {
        return depth < thickness ? mass * depth / thickness : mass;
    }

    /** Volume that has come off, m3, when the front has moved in by a depth of the table, m. */
    double volume(double depth) {
        return depth < thickness ? volume * depth / thickness : volume;
    }
}
