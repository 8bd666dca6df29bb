package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.Hull;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
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
            assertThat(ball.wettedArea(x, y, z, bottom + share * 0.07)).isCloseTo(share * whole, within(1e-4 * whole));
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "-1"})
    void levelZonesAreExact(double z) {
        Hull ball = Sphere.ofDiameter(0.07).hull().orElseThrow();
        double bottom = -ball.reach(0, 0, -z);
        Hull cone = new Cone(0.06, 0.08, 0).hull().orElseThrow();
        double foot = -cone.reach(0, 0, -z);
        for (double share = 0.1; share < 1; share += 0.2) {
            double zone = Math.PI * 0.07 * 0.07 * share;
            assertThat(ball.wettedArea(0, 0, z, bottom + share * 0.07)).isCloseTo(zone, within(1e-12 * zone));
            // a cone's mantle above a level is a smaller cone; upside down that is the wet part
            double mantle = Math.PI * 0.03 * Math.hypot(0.03, 0.08);
            double dry = mantle * (1 - share) * (1 - share);
            double wet = z > 0 ? Math.PI * 0.03 * 0.03 + mantle - dry : mantle * share * share;
            assertThat(cone.wettedArea(0, 0, z, foot + share * 0.08)).isCloseTo(wet, within(1e-12 * mantle));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            bowl(diameter=90 mm, wall=15 mm)
            puck(diameter=70 mm, height=30 mm, edge=5 mm)
            egg(length=70 mm, diameter=50 mm)
            ring(diameter=90 mm, tube=30 mm)
            capsule(length=80 mm, diameter=35 mm)
            """)
    void aLevelPlaneAgreesWithOneThatLeansAHair(String text) {
        Shape shape = ShapeText.read(text);
        Hull hull = shape.hull().orElseThrow();
        for (int side = -1; side <= 1; side += 2) {
            double bottom = -hull.reach(0, 0, -side);
            double height = hull.reach(0, 0, side) - bottom;
            for (double share = 0.07; share < 1; share += 0.11) {
                double level = bottom + share * height;
                // the water line of the leaning one runs up and down by 1e-9 of the width
                assertThat(hull.wettedArea(0, 0, side, level))
                        .isCloseTo(hull.wettedArea(1e-9, 0, side, level), within(1e-7 * shape.surface()));
            }
        }
    }

    /** ANALYTIC: a plane at any lean cuts off 2 pi R h of a ball; an egg cut through its middle is half wet. */
    @Test
    void leaningPlanesCutOffCaps() {
        double radius = 0.0325;
        Hull ball = ShapeText.read("sphere(diameter=65 mm)").hull().orElseThrow();
        for (double h = 0.05; h < 2; h += 0.13) {
            double level = 0.8 * radius + (h - 1) * radius;
            assertThat(ball.wettedArea(0.6, 0, 0.8, level))
                    .isCloseTo(2 * Math.PI * radius * h * radius, within(1e-9 * radius * radius));
        }
        Shape shape = ShapeText.read("egg(length=70 mm, diameter=50 mm)");
        Hull egg = shape.hull().orElseThrow();
        for (double lean = 0.1; lean < 3.1; lean += 0.3) {
            double level = 0.035 * Math.cos(lean);
            assertThat(egg.wettedArea(Math.sin(lean), 0, Math.cos(lean), level))
                    .isCloseTo(shape.surface() / 2, within(1e-9 * shape.surface()));
        }
    }

    /** ANALYTIC: half of a cone's side and half of its floor lie on either side of a plane through its axis. */
    @Test
    void aPlaneThroughTheAxisHalvesAnything() {
        for (String text : new String[] {
            "cone(diameter=60 mm, height=70 mm, top=20 mm)",
            "bowl(diameter=90 mm, wall=15 mm)",
            "ring(diameter=90 mm, tube=30 mm)",
            "puck(diameter=70 mm, height=30 mm, edge=5 mm)"
        }) {
            Shape shape = ShapeText.read(text);
            assertThat(shape.hull().orElseThrow().wettedArea(0.6, 0.8, 0, 0))
                    .as(text)
                    .isCloseTo(shape.surface() / 2, within(1e-9 * shape.surface()));
        }
    }

    @Test
    void aBlockIsWetRoundItsSides() {
        Hull block = Block.ofSides(0.06, 0.04, 0.03).hull().orElseThrow();
        double wet = block.wettedArea(0, 0, 1, 0.01);
        assertThat(wet).isCloseTo(0.06 * 0.04 + 2 * (0.06 + 0.04) * 0.01, within(1e-12));
        double left = -block.reach(-1, 0, 0);
        assertThat(block.wettedArea(1, 0, 0, left + 0.02))
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
        assertThat(hull.wettedArea(0.6, 0, 0.8, 1)).isCloseTo(shape.surface(), within(within * shape.surface()));
        assertThat(hull.wettedArea(0, 0, 1, 1)).isCloseTo(shape.surface(), within(within * shape.surface()));
        assertThat(hull.wettedArea(0, 0, 1, -1)).isZero();
    }
}
