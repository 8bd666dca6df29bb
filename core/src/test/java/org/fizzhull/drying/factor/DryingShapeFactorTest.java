package org.fizzhull.drying.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.body.DryingSeries;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shape factor of drying, by the solver in radius and height and by the one in space. */
class DryingShapeFactorTest {
    /** OTHER PROGRAM (validation/reference/diffusion.py), to three digits; tolerance 0.3 %. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    dome(diameter=80 mm)                           | ALL | 1.140
                    puck(diameter=65 mm, height=65 mm)             | ALL | 1.128
                    puck(diameter=70 mm, height=28 mm)             | ALL | 1.156
                    puck(diameter=100 mm, height=20 mm)            | ALL | 1.112
                    puck(diameter=50 mm, height=100 mm)            | ALL | 1.083
                    block(length=50 mm, width=50 mm, height=50 mm) | ALL | 1.210
                    block(length=60 mm, width=40 mm, height=30 mm) | ALL | 1.199
                    """)
    void agreesWithTheReference(String text, DepthProfile.Exposure exposure, double expected) {
        assertThat(factor(ShapeText.read(text), exposure)).isCloseTo(expected, within(0.003 * expected));
    }

    /**
     * ANALYTIC: 1 for a ball, and for a dome on its tray, which is half of one. Half a puck on a tray is half of the puck
     * of twice the height; 1.20640 for the block is its double sine series of a block of twice the height over its own
     * profile on the tray (computed apart from this library).
     */
    @Test
    void ballsAndTrays() {
        assertThat(factor(Sphere.ofDiameter(0.065), DepthProfile.Exposure.ALL)).isCloseTo(1, within(2e-3));
        assertThat(factor(Dome.ofDiameter(0.08), DepthProfile.Exposure.TRAY)).isCloseTo(1, within(2e-3));
        assertThat(factor(Block.ofSides(0.06, 0.04, 0.03), DepthProfile.Exposure.TRAY))
                .isCloseTo(1.2064, within(0.004));
        // a solid body is wet on its outside everywhere: D^2/60, and the series of the sharp bodies
        assertThat(Sphere.ofDiameter(0.06)
                        .diffusionTime(DepthProfile.Exposure.OUTSIDE)
                        .orElseThrow())
                .isCloseTo(6e-5, within(1e-18));
        for (Shape sharp :
                List.of(Block.ofSides(0.06, 0.04, 0.03), ShapeText.read("puck(diameter=65 mm, height=65 mm)"))) {
            assertThat(sharp.diffusionTime(DepthProfile.Exposure.OUTSIDE))
                    .isEqualTo(sharp.diffusionTime(DepthProfile.Exposure.ALL));
        }
        Shape belted = Sphere.ofDiameterAndSeam(0.065, 1e-6);
        assertThat(factor(belted, DepthProfile.Exposure.ALL))
                .as("by the solver")
                .isCloseTo(1, within(2e-3));
    }

    /**
     * ANALYTIC: straight across a thickness that falls evenly from T to 0, tau is T^2/40 in a wide cone, with the base shut
     * four times as much. By hand: INT t^3 dS/(12 INT t dS). A mesh of 128 sides holds 0.04 % less.
     */
    @Test
    void thinBodiesDryStraightAcross() {
        Shape meshed =
                MeshShape.of("hat.stl", "mm", HullBodies.turned(new double[][] {{0, 0}, {0.2, 0}, {0, 1e-3}}, 128));
        assertThat(meshed.diffusionTime(DepthProfile.Exposure.ALL).orElseThrow())
                .isCloseTo(1e-6 / 40, within(0.02 * 1e-6 / 40));
        Shape cone = ShapeText.read("cone(diameter=400 mm, height=1 mm)");
        assertThat(cone.diffusionTime(DepthProfile.Exposure.ALL).orElseThrow())
                .isCloseTo(1e-6 / 40, within(0.01 * 1e-6 / 40));
        assertThat(cone.diffusionTime(DepthProfile.Exposure.TRAY).orElseThrow())
                .isCloseTo(1e-6 / 10, within(0.01 * 1e-6 / 10));
        assertThat(factor(cone, DepthProfile.Exposure.ALL)).isCloseTo(1.5, within(0.015));
    }

