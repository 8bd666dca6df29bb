package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** ANALYTIC: bodies that lean or lie off the origin, by what does not change with them. */
class TiltedBodiesTest {
    private static final double[] SAME = {1, 0, 0, 0, 1, 0, 0, 0, 1};
    private static final Hull BRICK = HullBodies.block(1, 2, 3);
    /** The same brick with its middle at (3, -2, 5). */
    private static final Hull MOVED = new PolyhedronHull(HullBodies.moved(HullBodies.box(1, 2, 3), SAME, 3, -2, 5), 0);

    private static final Vec3 PLACE = new Vec3(3, -2, 5);
    private static final Vec3 TILTED = new Vec3(0.36, 0.48, 0.8);

    /** Depths and heights do not know where a body stands, and its level goes with it. */
    @Test
    void aBodyThatStandsElsewhere() {
        Draft here = Draft.of(BRICK, TILTED, 2.5);
        Draft there = Draft.of(MOVED, TILTED, 2.5);
        assertThat(there.draft()).isCloseTo(here.draft(), within(1e-9));
        assertThat(there.freeboard()).isCloseTo(here.freeboard(), within(1e-9));
        assertThat(there.level()).isCloseTo(here.level() + PLACE.dot(TILTED), within(1e-9));
        // height of a brick in this attitude: the sum of its sides along it
        assertThat(here.draft() + here.freeboard()).isCloseTo(0.36 + 0.96 + 2.4, within(1e-9));
        double whole = 2 * (2 + 3 + 6);
        Immersion tables = new Immersion(BRICK, TILTED, whole);
        Immersion elsewhere = new Immersion(MOVED, TILTED, whole);
        for (double x : new double[] {0.1, 0.5, 0.8}) {
            assertThat(elsewhere.fraction(x)).isCloseTo(tables.fraction(x), within(1e-9));
            assertThat(elsewhere.depth(x)).isCloseTo(tables.depth(x), within(1e-9));
            assertThat(elsewhere.wet(x)).isCloseTo(tables.wet(x), within(1e-9));
        }
        List<Attitude> ways = Attitudes.find(BRICK, Vec3.ZERO, 0.5);
        List<Attitude> moved = Attitudes.find(MOVED, PLACE, 3, 1);
        assertThat(moved).hasSameSizeAs(ways);
        assertThat(moved.get(0).draft()).isCloseTo(0.5, within(1e-9));
        assertThat(moved.get(0).freeboard()).isCloseTo(0.5, within(1e-9));
        assertThat(moved.get(0).looksLike(ways.get(0))).isTrue();
    }

    /** A leaning box boat, its middle anywhere, lies as deep as one at the origin. */
    @Test
    void aBoatThatStandsElsewhere() {
        double[] corners = {0.5, 1, 1.5, -0.5, 1, 1.5, -0.5, -1, 1.5, 0.5, -1, 1.5};
        double[] there = corners.clone();
        for (int i = 0; i < there.length; i += 3) {
            there[i] += 3;
            there[i + 1] -= 2;
            there[i + 2] += 5;
        }
        Vec3 mass = new Vec3(0.02, 0.03, -1.3);
        Boat here = Boat.of(new Hollow(BRICK, 1.5, new Hollow.Rim.Corners(corners), 4, 6, 0.1), mass, 3);
        Boat moved = Boat.of(new Hollow(MOVED, 6.5, new Hollow.Rim.Corners(there), 4, 6, 0.1), mass.plus(PLACE), 3);
        assertThat(here.up().x()).isLessThan(-1e-3);
        assertThat(here.up().y()).isLessThan(-1e-3);
        assertThat(moved.draft()).isCloseTo(here.draft(), within(1e-9));
        assertThat(moved.rimFreeboard()).isCloseTo(here.rimFreeboard(), within(1e-9));
        assertThat(moved.rimDips()).isCloseTo(here.rimDips(), within(2e-6));
    }

