package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** ANALYTIC: bodies in an attitude, and the way from there to rest. */
class FloatingTest {
    private static final Vec3 TILTED = new Vec3(0.36, 0.48, 0.8);

    /** By the definition of an eigenvector: K e = GM e along the soft direction, and the trace is the sum of both. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.36, 0.48, 0.8", "0.7, 0.36, 0.48, 0.8", "0.5, 0.48, -0.6, 0.64", "0.8, 0, 0, 1"})
    void theSoftDirection(double s, double x, double y, double z) {
        Hull brick = HullBodies.block(1, 2, 3);
        Floating body = new Floating(brick, brick.centroid(), s * brick.volume());
        body.at(x, y, z);
        double a = Math.cos(body.softAngle());
        double b = Math.sin(body.softAngle());
        assertThat(body.kuu * a + body.kuw * b).isCloseTo(body.smallerGm() * a, within(1e-12));
        assertThat(body.kuw * a + body.kww * b).isCloseTo(body.smallerGm() * b, within(1e-12));
        assertThat(body.kuu + body.kww).isCloseTo(body.smallerGm() + body.largerGm(), within(1e-12));
        assertThat(body.kuu * body.kww - body.kuw * body.kuw)
                .isCloseTo(body.smallerGm() * body.largerGm(), within(1e-12));
        assertThat(body.slope()).isCloseTo(Math.hypot(body.gu, body.gw), within(1e-15));
        assertThat(body.size).isCloseTo(3, within(1e-12));
    }

    /** The longest side is the size, whichever it is. */
    @ParameterizedTest
    @CsvSource({"5, 2, 3", "2, 5, 3", "2, 3, 5"})
    void theSizeIsTheLongestSide(double a, double b, double c) {
        Hull brick = HullBodies.block(a, b, c);
        assertThat(new Floating(brick, Vec3.ZERO, 1).size).isCloseTo(5, within(1e-12));
    }

    /** A brick of half density lies with its shortest side upright (its other sides are saddles or summits). */
    @Test
    void aBrickComesToLieFlat() {
        Hull brick = HullBodies.block(1, 2, 3);
        for (Vec3 start : List.of(
                TILTED,
                TILTED.times(-1),
                new Vec3(0, 0, 1),
                new Vec3(0, 1, 0),
                new Vec3(1, 0, 0),
                new Vec3(0.96, 0, 0.28),
                new Vec3(-0.28, 0, 0.96))) {
            Floating body = new Floating(brick, brick.centroid(), brick.volume() / 2);
            assertThat(new Descent(body).from(start.x(), start.y(), start.z(), GeneralSearch.neutral(body)))
                    .isTrue();
            assertThat(Math.abs(body.nx)).isCloseTo(1, within(1e-12));
            assertThat(body.slope()).isLessThan(1e-12);
            // half of it under: GM = 2^2/(12 x 0.5) - 0.25 and 3^2/(12 x 0.5) - 0.25
            assertThat(body.smallerGm()).isCloseTo(4 / 6.0 - 0.25, within(1e-9));
            assertThat(body.largerGm()).isCloseTo(9 / 6.0 - 0.25, within(1e-9));
        }
    }

    /** A run that comes within a degree of an attitude found before stops there; one that does not goes on to the end. */
    @Test
    void aKnownAttitudeEndsTheRun() {
        Hull brick = HullBodies.block(1, 2, 3);
        Floating body = new Floating(brick, brick.centroid(), brick.volume() / 2);
        double neutral = GeneralSearch.neutral(body);
        double near = Math.toRadians(0.9);
        Descent known = new Descent(body);
        known.settled(new Vec3(1, 0, 0));
        assertThat(known.from(Math.cos(near), Math.sin(near), 0, neutral)).isTrue();
        assertThat(body.nx).isEqualTo(Math.cos(near));
        new Descent(body).from(Math.cos(near), Math.sin(near), 0, neutral);
        assertThat(body.nx).isCloseTo(1, within(1e-15));
        // the other way up is another attitude
        known.from(-Math.cos(near), Math.sin(near), 0, neutral);
        assertThat(body.nx).isCloseTo(-1, within(1e-15));
    }

    /** What counts as zero: 1e-8 of the size of an angular body, 1e-4 of a rounded one, or a twentieth of its error. */
    @Test
    void whatCountsAsZero() {
        assertThat(GeneralSearch.neutral(new Floating(HullBodies.block(1, 2, 3), Vec3.ZERO, 1)))
                .isCloseTo(3e-8, within(1e-20));
        assertThat(GeneralSearch.neutral(new Floating(HullBodies.cylinder(2, 1), Vec3.ZERO, 1)))
                .isCloseTo(2e-8, within(1e-20));
    }

    /** A puck lies either flat up, with half of all starts each; of equals the one with its axis up stands first. */
    @Test
    void bothFlatsOfAPuck() {
        Hull puck = HullBodies.cylinder(1, 0.4);
        List<Attitude> ways = Attitudes.find(puck, puck.centroid(), 0.8);
        assertThat(ways).hasSize(2);
        assertThat(ways.get(0).up()).isEqualTo(Vec3.UP);
        assertThat(ways.get(1).up().z()).isEqualTo(-1);
        assertThat(ways.get(0).share()).isCloseTo(0.5, within(1e-12));
        assertThat(ways.get(0).draft()).isCloseTo(0.32, within(1e-12));
        assertThat(ways.get(0).freeboard()).isCloseTo(0.08, within(1e-12));
        assertThat(ways.get(0).immersedFraction()).isCloseTo(0.8, within(1e-12));
        assertThat(ways.get(0).gmSmaller()).isCloseTo(1 / 16.0 / 0.32 - 0.04, within(1e-12));
        assertThat(ways.get(0).energy()).isCloseTo(0.04, within(1e-12));
        assertThat(ways.get(0).looksLike(ways.get(1))).isTrue();
    }

