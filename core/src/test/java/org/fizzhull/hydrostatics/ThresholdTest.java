package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.Hull;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where an attitude becomes stable: the sign change of the smaller metacentric height, found from the code, against the
 * closed form. Closed forms: docs/physics/hydrostatics.md, 2.
 */
class ThresholdTest {
    private static final Vec3 DOWN = new Vec3(0, 0, -1);
    private static final Vec3 CORNER = new Vec3(1, 1, 1).unit();

    private static double gm(Hull hull, Vec3 up, double s) {
        return Stability.of(hull, hull.centroid(), up, s * hull.volume()).gmSmaller();
    }

    private static double root(DoubleUnaryOperator f, double low, double high) {
        double a = low;
        double b = high;
        boolean rising = f.applyAsDouble(b) > 0;
        assertThat(f.applyAsDouble(a) > 0).as("a change of sign").isNotEqualTo(rising);
        for (int i = 0; i < 50; i++) {
            double m = (a + b) / 2;
            if (f.applyAsDouble(m) > 0 == rising) {
                b = m;
            } else {
                a = m;
            }
        }
        return (a + b) / 2;
    }

    /** SECOND-HAND (textbook exercise, answer as printed) and ANALYTIC: L/D = 1/sqrt(8 s (1 - s)); sides computed. */
    @ParameterizedTest
    @CsvSource({
        ".5, .707106781, 1.000000000",
        ".6, .721687836, .987481288",
        ".7, .771516750, .947521682",
        ".8, .883883476, .870673267",
        ".9, 1.178511302, .726611251"
    })
    void cylinderUprightAndOnItsSide(double s, double upright, double side) {
        assertThat(root(x -> gm(HullBodies.cylinder(1, x), Vec3.UP, s), .4, 2)).isCloseTo(upright, within(1e-8));
        assertThat(upright).isCloseTo(1 / Math.sqrt(8 * s * (1 - s)), within(1e-9));
        // on its side one metacentric height is 0 for good: the other decides
        assertThat(root(
                        x -> {
                            Hull hull = HullBodies.cylinder(1, x);
                            Stability it = Stability.of(hull, hull.centroid(), new Vec3(1, 0, 0), s * hull.volume());
                            return it.gmSmaller() + it.gmLarger();
                        },
                        .4,
                        2))
                .isCloseTo(side, within(1e-8));
    }

    /** SECOND-HAND (textbook): s = .65 max L/D .741249317; s = 2/3 max L/D 3/4. */
    @Test
    void cylindersOfTheTextbooks() {
        assertThat(root(x -> gm(HullBodies.cylinder(1, x), Vec3.UP, .65), .4, 2))
                .isCloseTo(.741249317, within(1e-9));
        assertThat(root(x -> gm(HullBodies.cylinder(1, x), Vec3.UP, 2 / 3.), .4, 2))
                .isCloseTo(.75, within(1e-12));
    }

    /** ANALYTIC: a cube lies level up to s = 1/2 - 1/sqrt 12 and again from 1/2 + 1/sqrt 12. */
    @Test
    void cubeFaceDown() {
        Hull cube = HullBodies.block(1, 1, 1);
        assertThat(root(s -> gm(cube, Vec3.UP, s), .05, .5)).isCloseTo(.5 - 1 / Math.sqrt(12), within(1e-12));
        assertThat(root(s -> gm(cube, Vec3.UP, s), .5, .95)).isCloseTo(.5 + 1 / Math.sqrt(12), within(1e-12));
    }

    /** ANALYTIC: corner down from s = 1/6 exactly, and by duality up to 5/6. */
    @Test
    void cubeCornerDown() {
        Hull cube = HullBodies.block(1, 1, 1);
        assertThat(root(s -> gm(cube, CORNER, s), .1, .4)).isCloseTo(1 / 6., within(1e-9));
        assertThat(root(s -> gm(cube, CORNER, s), .6, .9)).isCloseTo(5 / 6., within(1e-9));
    }

    /**
     * OTHER PROGRAM (validation/reference/afloat.py): the tilted ring and the corner have the same energy at s =
     * .226892677.
     */
    @Test
    void cubeRingAndCornerOfEqualEnergy() {
        Hull cube = HullBodies.block(1, 1, 1);
        double s = root(
                x -> {
                    double tilt = Math.atan(Math.sqrt(12 * x * (1 - x) - 2));
                    Vec3 ring = new Vec3(Math.sin(tilt), 0, Math.cos(tilt));
                    return Stability.of(cube, Vec3.ZERO, ring, x).energy()
                            - Stability.of(cube, Vec3.ZERO, CORNER, x).energy();
                },
                .22,
                .24);
        assertThat(s).isCloseTo(.226892677, within(1e-9));
    }

    /** Reid 1963 (abstract seen), COMPUTED: a long square bar lies at 45 degrees from 9/32 to 23/32. */
    @Test
    void squareBarAt45Degrees() {
        Hull bar = HullBodies.block(1, 6, 1);
        Vec3 edge = new Vec3(1, 0, 1).unit();
        assertThat(root(s -> gm(bar, edge, s), .2, .5)).isCloseTo(9 / 32., within(1e-12));
        assertThat(root(s -> gm(bar, edge, s), .5, .8)).isCloseTo(23 / 32., within(1e-12));
        assertThat(root(s -> gm(bar, Vec3.UP, s), .05, .5)).isCloseTo(.211324865, within(1e-9));
    }

    /** ANALYTIC: a cone floats apex down from s = cos^6 of its half angle, apex up to 1 - cos^6. */
    @ParameterizedTest
    @CsvSource({"20, .688517", "30, .421875", "40, .202080", "45, .125"})
    void cone(double degrees, double printed) {
        Hull cone = HullBodies.cone(Math.tan(Math.toRadians(degrees)), 1);
        double expected = Math.pow(Math.cos(Math.toRadians(degrees)), 6);
        assertThat(expected).isCloseTo(printed, within(5e-7));
        assertThat(root(s -> gm(cone, DOWN, s), .01, .99)).isCloseTo(expected, within(1e-10));
        assertThat(root(s -> gm(cone, Vec3.UP, s), .01, .99)).isCloseTo(1 - expected, within(1e-10));
    }

    /** SECOND-HAND (textbook: 39.12 degrees, .8879 H), digits COMPUTED: the slimmest cone of s = .7 and its draft. */
    @Test
    void slimmestCone() {
        double half = root(a -> gm(HullBodies.cone(Math.tan(a), 1), DOWN, .7), .1, .7);
        assertThat(2 * Math.toDegrees(half)).isCloseTo(39.121654, within(1e-6));
        Hull cone = HullBodies.cone(Math.tan(half), 1);
        assertThat(Draft.of(cone, DOWN, .7 * cone.volume()).draft()).isCloseTo(.887904002, within(1e-9));
    }
}
