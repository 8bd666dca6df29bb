package org.fizzhull.shape.kind;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;

/**
 * A kind of which what is left at a depth is known in closed form: volume and surface are that at depth 0. Its lower
 * half mirrors its upper one unless it says where its centroid lies.
 */
interface ClosedForm extends Shape {
    /** {@return what is left at each depth, every face open} */
    Erosion erosion();

    @Override
    default double volume() {
        return erosion().volume(0);
    }

    @Override
    default double surface() {
        return erosion().front(0);
    }

    /** Half way up. */
    @Override
    default Vec3 centroid() {
        return new Vec3(0, 0, extents().height() / 2);
    }
}
