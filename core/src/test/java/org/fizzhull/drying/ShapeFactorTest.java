package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fizzhull.shape.Block;
import org.fizzhull.shape.Bowl;
import org.fizzhull.shape.Dome;
import org.fizzhull.shape.Exposure;
import org.fizzhull.shape.Puck;
import org.fizzhull.shape.Ring;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.Sphere;
import org.junit.jupiter.api.Test;

/** The shape correction c. */
class ShapeFactorTest {
    private static double c(Shape shape, Exposure exposure) {
        return ShapeFactor.of(shape, exposure).value();
    }

    /** OTHER PROGRAM: the prototype of the chain sheet, E, to its last digit. */
    @Test
    void agreesWithTheSheet() {
        assertThat(c(Dome.ofDiameter(0.08), Exposure.ALL)).isCloseTo(1.140, within(3e-3));
        assertThat(c(Puck.ofDiameterAndHeight(0.065, 0.065), Exposure.ALL)).isCloseTo(1.128, within(6e-4));
        assertThat(c(Puck.ofDiameterAndHeight(0.070, 0.028), Exposure.ALL)).isCloseTo(1.156, within(6e-4));
        assertThat(c(Puck.ofDiameterAndHeight(0.1, 0.02), Exposure.ALL)).isCloseTo(1.112, within(6e-4));
        assertThat(c(Puck.ofDiameterAndHeight(0.05, 0.1), Exposure.ALL)).isCloseTo(1.083, within(6e-4));
        assertThat(c(Block.ofSides(0.05, 0.05, 0.05), Exposure.ALL)).isCloseTo(1.210, within(6e-4));
        assertThat(c(Block.ofSides(0.06, 0.04, 0.03), Exposure.ALL)).isCloseTo(1.199, within(6e-4));
    }

    /** ANALYTIC: 1 for a ball, a ring, a thin shell, and for a dome on its tray, which is half a ball. */
    @Test
    void oneWhereTheProfileIsExact() {
        assertThat(c(Sphere.ofDiameter(0.065), Exposure.ALL)).isEqualTo(1);
        assertThat(c(new Ring(0.09, 0.03), Exposure.ALL)).isEqualTo(1);
        assertThat(c(new Bowl(0.09, 0.015), Exposure.ALL)).isEqualTo(1);
        assertThat(c(Dome.ofDiameter(0.08), Exposure.TRAY)).isCloseTo(1, within(2e-3));
    }

    /**
     * ANALYTIC: tau is R^2/15 for a ball, H^2/12 for a wide plate, R^2/8 for a long rod, by series, profile and
     * Poisson.
     */
    @Test
    void timeConstants() {
        double r = 0.03;
        assertThat(DryingTime.ofProfile(Profiles.ball(r))).isCloseTo(r * r / 15, withinPercentage(0.01));
        assertThat(DryingTime.ofProfile(Profiles.slab(r))).isCloseTo(r * r / 3, withinPercentage(0.01));
        assertThat(DryingTime.ofProfile(Profiles.longCylinder(r))).isCloseTo(r * r / 8, withinPercentage(0.01));
        assertThat(DryingTime.cylinder(2 * r, 1e4 * r)).isCloseTo(r * r / 8, withinPercentage(0.1));
        assertThat(DryingTime.cylinder(1e4 * r, r)).isCloseTo(r * r / 12, withinPercentage(0.1));
        assertThat(DryingTime.block(1e3 * r, 1e3 * r, r)).isCloseTo(r * r / 12, withinPercentage(0.5));
        var ball = new AxisymmetricPoisson(z -> Math.sqrt(Math.max(0, r * r - z * z)), r, -r, r, false);
        assertThat(ball.mean(4 * Math.PI / 3 * r * r * r)).isCloseTo(r * r / 15, withinPercentage(0.2));
        var stump = new AxisymmetricPoisson(z -> r, r, 0, 2 * r, true);
        assertThat(stump.mean(2 * Math.PI * r * r * r))
                .isCloseTo(DryingTime.cylinder(2 * r, 4 * r), withinPercentage(0.2));
    }
}
