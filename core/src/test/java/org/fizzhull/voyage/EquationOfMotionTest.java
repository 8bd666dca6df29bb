package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.EquationOfMotion.Way;
import org.junit.jupiter.api.Test;

/** Rates and events of a ball without clinging gas, by its geometry and mechanics; signs by what an event is. */
class EquationOfMotionTest {
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final double AREA = 4 * Math.PI * R * R;
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final double SPEED = 5e-3 / 60;
    private static final Shape BALL = Sphere.ofDiameter(2 * R);

    private static EquationOfMotion of(Shape shape, Release release, double mass, double layerRatio) {
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, layerRatio, 0, 0.65);
        Launch launch = Launch.of(new Piece(shape, mass, Makeup.usual()), BATH, fizz, new VoyageParameters(0, 0));
        return new EquationOfMotion(new VoyageState(VoyageForm.of(shape, release), BATH, launch));
    }

    private static EquationOfMotion ball(double mass) {
        return of(BALL, Release.DROPPED, mass, 0);
    }

    /** State of a whole ball with its centre so deep, m, and that upward speed, m/s. */
    private static double[] at(double centre, double speed) {
        return new double[] {WHOLE, 0, centre, speed, 0, 0};
    }

    /** What moves: the depth falls by the speed, gas is shared out between surface and bath by exp(-depth/0.5 m). */
    @Test
    void ratesOfAFreePiece() {
        EquationOfMotion course = ball(0.15);
        double[] rate = new double[EquationOfMotion.SIZE];
        assertThat(course.rated(0, at(0.2, 0.1), rate)).isEqualTo(0.2);
        assertThat(rate[EquationOfMotion.VOLUME]).isCloseTo(-AREA * SPEED, withinPercentage(1e-4));
        assertThat(rate[EquationOfMotion.CENTRE]).isEqualTo(-0.1);
        double made = 0.15 / WHOLE * Makeup.USUAL_GAS_CAPACITY * SPEED * AREA;
        double seen = 0.65 * Math.exp(-0.4);
        assertThat(rate[EquationOfMotion.GAS]).isCloseTo(made * seen, withinPercentage(1e-4));
        assertThat(rate[EquationOfMotion.DISSOLVED]).isCloseTo(made * (1 - seen), withinPercentage(1e-4));
        assertThat(rate[EquationOfMotion.SPEED]).isEqualTo(course.moment.acceleration);
        double[] same = new double[EquationOfMotion.SIZE];
        course.rate(0, at(0.2, 0.1), same);
        assertThat(same).isEqualTo(rate);
    }

    /** What lies still has no speed; on the bottom its centre is half its height above it. */
    @Test
    void ratesOnTheBottom() {
        EquationOfMotion course = ball(0.2);
        course.turn(Way.BOTTOM, 3, at(0.2, 0));
        double[] rate = new double[EquationOfMotion.SIZE];
        assertThat(course.rated(4, at(0.2, 0.1), rate)).isCloseTo(BATH.depth() - R, within(1e-12));
        assertThat(rate[EquationOfMotion.CENTRE]).isZero();
        assertThat(rate[EquationOfMotion.SPEED]).isZero();
        assertThat(rate[EquationOfMotion.LAYER]).isZero();
        assertThat(rate[EquationOfMotion.VOLUME]).isCloseTo(-AREA * SPEED, withinPercentage(1e-4));
        double seen = 0.65 * Math.exp(-(BATH.depth() - R) / 0.5);
        assertThat(rate[EquationOfMotion.GAS] / rate[EquationOfMotion.DISSOLVED])
                .isCloseTo(seen / (1 - seen), withinPercentage(1e-6));
        // spare of a heavy ball under water, negative: it stays; of a light one positive: it lifts off
        assertThat(course.lifted(4, at(0.2, 0))).isCloseTo(RHO * WHOLE - 0.2, within(1e-9));
    }

    /** A layer that lacks all of its thickness lacks 1/e of it a second later, in a way without motion. */
    @Test
    void theLayerFillsByAnExponential() {
        EquationOfMotion course = of(BALL, Release.DROPPED, 0.1, 0.45);
        double[] y = at(0, 0);
        course.moment.erode(WHOLE);
        course.turn(Way.AFLOAT, 5, y);
        double full = course.moment.fullLayer;
        assertThat(full).isPositive();
        assertThat(course.layer(5, y)).isCloseTo(0, within(1e-15));
        assertThat(course.layer(6, y)).isCloseTo(full * (1 - Math.exp(-1)), withinPercentage(1e-9));
        // a free piece carries what its state says
        course.turn(Way.FREE, 6, y);
        assertThat(y[EquationOfMotion.LAYER]).isCloseTo(full * (1 - Math.exp(-1)), withinPercentage(1e-9));
        assertThat(course.layer(60, y)).isEqualTo(y[EquationOfMotion.LAYER]);
    }

    /** 1 % of the body is the end. */
    @Test
    void theEnd() {
        EquationOfMotion course = ball(0.15);
        double[] y = at(0, 0);
        assertThat(course.ended(0, y)).isCloseTo(-0.99, within(1e-9));
        y[EquationOfMotion.VOLUME] = 0.004 * WHOLE;
        assertThat(course.ended(0, y)).isCloseTo(0.006, within(1e-9));
    }

    /** It lands where it moves down through the bottom, or is a tenth of a millimetre below it; not on its way up. */
    @Test
    void touchingTheBottom() {
        EquationOfMotion course = ball(0.15);
        double bottom = BATH.depth() - R;
        assertThat(course.touched(0, at(bottom - 0.01, -0.1))).isCloseTo(-0.01, within(1e-9));
        assertThat(course.touched(0, at(bottom + 1e-5, -0.1))).isCloseTo(1e-5, within(1e-9));
        assertThat(course.touched(0, at(bottom + 1e-5, 0.05))).isNegative();
        assertThat(course.touched(0, at(bottom + 1e-5, -0.5e-3))).isNegative();
        assertThat(course.touched(0, at(bottom + 3e-4, 0.05))).isCloseTo(2e-4, within(1e-9));
        assertThat(course.aground()).isCloseTo(bottom, within(1e-9));
        assertThat(course.under(at(0.05, 0))).isCloseTo(0.05 - R, within(1e-9));
    }

    /** It has come to rest where speed and force are small and it sticks out: a fast or an unbalanced one has not. */
    @Test
    void comingToRest() {
        double x = 0.7;
        EquationOfMotion course = ball(RHO * WHOLE * x * x * (3 - 2 * x));
        double rest = R * (2 * x - 1);
        assertThat(course.settled(0, at(rest, 0))).isPositive();
        assertThat(course.settled(0, at(rest, 1e-3))).isPositive();
        // 1 - (U/2 mm/s)^2 decides alone beyond 2 mm/s
        assertThat(course.settled(0, at(rest, 4e-3))).isCloseTo(-3, within(1e-9));
        assertThat(course.settled(0, at(rest, -4e-3))).isCloseTo(-3, within(1e-9));
        assertThat(course.settled(0, at(rest + 0.002, 0))).as("pushed up").isNegative();
        assertThat(course.settled(0, at(rest - 0.002, 0))).as("pushed down").isNegative();
        assertThat(ball(1.01 * RHO * WHOLE).settled(0, at(R, 0))).as("sinks").isNegative();
        // spare when wholly under
        assertThat(course.sunk(0, at(rest, 0))).isCloseTo(RHO * WHOLE * (x * x * (3 - 2 * x) - 1), within(1e-9));
    }

    /** A boat swamps where it weighs more than it displaces up to its rim; its wall of 15 mm is pierced after 15 mm. */
    @Test
    void aBoat() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        double limit = RHO * bowl.hollow().orElseThrow().carried();
        double grams = 5e-3;
        EquationOfMotion light = of(bowl, Release.PLACED, limit - grams, 0);
        double[] y = {bowl.volume(), 0, 0, 0, 0, 0};
        light.turn(Way.BOAT, 0, y);
        y[EquationOfMotion.VOLUME] = light.moment.stage.grid().volumeAt(0);
        assertThat(light.swamped(0, y)).isCloseTo(-grams, within(1e-6));
        assertThat(of(bowl, Release.PLACED, limit + grams, 0).swamped(0, y)).isCloseTo(grams, within(1e-6));
        assertThat(light.pierced(0, y)).isEqualTo(-1);
        assertThat(light.pierced(0.0075 / SPEED, y)).isCloseTo(-0.5, within(1e-6));
        assertThat(light.pierced(0.03 / SPEED, y)).isCloseTo(1, within(1e-6));
        // a half ball of radius 45 mm that floats by its weight: displaced m/rho of the closed hull
        light.set(0, y);
        double closed = 2 * Math.PI / 3 * Math.pow(0.045, 3);
        assertThat(light.moment.fraction).isCloseTo((limit - grams) / RHO / closed, withinPercentage(0.01));
    }

    /** Boyle: the air of a hollow upside down at a depth d is pressed to p0/(p0 + rho g d) of its volume. */
    @Test
    void airUnderWaterIsPressedTogether() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        EquationOfMotion course = of(bowl, Release.UPSIDE_DOWN, 0.17, 0);
        course.moment.erode(course.moment.stage.grid().volumeAt(0));
        course.moment.dive(0.3);
        double squeezed = 101325 / (101325 + RHO * PhysicalConstants.GRAVITY * 0.3);
        double hollow = 2 * Math.PI / 3 * Math.pow(0.03, 3);
        assertThat(course.moment.hollowVolume()).isCloseTo(hollow, withinPercentage(0.01));
        assertThat(course.moment.pocket).isCloseTo(hollow * squeezed, withinPercentage(0.01));
        course.moment.flood();
        course.moment.erode(bowl.volume());
        course.moment.dive(0.3);
        assertThat(course.moment.pocket).isZero();
    }
}
