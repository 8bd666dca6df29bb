package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ANALYTIC: Archimedes' zones of a ball, boxes, and the whole surface. */
class WettedSurfaceTest {
    @ParameterizedTest
    @CsvSource({"0, 0, 1", "0, 0, -1", "1, 0, 0", "0.6, 0, 0.8", "0, -0.8, 0.6"})
    void zonesOfABallHaveTheAreaOfTheirHeight(double x, double y, double z) {
        Hull ball = Sphere.ofDiameter(0.07).hull().orElseThrow();
        double bottom = -ball.reach(-x, -y, -z);
        double whole = Math.PI * 0.07 * 0.07;
        for (double share = 0.05; share < 1; share += 0.09) {
            assertThat(WettedSurface.below(ball, x, y, z, bottom + share * 0.07))
                    .isCloseTo(share * whole, within(1e-4 * whole));
        }
    }

    @Test
    void aBlockIsWetRoundItsSides() {
        Hull block = Block.ofSides(0.06, 0.04, 0.03).hull().orElseThrow();
        double wet = WettedSurface.below(block, 0, 0, 1, 0.01);
        assertThat(wet).isCloseTo(0.06 * 0.04 + 2 * (0.06 + 0.04) * 0.01, within(1e-12));
        double left = -block.reach(-1, 0, 0);
        assertThat(WettedSurface.below(block, 1, 0, 0, left + 0.02))
                .isCloseTo(0.04 * 0.03 + 2 * (0.04 + 0.03) * 0.02, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sphere(diameter=65 mm, seam=2 mm)
            dome(diameter=80 mm, height=35 mm)
            bowl(diameter=90 mm, wall=15 mm)
            puck(diameter=70 mm, height=30 mm, edge=5 mm)
            egg(length=70 mm, diameter=50 mm)
            ring(diameter=90 mm, tube=30 mm)
            cone(diameter=60 mm, height=70 mm, top=20 mm)
            capsule(length=80 mm, diameter=35 mm)
            star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)
            """)
    void whollyUnderEverySurfaceIsWet(String text) {
        Shape shape = ShapeText.read(text);
        Hull hull = shape.hull().orElseThrow();
        double within = 1e-4 + 2 * hull.relativeError();
        assertThat(WettedSurface.below(hull, 0.6, 0, 0.8, 1))
                .isCloseTo(shape.surface(), within(within * shape.surface()));
        assertThat(WettedSurface.below(hull, 0, 0, 1, 1)).isCloseTo(shape.surface(), within(within * shape.surface()));
        assertThat(WettedSurface.below(hull, 0, 0, 1, -1)).isZero();
    }
}