    /**
     * The share of an attitude is that of the sphere up to where the righting arm changes its sign, (1 - cos)/2: the turning
     * point of a dome found here by halving on the arm alone.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8})
    void sharesOfADome(double s) {
        Hull dome = HullBodies.dome(35, 25);
        double displaced = s * dome.volume();
        double low = 0.01;
        double high = Math.PI - 0.01;
        while (high - low > 1e-12) {
            double middle = (low + high) / 2;
            boolean back =
                    Stability.rightingArm(dome, dome.centroid(), Vec3.UP, new Vec3(0, 1, 0), middle, displaced) > 0;
            low = back ? middle : low;
            high = back ? high : middle;
        }
        // a mass beside the axis by 2e-8 of 70 is rounding, and the shares are exact still
        List<Attitude> ways = Attitudes.find(dome, dome.centroid().plus(new Vec3(2e-8, 0, 0)), s);
        assertThat(ways).hasSize(2);
        for (Attitude way : ways) {
            double share = (1 - Math.cos(low)) / 2;
            assertThat(way.share()).isCloseTo(way.up().z() > 0 ? share : 1 - share, within(1e-9));
        }
        assertThat(ways.get(0).share()).isGreaterThanOrEqualTo(ways.get(1).share());
    }

    /** Attitudes look alike where every figure does; one that differs is enough to tell them apart. */
    @Test
    void attitudesThatLookAlike() {
        Attitude one = new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.004, false, 0.5, 0.005);
        assertThat(one.looksLike(new Attitude(TILTED, 1, 0.03, 0.01, 0.75, 0.002, 0.004, false, 0.1, 0.005)))
                .isTrue();
        assertThat(one.looksLike(new Attitude(Vec3.UP, 0, 0.031, 0.01, 0.75, 0.002, 0.004, false, 0.5, 0.005)))
                .isFalse();
        assertThat(one.looksLike(new Attitude(Vec3.UP, 0, 0.03, 0.011, 0.75, 0.002, 0.004, false, 0.5, 0.005)))
                .isFalse();
        assertThat(one.looksLike(new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.0021, 0.004, false, 0.5, 0.005)))
                .isFalse();
        assertThat(one.looksLike(new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.0041, false, 0.5, 0.005)))
                .isFalse();
        assertThat(one.looksLike(new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.004, true, 0.5, 0.005)))
                .isFalse();
        assertThat(one.looksLike(new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.004, false, 0.5, 0.0051)))
                .isFalse();
    }

    /** Archimedes: what is heavier than the water it can displace lies wholly under; nothing displaces nothing. */
    @Test
    void drafts() {
        Hull brick = HullBodies.block(1, 2, 3);
        Draft sunk = Draft.of(brick, Vec3.UP, 6);
        assertThat(sunk.submerged()).isTrue();
        assertThat(sunk.draft()).isCloseTo(3, within(1e-12));
        assertThat(sunk.freeboard()).isZero();
        assertThat(sunk.level()).isNaN();
        Draft afloat = Draft.of(brick, Vec3.UP, 4);
        assertThat(afloat.submerged()).isFalse();
        assertThat(afloat.draft()).isCloseTo(2, within(1e-12));
        assertThat(afloat.freeboard()).isCloseTo(1, within(1e-12));
        assertThat(afloat.immersedFraction()).isCloseTo(2 / 3.0, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> Draft.of(brick, Vec3.UP, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Draft.of(brick, Vec3.UP, Double.NaN));
        for (double displaced : new double[] {0, 6}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Draft.level(brick, 0, 0, 1, displaced, 0, new PlaneCut()));
        }
        // from any guess, within the body or beside it, and for a body on its edge, whose water plane grows from a line
        for (double guess : new double[] {-5, -1.4, 0.2, 1.4, 5, Double.NaN}) {
            assertThat(Draft.level(brick, 0, 0, 1, 4, guess, new PlaneCut())).isCloseTo(0.5, within(1e-12));
            Hull cube = HullBodies.block(1, 1, 1);
            // a wedge of the depth h below the edge holds h^2: a ninth is a third deep, from the edge at -sqrt(1/2)
            double level = Draft.level(cube, Math.sqrt(0.5), 0, Math.sqrt(0.5), 1 / 9.0, guess, new PlaneCut());
            assertThat(level).isCloseTo(1 / 3.0 - Math.sqrt(0.5), within(1e-12));
        }
        // a ball off the origin: x^2 (3 - 2 x) at x = 1/4 is 5/32
        Hull ball = Sphere.ofDiameter(0.08).hull().orElseThrow();
        double level = Draft.level(ball, 0.6, 0, 0.8, ball.volume() * 5 / 32, Double.NaN, new PlaneCut());
        double centre = ball.centroid().dot(new Vec3(0.6, 0, 0.8));
        assertThat(level).isCloseTo(centre - 0.02, within(1e-12));
    }
}
