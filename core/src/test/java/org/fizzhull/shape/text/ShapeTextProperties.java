package org.fizzhull.shape.text;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.kind.Star;

/** Any size a double can hold survives its text. Sizes are arbitrary doubles, not round numbers. */
class ShapeTextProperties {

    @Property(tries = 60)
    void textReadsBackToAnEqualShape(
            @ForAll @DoubleRange(min = 0.01, max = 0.9) @Scale(6) double rough,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(6) double share,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(6) double other,
            @ForAll @IntRange(min = 3, max = 24) int points) {
        double size = rough / Math.PI + 0.01;
        double part = Math.max(0.0051, size * share);
        same(Sphere.ofDiameterAndSeam(size, size * other));
        same(Dome.ofDiameterAndHeight(size, Math.max(0.001, size * share / 2)));
        double wall = Math.max(0.001, size * share / 2);
        same(Bowl.ofDiameterAndWall(size, wall));
        double inner = size / 2 - wall;
        same(Geode.ofDiameterWallAndCrystals(size, wall, inner * inner * inner * 1000 * other));
        same(Puck.ofDiameterHeightAndEdge(size, part, Math.min(size, part) / 2 * other));
        same(Egg.ofLengthAndDiameter(size, part));
        same(Ring.ofDiameterAndTube(size, part / 2));
        same(Block.ofSidesAndEdge(size, part, (size + part) / 2, part / 2 * other));
        same(Cone.ofDiameterHeightAndTop(size, part, size * other));
        same(Capsule.ofLengthAndDiameter(size, part));
        same(Star.ofPointsDiameterInnerAndHeight(points, size, part, part * 1.5));
        same(Heart.ofWidthAndHeight(size, part));
        for (Filled.Family family : Filled.Family.values()) {
            same(Filled.ofWater(size, family));
        }
    }

    private static void same(Shape shape) {
        assertThat(ShapeText.read(shape.text())).isEqualTo(shape);
        for (DepthProfile.Exposure exposure : DepthProfile.Exposure.values()) {
            DepthProfile profile = shape.depthProfile(exposure);
            assertThat(profile.volume(0)).isBetween(shape.volume() * (1 - 1e-9), shape.volume() * (1 + 1e-9));
        }
    }
}
