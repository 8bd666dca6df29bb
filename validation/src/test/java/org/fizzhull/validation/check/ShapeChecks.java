package org.fizzhull.validation.check;

import static org.fizzhull.quantity.Units.inMillimetres;

import org.fizzhull.shape.Shape;
import org.fizzhull.validation.table.Bindings;

/** Volume, surface and centroid of the kinds of shape. mm, mm2, mm3. */
public final class ShapeChecks extends Bindings {
    public ShapeChecks() {
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
