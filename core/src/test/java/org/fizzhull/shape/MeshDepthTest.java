package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.mesh.DepthColumns;
import org.fizzhull.mesh.MeshDepth;
import org.fizzhull.mesh.TriangleMesh;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Depth profiles of meshes against the closed forms of the same bodies. ANALYTIC. The tolerance is what is demanded: 0.5 %
 * in volume and 1 % in area over the first 90 % of the volume, the chords of the mesh included.
 */
class MeshDepthTest {
    private static final int AROUND = 128;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    sphere(diameter=65 mm)                                    | ALL
                    dome(diameter=100 mm, height=35 mm)                       | TRAY
                    puck(diameter=70 mm, height=30 mm)                        | TRAY
                    block(length=60 mm, width=40 mm, height=30 mm)            | TRAY
                    cone(diameter=60 mm, height=70 mm)                        | ALL
                    cone(diameter=75 mm, height=35 mm, top=55 mm)             | TRAY
                    star(points=5, diameter=80 mm, inner=45 mm, height=30 mm) | TRAY
                    heart(width=70 mm, height=28 mm)                          | TRAY
                    """)
    void agreesWithTheClosedForm(String text, Exposure exposure) {
        compare(text, exposure);
    }

    /** Every shape of the battery and every exposure in which an open shape has one surface. */
    @Tag("proof")
    @ParameterizedTest
    @MethodSource("org.fizzhull.shape.ShapeBattery#texts")
    void agreesWithEveryClosedForm(String text) {
        if (!text.startsWith("filled")) {
            compare(text, Exposure.ALL);
            compare(text, Exposure.TRAY);
        }
    }

    private static void compare(String text, Exposure exposure) {
        Shape shape = ShapeText.read(text);
        DepthColumns columns = MeshDepth.of(ShapeMeshes.of(shape, AROUND), exposure == Exposure.TRAY, false);
        DepthProfile found =
                new DepthProfile(columns.depth(), columns.volume(), columns.area(), columns.relativeError());
        near(text + " " + exposure, found, shape.depthProfile(exposure), 0.005, 0.01);
    }

    static void near(String what, DepthProfile found, DepthProfile exact, double inVolume, double inArea) {
        double whole = exact.volume(0);
        for (int i = 0; i <= 400; i++) {
            double d = exact.deepest() * i / 400;
            double left = exact.volume(d);
            if (left < 0.1 * whole) {
                break;
            }
            assertThat(found.volume(d)).as("%s: V at %s", what, d).isCloseTo(left, within(inVolume * left));
            double area = exact.area(d);
            assertThat(found.area(d)).as("%s: A at %s", what, d).isCloseTo(area, within(inArea * area));
        }
        assertThat(found.deepest()).as(what).isCloseTo(exact.deepest(), within(0.01 * exact.deepest()));
    }

    /** ANALYTIC: from outside alone, what is left of a hollow cube is (a - 2d)^3 - b^3, to the wall's own thickness. */
    @Test
    void closedHollowIsNotAFrontFromOutside() {
        TriangleMesh shell = ShapeMeshes.both(HullBodies.box(0.06, 0.06, 0.06), HullBodies.box(0.03, 0.03, 0.03), true);
        DepthColumns columns = MeshDepth.of(shell, false, true);
        DepthProfile outside = new DepthProfile(columns.depth(), columns.volume(), columns.area(), 0);
        double hollow = Math.pow(0.03, 3);
        for (double d = 0; d < 0.0125; d += 0.0005) {
            double left = Math.pow(0.06 - 2 * d, 3) - hollow;
            assertThat(outside.volume(d)).isCloseTo(left, within(0.005 * left));
            double area = 6 * Math.pow(0.06 - 2 * d, 2);
            assertThat(outside.area(d)).isCloseTo(area, within(0.01 * area));
        }
        // the table ends at one of 32 depths of the filled cube
        assertThat(outside.deepest()).isCloseTo(0.015, within(0.03 / 32 * 1.1));
        assertThat(MeshDepth.of(shell, false, false).area()[0])
                .isCloseTo(6 * 0.06 * 0.06 + 6 * 0.03 * 0.03, within(1e-15));
    }

    /** Thin walls are too much for the lattice, and it says by how much. ANALYTIC. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    bowl(diameter=90 mm, wall=4 mm)
                    puck(diameter=200 mm, height=5 mm)
                    """)
    void thinBodiesStateTheirError(String text) {
        Shape shape = ShapeText.read(text);
        DepthColumns columns = MeshDepth.of(ShapeMeshes.of(shape, 64), false, false);
        DepthProfile found = new DepthProfile(columns.depth(), columns.volume(), columns.area(), 0);
        DepthProfile exact = shape.depthProfile(Exposure.ALL);
        assertThat(columns.relativeError()).isGreaterThan(0.03);
        for (int i = 0; i <= 100; i++) {
            double left = exact.volume(exact.deepest() * i / 100);
            if (left >= 0.1 * exact.volume(0)) {
                assertThat(found.volume(exact.deepest() * i / 100))
                        .isCloseTo(left, within(columns.relativeError() * left));
            }
        }
    }

    /** ANALYTIC: two bodies far apart are left as each alone is. */
    @Test
    void separateBodiesAddUp() {
        TriangleMesh cube = HullBodies.box(0.03, 0.03, 0.03);
        double[] unit = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        TriangleMesh pair = ShapeMeshes.both(cube, HullBodies.moved(cube, unit, 0.05, 0.01, 0.02), false);
        DepthProfile found = MeshProfiles.of(pair).all();
        for (double d = 0; d < 0.008; d += 0.001) {
            double left = 2 * Math.pow(0.03 - 2 * d, 3);
            assertThat(found.volume(d)).isCloseTo(left, within(0.005 * left));
        }
    }
}
