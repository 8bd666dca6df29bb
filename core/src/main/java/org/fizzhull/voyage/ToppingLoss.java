package org.fizzhull.voyage;

import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;

/**
 * What a layer on top has let go of when the front has moved in. Assumed: it comes off evenly while the face under it
 * moves in by its own thickness; nobody has measured how grains stick to a fizzing face. Immutable.
 *
 * @param mass of the whole layer, kg; 0 for none
 * @param volume of the whole layer, m3
 * @param thickness its height, m: the recession by which all of it has come off
 */
record ToppingLoss(double mass, double volume, double thickness) {
    /** Of the layer on a shape; one that never loses anything where there is none. */
    static ToppingLoss of(Shape shape) {
        return shape instanceof Loaded loaded && !loaded.toppings().isEmpty()
                ? new ToppingLoss(loaded.toppingMass(), loaded.toppingVolume(), loaded.toppingHeight())
                : new ToppingLoss(0, 0, 1);
    }

    /** Whether there is anything to let go. */
    boolean any() {
        return mass > 0;
    }

    /** Mass that is gone, kg, when the front has moved in by a depth of the table, m. */
    double mass(double depth) {
        return depth < thickness ? mass * depth / thickness : mass;
    }

    /** Volume that is gone, m3. */
    double volume(double depth) {
        return depth < thickness ? volume * depth / thickness : volume;
    }
}
