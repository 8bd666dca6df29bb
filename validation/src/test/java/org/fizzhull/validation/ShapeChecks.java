package org.fizzhull.validation;

import static org.fizzhull.quantity.Units.inMillimetres;

import org.fizzhull.shape.Shape;

/** Volume, surface and centroid of the kinds of shape. mm, mm2, mm3. */
final class ShapeChecks extends Bindings {
    ShapeChecks() {
        super("shape");
        bind("volume", in -> 1e9 * Bodies.shape(in).volume());
        bind("surface", in -> 1e6 * Bodies.shape(in).surface());
        bind("centroid", in -> inMillimetres(Bodies.shape(in).centroid().z()));
        bind("centroid-below-rim", in -> {
            Shape shape = Bodies.shape(in);
            return inMillimetres(
                    shape.hollow().orElseThrow().rimHeight() - shape.centroid().z());
        });
        bind("hull-volume", in -> 1e9 * Bodies.shape(in).hullVolume());
    }
}