    /** ANALYTIC: R^2/8 for a long rod, H^2/12 for a wide plate. */
    @Test
    void seriesAtTheirLimits() {
        double r = 0.03;
        assertThat(DryingSeries.cylinder(2 * r, 1e4 * r)).isCloseTo(r * r / 8, within(1e-3 * r * r / 8));
        assertThat(DryingSeries.cylinder(1e4 * r, r)).isCloseTo(r * r / 12, within(1e-3 * r * r / 12));
        assertThat(DryingSeries.block(1e3 * r, 1e3 * r, r)).isCloseTo(r * r / 12, within(5e-3 * r * r / 12));
    }

    /**
     * ANALYTIC: c is not a matter of size; a thin ring is a long rod, c = 1, and the thicker the tube the larger c. By
     * Rayleigh's principle c is nowhere below 1.
     */
    @Test
    void ringsAndSizes() {
        double thin = factor(new Ring(0.2, 0.02), DepthProfile.Exposure.ALL);
        double thick = factor(new Ring(0.09, 0.04), DepthProfile.Exposure.ALL);
        assertThat(thin).isCloseTo(1, within(2e-3));
        assertThat(thick).isGreaterThan(1.01);
        assertThat(factor(new Ring(0.045, 0.02), DepthProfile.Exposure.ALL)).isCloseTo(thick, within(1e-6));
    }

    /** The solver in radius and height against the series: a puck whose edge is all but sharp. */
    @Test
    void solverAgainstSeries() {
        Puck sharp = Puck.ofDiameterAndHeight(0.07, 0.03);
        Puck blunt = Puck.ofDiameterHeightAndEdge(0.07, 0.03, 2e-5);
        for (DepthProfile.Exposure exposure :
                new DepthProfile.Exposure[] {DepthProfile.Exposure.ALL, DepthProfile.Exposure.TRAY}) {
            assertThat(factor(blunt, exposure)).isCloseTo(factor(sharp, exposure), within(0.003));
        }
    }

    /** The two solvers share no code; a mesh of 64 facets round loses 0.1 % of the size. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    dome(diameter=80 mm)                          | ALL
                    dome(diameter=100 mm, height=35 mm)           | TRAY
                    bowl(diameter=60 mm, wall=28 mm)              | ALL
                    cone(diameter=75 mm, height=35 mm, top=55 mm) | TRAY
                    egg(length=70 mm, diameter=50 mm)             | ALL
                    ring(diameter=90 mm, tube=40 mm)              | ALL
                    """)
    void bothSolversAgree(String text, DepthProfile.Exposure exposure) {
        Shape shape = ShapeText.read(text);
        DepthProfile any = shape.depthProfile(exposure);
        MeshShape mesh = MeshShape.of("a.stl", "mm", ShapeMeshes.of(shape, 64), side -> any);
        assertThat(factor(mesh, exposure)).isCloseTo(factor(shape, exposure), within(0.005));
    }

    /** ANALYTIC: tau = R^2/15 along the profile of a ball, H^2/12 of a plate far wider than high. */
    @Test
    void timesAlongTheProfile() {
        double r = 0.03;
        double ball = DryingShapeFactor.profileTime(Sphere.ofDiameter(2 * r).depthProfile(DepthProfile.Exposure.ALL));
        assertThat(ball).isCloseTo(r * r / 15, within(1e-6 * r * r / 15));
    }

    @Test
    void unknownFormHasNoFactor() {
        assertThat(DryingShapeFactor.of(Filled.ofWater(0.1, Filled.Family.FIGURE), DepthProfile.Exposure.ALL))
                .isEmpty();
    }

    private static double factor(Shape shape, DepthProfile.Exposure exposure) {
        return DryingShapeFactor.of(shape, exposure).orElseThrow();
    }
}
