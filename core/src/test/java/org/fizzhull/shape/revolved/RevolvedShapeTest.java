package org.fizzhull.shape.revolved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.meshed.MeshDepthTest;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bodies of revolution from outlines against the closed forms of the same bodies. ANALYTIC. */
class RevolvedShapeTest {
    /** Profiles of arcs as 64 chords: these take up to 0.13 % of the volume of a ball, 0.06 % of the depth. */
    @ParameterizedTest
    @MethodSource("org.fizzhull.shape.ShapeBattery#texts")
    void profileOfEveryTurnedShape(String text) {
        Shape shape = ShapeText.read(text);
        if (!(shape.hull().orElse(null) instanceof RevolvedHull hull)) {
            return;
        }
        RevolvedShape turned = RevolvedShape.of("a.csv", hull.profile());
        for (DepthProfile.Exposure exposure :
                new DepthProfile.Exposure[] {DepthProfile.Exposure.ALL, DepthProfile.Exposure.TRAY}) {
            MeshDepthTest.near(
                    text + " " + exposure, turned.depthProfile(exposure), shape.depthProfile(exposure), 0.0025, 0.005);
        }
        assertThat(turned.volume()).isCloseTo(shape.volume(), within(1e-12 * shape.volume()));
        assertThat(turned.surface()).isCloseTo(shape.surface(), within(1e-10 * shape.surface()));
        Extents box = shape.extents();
        assertThat(turned.extents().length()).isCloseTo(box.length(), within(1e-3 * box.length()));
        assertThat(turned.extents().height()).isCloseTo(box.height(), within(1e-12));
        assertThat(turned.planArea()).isCloseTo(shape.planArea(), within(2e-3 * shape.planArea()));
    }

    /** ANALYTIC: cylinder and cone, whose outlines are straight: pi (R - d)^2 (H - 2d), and a similar cone. */
    @Test
    void straightOutlinesAreHeldToATenthOfThat() {
        double[][] cylinder = {{0, 0.03, 0.03, 0}, {0, 0, 0.05, 0.05}};
        DepthProfile all = RevolvedShape.of("a.csv", ProfilePoints.profile(cylinder[0], cylinder[1]))
                .depthProfile(DepthProfile.Exposure.ALL);
        for (double d = 0; d < 0.017; d += 0.001) {
            double left = Math.PI * (0.03 - d) * (0.03 - d) * (0.05 - 2 * d);
            assertThat(all.volume(d)).isCloseTo(left, within(2e-4 * left));
        }
        double[][] cone = {{0, 0.03, 0}, {0, 0, 0.04}};
        RevolvedShape pointed = RevolvedShape.of("a b.csv", ProfilePoints.profile(cone[0], cone[1]));
        double whole = Math.PI * 0.03 * 0.03 * 0.04 / 3;
        for (double share = 0; share < 0.53; share += 0.01) {
            // inradius of the section r H/(r + sqrt(r^2 + H^2))
            double left = whole * Math.pow(1 - share, 3);
            double d = share * 0.03 * 0.04 / (0.03 + 0.05);
            assertThat(pointed.depthProfile(DepthProfile.Exposure.ALL).volume(d))
                    .isCloseTo(left, within(2e-4 * left));
        }
        assertThat(pointed.text()).isEqualTo("revolved(file=\"a b.csv\")");
        assertThat(pointed.kind()).isEqualTo("revolved");
    }

    /** ANALYTIC: over r from 0 to 1 and z from 0 to r the value r leaves 2 pi (1 - t^3)/3. */
    @Test
    void levelsOfOneTriangle() {
        RingLevels levels = new RingLevels(11, 0.1);
        levels.add(0.5, 1, 1, 0, 0, 1, 1);
        for (int k = 0; k <= 10; k++) {
            double t = k * 0.1;
            assertThat(levels.volumes()[k]).isCloseTo(2 * Math.PI / 3 * (1 - t * t * t), within(1e-14));
        }
    }
}
