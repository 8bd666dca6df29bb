package org.fizzhull.shape;

import org.fizzhull.numeric.Vec3;

/**
 * Two half balls of radius R with a cylinder of length L between them, axis along z: V = pi R^2 L + 4/3 pi R^3,
 * S = 2 pi R L + 4 pi R^2 (docs/physics/hydrostatics.md, 1). The body inside at depth d is the same with R - d.
 */
record BeltedBall(double radius, double belt) implements Erosion {
    double volume() {
        return volume(0);
    }

    double surface() {
        return front(0);
    }

    Vec3 centroid() {
        return new Vec3(0, 0, radius + belt / 2);
    }

    Extents extents() {
        return new Extents(2 * radius, 2 * radius, 2 * radius + belt);
    }

    double planArea() {
        return Math.PI * radius * radius;
    }

    DepthProfile profile() {
        return ProfileTable.cubic(this, 0, radius);
    }

    Profile2D meridian() {
        double r = radius;
        if (belt == 0) {
            return Profile2D.builder().arc(r, 0, r, r, 1, 0, 2 * r).build();
        }
        return Profile2D.builder()
                .arc(r, 0, r, r, 1, 0, r)
                .line(r, r, r + belt, r)
                .arc(r + belt, 0, r, r, 1, r + belt, 2 * r + belt)
                .build();
    }

    @Override
    public double volume(double d) {
        double r = radius - d;
        return Math.PI * r * r * (belt + 4 * r / 3);
    }

    @Override
    public double front(double d) {
        double r = radius - d;
        return 2 * Math.PI * r * (belt + 2 * r);
    }
}
