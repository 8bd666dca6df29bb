package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;

/**
 * A shape that calls itself by another kind and tells a multiple of its volume.
 *
 * @param of the shape that it is
 * @param kind name of the kind that it tells
 * @param factor volume told over its own
 */
public record ToldShape(Shape of, String kind, double factor) implements Shape {
    @Override
    public String text() {
        return of.text();
    }

    @Override
    public double volume() {
        return factor * of.volume();
    }

    @Override
    public double surface() {
        return of.surface();
    }

    @Override
    public Vec3 centroid() {
        return of.centroid();
    }

    @Override
    public Extents extents() {
        return of.extents();
    }

    @Override
    public double planArea() {
        return of.planArea();
    }

    @Override
    public DepthProfile depthProfile(Exposure exposure) {
        return of.depthProfile(exposure);
    }

    @Override
    public Optional<Hull> hull() {
        return of.hull();
    }
}
