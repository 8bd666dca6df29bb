package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.junit.jupiter.api.Test;

/**
 * What is left of a piece at a depth of the table, larger by k in each size and rougher by a factor than its shape, and what
 * carries it: geometry of a ball, and the balance of core/docs/physics/voyage.md term by term.
 */
class ErodedPieceTest {
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final double SPEED = 5e-3 / 60;
    private static final double K = 1.1;
    private static final double ROUGH = 1.2;
    private static final double PLUME = 0.4;
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final Shape BALL = Sphere.ofDiameter(2 * R);
    private static final FizzParameters FIZZ = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0.45, 0, 0.65);

    private static ErodedPiece piece(Shape shape, double mass, Release release, Bath bath) {
        VoyageForm form = VoyageForm.of(shape, release);
        ErodedPiece piece = new ErodedPiece(form, bath);
        piece.launch(new Launch(
                new Piece(shape, mass, Piece.Makeup.usual()),
                bath.temperature(),
                K * K * K,
                ROUGH,
                FIZZ,
                new VoyageParameters(1e-4, PLUME)));
        piece.enter(form.airy.orElse(form.flooded));
        return piece;
    }

    @Test
    void sizesAtADepth() {
        ErodedPiece piece = piece(BALL, 0.2, Release.DROPPED, BATH);
        double step = R * (1 - Math.cbrt(0.01)) / 200;
        for (double steps : new double[] {0, 37.25, 120, 199.5}) {
            double r = R - steps * step;
            assertThat(piece.left(steps)).isCloseTo(4 * Math.PI / 3 * r * r * r, within(1e-9 * WHOLE));
            assertThat(piece.body(steps)).isCloseTo(4 * Math.PI / 3 * r * r * r * K * K * K, within(1e-9 * WHOLE));
            assertThat(piece.front(steps)).isCloseTo(4 * Math.PI * r * r * K * K * ROUGH, withinPercentage(1e-4));
            double half = Math.max(0.1 * K * R, K * R - steps * step * K / ROUGH);
            assertThat(piece.width(steps)).isCloseTo(2 * half, within(1e-9));
            double way = BATH.depth() - 2 * half;
            assertThat(piece.lag(steps, 1e-3))
                    .isCloseTo(Resistance.ball().lag(1e-3, way, piece.body(steps), 2 * half), withinPercentage(1e-6));
        }
        assertThat(piece.speed).isCloseTo(SPEED * ROUGH / K, withinPercentage(1e-9));
        assertThat(piece.stepsIn(60)).isCloseTo(60 * SPEED * ROUGH / K / step, withinPercentage(1e-6));
        assertThat(piece.stepsIn(1e6)).isEqualTo(200);
        assertThat(piece.displaced(1e-4)).isCloseTo(RHO * 1e-4, within(1e-9));
        assertThat(piece.covered).isEqualTo(1);
    }

    /** Just below the surface the gas has the pressure of half the height, on the bottom that of the depth of its centre there. */
    @Test
    void spareAboveAndBelow() {
        ErodedPiece piece = piece(BALL, 0.2, Release.DROPPED, BATH);
        ForceBalance laws = piece.balance;
        piece.reach(50, 30);
        double body = piece.body(50);
        double front = piece.front(50);
        double soaked = laws.soaked(laws.skinDepth(30), front, body);
        assertThat(soaked).isPositive();
        for (boolean high : new boolean[] {true, false}) {
            double flux = laws.flux(laws.water.molarVolume(high ? R : BATH.depth() - R));
            double gas = laws.fullLayer(flux, 4) * front;
            double lifting = RHO * (1 - PLUME * laws.plume(flux * 4 * ROUGH));
            double spare = lifting * (body + gas) - 0.2 / (WHOLE * K * K * K) * body - soaked;
            assertThat(piece.spare(high, body, front)).isCloseTo(spare, within(1e-8));
        }
        assertThat(piece.load(body, front)).isCloseTo(0.2 / (WHOLE * K * K * K) * body + soaked, within(1e-9));
        assertThat(piece.soaked()).isEqualTo(laws.isSteady(laws.skinDepth(30)));
        piece.clock(1e6);
        assertThat(piece.soaked()).isTrue();
    }

    /** A core of 20 g and 10 ml, and salt that has come off by half when the front stands at half of its thickness. */
    @Test
    void spareOfALoadedBall() {
        Shape loaded = Loaded.with(Loaded.with(BALL, new Inset(0.020, 10e-6)), new Topping("salt", 0.006, 2165, 0.5));
        ErodedPiece piece = piece(loaded, 0.22, Release.DROPPED, BATH);
        ForceBalance laws = piece.balance;
        double steps = 0.006
                / 2165
                / 0.5
                / (Math.PI * R * R)
                / 2
                / VoyageForm.of(loaded, Release.DROPPED).flooded.grid().step;
        piece.reach(steps, 5);
        double body = piece.body(steps);
        double front = piece.front(steps);
        double flux = laws.flux(laws.water.molarVolume(R));
        double facePerPlan = loaded.surface() / loaded.restingAttitude().planArea();
        double gas = laws.fullLayer(flux, facePerPlan) * front;
        double lifting = RHO * (1 - PLUME * laws.plume(flux * facePerPlan * ROUGH));
        double weight = (0.22 - 0.026) / ((WHOLE - 10e-6) * K * K * K) * body + 0.020 + 0.003;
        double soaked = laws.soaked(laws.skinDepth(5), front, body);
        assertThat(piece.spare(true, body, front))
                .isCloseTo(lifting * (body + 10e-6 + 0.003 / 2165 + gas) - weight - soaked, within(1e-6));
        assertThat(piece.load(body, front)).isCloseTo(weight + soaked, within(1e-6));
    }

    /** The draft at which lift meets load: without gas in one step, with gas in a few, and the balance holds then. */
    @Test
    void afloatWhereLiftMeetsLoad() {
        ErodedPiece piece = piece(BALL, 0.12, Release.DROPPED, BATH);
        Stage stage = VoyageForm.of(BALL, Release.DROPPED).flooded;
        ForceBalance laws = piece.balance;
        piece.reach(0, 5);
        double body = piece.body(0);
        double front = piece.front(0);
        double load = piece.load(body, front);
        double share = 1;
        double wet = 1;
        for (int pass = 0; pass < 20; pass++) {
            share = piece.afloat(body, front, load, share, wet);
            wet = stage.immersion().wet(share);
        }
        double flux = laws.flux(laws.water.molarVolume(R));
        double lifting = RHO * (1 - PLUME * laws.plume(flux * 4 * ROUGH * wet));
        double gas = laws.fullLayer(flux, 4) * front * wet;
        assertThat(lifting * (share * body + gas)).isCloseTo(load, within(1e-7));
        // one step of Newton's method goes the error over the slope
        double slope = lifting
                * (body + laws.fullLayer(flux, 4) * front * stage.immersion().wetting(share));
        assertThat(piece.afloat(body, front, load + 1e-3, share, wet)).isCloseTo(share + 1e-3 / slope, within(1e-6));
        assertThat(piece.afloat(body, front, 2 * load + 1, share, wet)).isEqualTo(1);
        assertThat(piece.afloat(body, front, 0, 0.3, 0.35))
                .as("not out of the water")
                .isCloseTo(0.15, within(1e-12));
    }

    /** Boyle: air in a hollow upside down, at half the height below the surface and at the depth of the centre on the bottom. */
    @Test
    void airInAHollow() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        ErodedPiece piece = piece(bowl, 0.17, Release.UPSIDE_DOWN, BATH);
        ForceBalance laws = piece.balance;
        piece.reach(0, 0);
        double body = piece.body(0);
        double front = piece.front(0);
        double half = 0.0225;
        double air = 2 * Math.PI / 3 * Math.pow(0.03, 3) * K * K * K;
        for (boolean high : new boolean[] {true, false}) {
            double depth = high ? half : BATH.depth() - half;
            double flux = laws.flux(laws.water.molarVolume(depth));
            double squeezed = air * 101325 / (101325 + RHO * PhysicalConstants.GRAVITY * depth);
            double facePerPlan =
                    VoyageForm.of(bowl, Release.UPSIDE_DOWN).airy.orElseThrow().facePerPlan();
            double gas = laws.fullLayer(flux, facePerPlan) * front;
            double lifting = RHO * (1 - PLUME * laws.plume(flux * facePerPlan * ROUGH));
            double weight = 0.17 / (bowl.volume() * K * K * K) * body;
            double soaked = laws.soaked(laws.skinDepth(0), front, body);
            assertThat(piece.spare(high, body, front))
                    .isCloseTo(lifting * (body + squeezed + gas) - weight - soaked, within(1e-6));
        }
    }

    /** On a bottom 5 cm deep a ball 71.5 mm high is covered by x^2 (3 - 2 x) of its volume and x of its surface. */
    @Test
    void aShallowBath() {
        ErodedPiece piece = piece(BALL, 0.3, Release.DROPPED, BATH.withDepth(0.05));
        ForceBalance laws = piece.balance;
        piece.reach(0, 3);
        double x = 0.05 / (2 * K * R);
        double covered = x * x * (3 - 2 * x);
        assertThat(piece.covered).isCloseTo(covered, within(1e-5));
        double body = piece.body(0);
        double front = piece.front(0);
        double flux = laws.flux(laws.water.molarVolume(R));
        double gas = laws.fullLayer(flux, 4) * front * x;
        double lifting = RHO * (1 - PLUME * laws.plume(flux * 4 * ROUGH));
        double soaked = laws.soaked(laws.skinDepth(3), front, body);
        assertThat(piece.spare(false, body, front))
                .isCloseTo(lifting * (covered * body + gas) - 0.3 - soaked, within(1e-4));
        // once it is smaller than the bath is deep it is covered
        piece.reach(150, 300);
        assertThat(piece.covered).isEqualTo(1);
    }
}
