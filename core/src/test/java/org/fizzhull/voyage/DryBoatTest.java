package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import java.util.Optional;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.hydrostatics.Immersion;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * ANALYTIC: a boat whose outside is a slab that recedes from one side of area A: V0 - A d is left at the depth d. With rho_b its
 * density, h the hollow and m what it carries, the spare is rho (V + h) - rho_b V - m.
 */
class DryBoatTest {
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final double V0 = 1e-4;
    private static final double AREA = 5e-3;
    private static final double HOLLOW = 6e-5;
    private static final double SPEED = 1e-4;
    private static final double RHO_B = 0.7 * RHO;
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private final OutcomeTracker verdict = new OutcomeTracker();
    private final ForceBalance balance = new ForceBalance(new BathProperties(BATH, 0.02));

    @BeforeEach
    void launch() {
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 0.65);
        Piece piece = new Piece(BALL, RHO_B * BALL.volume(), Piece.Makeup.usual());
        balance.set(Launch.of(piece, BATH, fizz, new VoyageParameters(0, 0)), BALL.volume());
        verdict.start(true, V0);
    }

    /** Half of the faces wet at any draft but wholly under: a prism all flat. */
    private static Stage stage(double side, double wall, double above) {
        DepthProfile slab =
                new DepthProfile(new double[] {0, V0 / AREA}, new double[] {V0, 0}, new double[] {AREA, AREA}, 0);
        ErosionGrid grid = new ErosionGrid(slab, 200);
        return new Stage(
                grid,
                new AfloatFront(Optional::empty, grid),
                Immersion.ofPrism((1 - side) / 2, 1),
                2,
                1e-5,
                HOLLOW,
                above,
                wall);
    }

    private static double room(double left) {
        return left + HOLLOW + 1e-5;
    }

    /** The rim, 1e-5 m3 below the top, goes under at V (rho - rho_b) = m - rho (h + V_i - 1e-5), at half of the speed. */
    @Test
    void theRimGoesUnder() {
        double left = 4e-5;
        double carried = (RHO - RHO_B) * left + RHO * HOLLOW;
        DryBoat boat = new DryBoat(balance, verdict, carried);
        double back = boat.walk(stage(0, 1, 1e-5), 1, 1, SPEED, false);
        assertThat(back).isCloseTo(left, withinPercentage(0.01));
        assertThat(boat.time).isCloseTo((V0 - left) / AREA / (SPEED / 2), withinPercentage(0.01));
        double spare = (RHO - RHO_B) * (V0 - left);
        assertThat(boat.margin).isCloseTo(spare / (RHO * room(V0)), withinPercentage(1e-6));
        assertThat(boat.reserve).isCloseTo(spare / (RHO * room(V0)), withinPercentage(1e-6));
        assertThat(verdict.outcome).isEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);
    }

    /** Too heavy from the start it fills at once, whole. */
    @Test
    void itFillsAtOnce() {
        double carried = 1.1 * RHO * room(V0) - RHO_B * V0;
        DryBoat boat = new DryBoat(balance, verdict, carried);
        assertThat(boat.walk(stage(0, 1, 0), 1, 1, SPEED, false)).isEqualTo(V0);
        assertThat(boat.time).isZero();
        assertThat(boat.margin).isCloseTo(0.1, within(1e-9));
        assertThat(boat.reserve).isCloseTo(-0.1, within(1e-9));
        assertThat(verdict.afloat).isFalse();
    }

    /** A wall of 6 mm is wet all the time: pierced at 6 mm/v, when the faces, wet by half, have come 3 mm. */
    @Test
    void theWallIsPierced() {
        DryBoat boat = new DryBoat(balance, verdict, 0);
        double back = boat.walk(stage(0, 6e-3, 0), 1, 1, SPEED, false);
        assertThat(boat.time).isCloseTo(60, within(1e-9));
        assertThat(back).isCloseTo(V0 - 3e-3 * AREA, withinPercentage(1e-6));
    }

    /** Carrying nothing it lasts until a hundredth is left. */
    @Test
    void itLasts() {
        DryBoat boat = new DryBoat(balance, verdict, 0);
        assertThat(boat.walk(stage(0, 1, 0), 1, 1, SPEED, false)).isZero();
        assertThat(boat.time).isCloseTo(0.99 * V0 / AREA / (SPEED / 2), withinPercentage(1e-4));
    }

    /**
     * A side that gets wet by the draft: wet share (1 - s)/2 + s x, x the load over what displaces; twice the volume in the true
     * piece, of which 1e-5 m3 stay above the rim. By Euler's rule in small steps.
     */
    @Test
    void whatIsWetFollowsTheDraft() {
        double side = 0.8;
        double above = 1e-5;
        double left = 5e-5;
        // twice as large: room 2 (V + h) + V_i, less what stays above
        double carried = (RHO - RHO_B) * 2 * left + RHO * (2 * HOLLOW + 1e-5 - 2 * above);
        DryBoat boat = new DryBoat(balance, verdict, carried);
        double back = boat.walk(stage(side, 1, above), 2, 1, SPEED, false);
        assertThat(back).isCloseTo(left, withinPercentage(0.01));
        double depth = 0;
        double time = 0;
        int steps = 5000;
        double step = (V0 - left) / AREA / steps;
        for (int i = 0; i < steps; i++) {
            double body = 2 * (V0 - AREA * (depth + step / 2));
            double x = (RHO_B * body + carried) / (RHO * (body + 2 * HOLLOW + 1e-5));
            time += step / (SPEED * ((1 - side) / 2 + side * x));
            depth += step;
        }
        // each of 200 depths takes the draft of its start, which moves by less than 0.2 % a depth
        assertThat(boat.time).isCloseTo(time, withinPercentage(0.2));
    }

    /** Held up whatever its spare, it is followed to the end: the smallest spare over what keeps water out then. */
    @Test
    void aBoatThatIsHeld() {
        double carried = (RHO - RHO_B) * 4e-5 + RHO * (HOLLOW + 1e-5);
        DryBoat boat = new DryBoat(balance, verdict, carried);
        verdict.asked(OutcomeTracker.Asked.TO_THE_END);
        assertThat(boat.walk(stage(0, 1, 0), 1, 1, SPEED, true)).isZero();
        double least = (RHO * room(0.1 * V0) - RHO_B * 0.1 * V0 - carried) / (RHO * room(0.1 * V0));
        // to the first depth below a tenth of the volume, of 200
        double next = (RHO * room(0.095 * V0) - RHO_B * 0.095 * V0 - carried) / (RHO * room(0.095 * V0));
        assertThat(boat.reserve).isBetween(next, least);
        assertThat(verdict.afloat).isTrue();
        verdict.asked(OutcomeTracker.Asked.AT_ONCE);
        verdict.start(true, V0);
        boat.walk(stage(0, 1, 0), 1, 1, SPEED, false);
        // judged at the first depth after 20 s, of 1 s each or so
        assertThat(boat.time).isBetween(20.0, 22.0);
    }

    /** Water in the pores is a load: 50 um of wet skin behind the true area. */
    @Test
    void soakedWater() {
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 0.65);
        Piece piece = new Piece(BALL, RHO_B * BALL.volume(), Piece.Makeup.usual());
        balance.set(Launch.of(piece, BATH, fizz, new VoyageParameters(2e-4, 0)), BALL.volume());
        DryBoat boat = new DryBoat(balance, verdict, 0);
        boat.walk(stage(0, 1, 0), 2, 1.5, SPEED, false);
        double soaked = balance.soaked(balance.skinDepth(0), AREA * 1.5, 2 * V0);
        assertThat(soaked).isPositive();
        double room = 2 * (V0 + HOLLOW) + 1e-5;
        assertThat(boat.margin)
                .isCloseTo((RHO * room - RHO_B * 2 * V0 - soaked) / (RHO * room), withinPercentage(1e-6));
    }
}
