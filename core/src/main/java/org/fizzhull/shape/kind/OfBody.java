package org.fizzhull.shape.kind;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;

/**
 * A kind that has the form of a body of another kind: what is not said otherwise, areas, box, depth profiles, hull and
 * hollow, is that of the body. Its volume stays its own, since it may be known better than by the sizes of the body.
 */
interface OfBody extends Shape {
    /** {@return the body whose form it has} */
    Shape body();

    @Override
    default double surface() {
        return body().surface();
    }

    @Override
    default Vec3 centroid() {
        return body().centroid();
    }

    @Override
    default Extents extents() {
        return body().extents();
    }

    @Override
    default double planArea() {
        return body().planArea();
    }

    @Override
    default DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return body().depthProfile(exposure);
    }

    @Override
    default boolean mouldedInHalves() {
        return body().mouldedInHalves();
    }

    @Override
    default Optional<Hull> hull() {
        return body().hull();
    }

    @Override
    default Optional<Hollow> hollow() {
        return body().hollow();
    }
}