    /** A cone apex down at s = 0.7, its half angle 45 degrees: s^(1/3) of its height deep; by mass and density as by ratio. */
    @Test
    void aConeOnItsApex() {
        Hull cone = HullBodies.cone(1, 1);
        double draft = Math.cbrt(0.7);
        for (List<Attitude> ways : List.of(
                Attitudes.find(cone, cone.centroid(), 0.7),
                Attitudes.find(cone, cone.centroid(), 700 * cone.volume(), 1000))) {
            Attitude down =
                    ways.stream().filter(it -> it.up().z() == -1).findFirst().orElseThrow();
            assertThat(down.draft()).isCloseTo(draft, within(1e-9));
            assertThat(down.freeboard()).isCloseTo(1 - draft, within(1e-9));
            assertThat(down.immersedFraction()).isCloseTo(0.7, within(1e-12));
        }
        for (double[] wrong : new double[][] {{0, 1000}, {1, 0}, {-1, 1000}, {1, -1}, {Double.NaN, 1000}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Attitudes.find(cone, cone.centroid(), wrong[0], wrong[1]))
                    .withMessageContaining("must be above 0");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Attitudes.find(cone, cone.centroid(), 0))
                .withMessageContaining("density ratio 0.0 is not above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Draft.of(cone, Vec3.UP, 0))
                .withMessageContaining("is not above 0");
    }

    /** A ball whose mass hangs below its middle: GM is that distance, both ways, and it lies wherever the mass is lowest. */
    @Test
    void aBallWithAHeavySide() {
        Hull ball = HullBodies.ball(1);
        Vec3 centre = ball.centroid().minus(TILTED.times(0.1));
        List<Attitude> ways = Attitudes.find(ball, centre, 0.5);
        assertThat(ways).hasSize(1);
        assertThat(ways.get(0).up().minus(TILTED).norm()).isLessThan(1e-9);
        assertThat(ways.get(0).gmSmaller()).isCloseTo(0.1, within(1e-9));
        assertThat(ways.get(0).gmLarger()).isCloseTo(0.1, within(1e-9));
        assertThat(ways.get(0).turnsFreely()).isFalse();
        assertThat(ways.get(0).share()).isEqualTo(1);
        assertThat(Attitudes.find(ball, ball.centroid(), 0.5).get(0).gmLarger()).isZero();
    }

    /** Second moments of a rectangle: BM = L^2/12 d along it and B^2/12 d across; arms of a heel about either axis. */
    @Test
    void stabilityOfABarge() {
        Hull barge = HullBodies.block(3, 8, 2);
        Stability it = Stability.of(barge, Vec3.ZERO, Vec3.UP, 24);
        assertThat(it.bmSmaller()).isCloseTo(9 / 12.0, within(1e-12));
        assertThat(it.bmLarger()).isCloseTo(64 / 12.0, within(1e-12));
        assertThat(it.gmLarger()).isCloseTo(64 / 12.0 - 0.5, within(1e-12));
        assertThat(it.arm()).isCloseTo(0, within(1e-12));
        double t = 0.05;
        double arm = Math.sin(t) * (it.gmLarger() + it.bmLarger() * Math.tan(t) * Math.tan(t) / 2);
        assertThat(Stability.rightingArm(barge, Vec3.ZERO, Vec3.UP, new Vec3(1, 0, 0), t, 24))
                .isCloseTo(arm, within(1e-12));
        assertThat(Stability.rightingArm(barge, Vec3.ZERO, Vec3.UP, new Vec3(1, 0, 0), -t, 24))
                .isCloseTo(-arm, within(1e-12));
        // a mass 0.1 to the side has that arm at once
        assertThat(Stability.of(barge, new Vec3(0.1, 0, 0), Vec3.UP, 24).arm()).isCloseTo(0.1, within(1e-12));
        assertThat(Stability.of(barge, new Vec3(0.06, 0.08, 0), Vec3.UP, 24).arm())
                .isCloseTo(0.1, within(1e-12));
    }

    /**
     * A hollow whose outside is a ball of radius 1: whichever way it leans its middle stays 2 x - 1 below the water (x its
     * draft over its diameter), so that a point of the rim at the distance p from the middle and the angle alpha from the
     * vertical dips at a heel of acos((2 x - 1)/-p) - alpha; the first of all points counts.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.35, 0.5})
    void theRimOfAHollowBall(double share) {
        Hull ball = HullBodies.ball(1);
        Vec3 middle = ball.centroid();
        double[] rim = {0.3, 0.1, 1.9, -0.35, 0.2, 1.85, 0.05, -0.4, 1.88, 0.25, -0.25, 1.86};
        Hollow hollow = new Hollow(ball, 1.85, new Hollow.Rim.Corners(rim), 1, ball.volume(), 0.1);
        for (Vec3 up : List.of(Vec3.UP, new Vec3(0.28, 0, 0.96), new Vec3(-0.1, 0.2, 1).unit())) {
            Boat boat = Boat.of(hollow, middle.minus(up.times(0.3)), share * ball.volume());
            assertThat(boat.up().minus(up).norm()).isLessThan(1e-7);
            double level = 2 * Draft.ballDraft(share) - 1;
            double first = Double.POSITIVE_INFINITY;
            double lowest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < rim.length; i += 3) {
                Vec3 point = new Vec3(rim[i], rim[i + 1], rim[i + 2]).minus(middle);
                double alpha = Math.acos(point.unit().dot(up));
                first = Math.min(first, Math.acos(level / point.norm()) - alpha);
                lowest = Math.min(lowest, point.dot(up));
            }
            assertThat(boat.rimFreeboard()).isCloseTo(lowest - level, within(1e-6));
            assertThat(boat.rimDips()).isCloseTo(Math.min(Math.PI / 2, first), within(2e-6));
            assertThat(boat.draft()).isCloseTo(1 + level, within(1e-9));
        }
    }

    /** A round rim of radius r at the height a over the middle: p = hypot(a, r), alpha = atan(r/a); none below 90 degrees. */
    @Test
    void theRoundRimOfAHollowBall() {
        Hull ball = HullBodies.ball(1);
        Vec3 low = ball.centroid().minus(new Vec3(0, 0, 0.3));
        Hollow hollow = Hollow.round(ball, 1.8, 0.6, 1, 0.1);
        double level = 2 * Draft.ballDraft(0.6) - 1;
        assertThat(Boat.of(hollow, low, 0.6 * ball.volume()).rimDips())
                .isCloseTo(Math.acos(level) - Math.atan(0.6 / 0.8), within(1e-9));
        // leaning by a mass at the side, its low side dips by so much less
        Vec3 up = new Vec3(0.28, 0.096, 0.95520);
        double lean = Math.acos(up.unit().z());
        assertThat(Boat.of(hollow, ball.centroid().minus(up.unit().times(0.3)), 0.6 * ball.volume())
                        .rimDips())
                .isCloseTo(Math.acos(level) - Math.atan(0.6 / 0.8) - lean, within(2e-6));
        Hollow bottle = Hollow.round(ball, 1.99, 0.1, 1, 0.1);
        assertThat(Boat.of(bottle, low, 0.1 * ball.volume()).rimDips()).isEqualTo(Math.PI / 2);
    }

    /**
     * A half ball with a weight in its wall at one side: the buoyancy of a ball acts through its middle, so that it leans until
     * the mass is below that, tan = x/depth; its rim goes under at a draft of R (1 - sin). Displacement pi d^2 (3 R - d)/3.
     */
    @Test
    void howMuchALeaningBowlCarries() {
        double radius = 0.045;
        Shape bowl = Loaded.with(Bowl.ofDiameterAndWall(0.09, 0.015), new Inset(0.015, 2e-6), new Vec3(0.028, 0, 0.02));
        double displaced = 1e-4;
        for (int i = 0; i < 200; i++) {
            double mass = 1000 * displaced;
            double part = 0.015 / mass;
            double x = bowl.centroid().x() * (1 - part) + bowl.insetCentroid().x() * part;
            double below = radius
                    - (bowl.centroid().z() * (1 - part) + bowl.insetCentroid().z() * part);
            double d = radius * (1 - x / Math.hypot(x, below));
            displaced = Math.PI * d * d * (3 * radius - d) / 3;
        }
        double closed = 2 * Math.PI / 3 * radius * radius * radius;
        assertThat(displaced).isLessThan(0.95 * closed);
        double found = BoatLimit.displaced(bowl, 1000);
        assertThat(found).isCloseTo(displaced, within(1e-4 * displaced));
        assertThat(BoatLimit.stands(bowl, 999 * displaced, 1000)).isTrue();
        assertThat(BoatLimit.stands(bowl, 1001 * displaced, 1000)).isFalse();
    }

    /** A millionth of the height tells two attitudes apart: 4e-8 m of 4 cm. */
    @Test
    void howFarAttitudesMayDiffer() {
        Attitude one = new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.004, false, 0.5, 0.005);
        Attitude near = new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.004, false, 0.5, 0.005 + 3e-8);
        Attitude far = new Attitude(Vec3.UP, 0, 0.03, 0.01, 0.75, 0.002, 0.004, false, 0.5, 0.005 + 5e-8);
        assertThat(one.looksLike(near)).isTrue();
        assertThat(one.looksLike(far)).isFalse();
    }

    /** Closer than a millionth of the height: one just that far is another, in whichever figure. The height here is 1. */
    @Test
    void aMillionthIsTooFar() {
        Attitude flat = new Attitude(Vec3.UP, 0, 0, 1, 0, 0, 0, false, 0.5, 0);
        assertThat(flat.looksLike(new Attitude(Vec3.UP, 0, 1e-6, 1, 0, 0, 0, false, 0.5, 0)))
                .isFalse();
        assertThat(flat.looksLike(new Attitude(Vec3.UP, 0, 0, 1, 0, 1e-6, 0, false, 0.5, 0)))
                .isFalse();
        assertThat(flat.looksLike(new Attitude(Vec3.UP, 0, 0, 1, 0, 0, 1e-6, false, 0.5, 0)))
                .isFalse();
        assertThat(flat.looksLike(new Attitude(Vec3.UP, 0, 0, 1, 0, 0, 0, false, 0.5, 1e-6)))
                .isFalse();
        Attitude deep = new Attitude(Vec3.UP, 0, 1, 0, 0, 0, 0, false, 0.5, 0);
        assertThat(deep.looksLike(new Attitude(Vec3.UP, 0, 1, 1e-6, 0, 0, 0, false, 0.5, 0)))
                .isFalse();
        assertThat(deep.looksLike(new Attitude(Vec3.UP, 0, 1, 0.9e-6, 0, 0, 0, false, 0.5, 0)))
                .isTrue();
    }
}
