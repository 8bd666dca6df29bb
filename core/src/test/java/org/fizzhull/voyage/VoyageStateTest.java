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
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The moment of a voyage of a ball, against its geometry and mechanics in closed form: volume 4/3 pi r^3, wet share of the
 * surface equal to the draft over the diameter (Archimedes), added mass one half.
 */
class VoyageStateTest {
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final double AREA = 4 * Math.PI * R * R;
    private static final double G = PhysicalConstants.GRAVITY;
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final Shape BALL = Sphere.ofDiameter(2 * R);

    /** 5 mm/min whatever the mix, no layer of gas. */
    private static final double SPEED = 5e-3 / 60;

    private static final FizzParameters FIZZ = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 0.65);
    /** No water in the pores, no plume. */
    private static final VoyageParameters DRY = new VoyageParameters(0, 0);

    private static VoyageState state(double mass, double volumeRatio, double surfaceRatio, Bath bath) {
        Piece piece = new Piece(BALL, mass, Makeup.usual());
        Launch launch = new Launch(piece, bath.temperature(), volumeRatio, surfaceRatio, FIZZ, DRY);
        return new VoyageState(VoyageForm.of(BALL, Release.DROPPED), bath, launch);
    }

    private static VoyageState whole(double mass) {
        VoyageState state = state(mass, 1, 1, BATH);
        state.erode(WHOLE);
        return state;
    }

    /** A mould larger by k in each size and a surface rougher by a factor: each length, area and volume by its power. */
    @Test
    void sizesOfALargerRougherPiece() {
        double k = 1.1;
        double rough = 1.25;
        VoyageState state = state(0.15, k * k * k, rough, BATH);
        double r = 0.02;
        state.erode(4 * Math.PI / 3 * r * r * r);
        assertThat(state.eroded).isCloseTo(R - r, within(1e-8));
        assertThat(state.body).isCloseTo(4 * Math.PI / 3 * Math.pow(r * k, 3), withinPercentage(1e-6));
        assertThat(state.front).isCloseTo(4 * Math.PI * r * r * k * k * rough, withinPercentage(1e-4));
        assertThat(state.depthOf(state.eroded)).isCloseTo((R - r) * k / rough, within(1e-8));
        assertThat(state.halfHeight).isCloseTo(R * k - (R - r) * k / rough, within(1e-8));
        assertThat(state.tableSpeed()).isCloseTo(SPEED * rough / k, withinPercentage(1e-9));
        assertThat(state.lasting()).isCloseTo(R * (1 - Math.cbrt(0.01)) / (SPEED * rough / k), withinPercentage(1e-6));
        assertThat(state.weight()).isCloseTo(0.15 * Math.pow(r / R, 3), withinPercentage(1e-6));
        // wholly wet: what the front takes in a second, of the table and of the gas in it
        state.immerse(1, 0.2, 0);
        assertThat(state.lost()).isCloseTo(4 * Math.PI * r * r * SPEED * rough / k, withinPercentage(1e-4));
        double density = 0.15 / (WHOLE * k * k * k);
        double made = density * Makeup.USUAL_GAS_CAPACITY * SPEED * 4 * Math.PI * r * r * k * k * rough;
        assertThat(state.made()).isCloseTo(made, withinPercentage(1e-4));
    }

    /** Newton's law for a body at rest under water that carries half of the water it displaces along. */
    @ParameterizedTest
    @ValueSource(doubles = {0.10, 0.20})
    void aBallAtRestUnderWater(double mass) {
        VoyageState state = whole(mass);
        state.move(0, 0.3, 0, 0);
        double water = RHO * WHOLE;
        assertThat(state.fraction).isEqualTo(1);
        assertThat(state.wet).isEqualTo(1);
        assertThat(state.acceleration).isCloseTo(G * (water - mass) / (mass + water / 2), within(1e-9));
        // a layer of 0.2 mm lifts by what it displaces
        state.move(0, 0.3, 0, 2e-4);
        assertThat(state.carried).isCloseTo(WHOLE + 2e-4 * AREA, withinPercentage(1e-6));
        assertThat(state.spare(0)).isCloseTo(RHO * (WHOLE + 2e-4 * AREA) - mass, within(1e-9));
        assertThat(state.acceleration)
                .isCloseTo(G * (RHO * (WHOLE + 2e-4 * AREA) - mass) / (mass + water / 2), within(1e-6));
    }

    /** Drag against the motion, by the law of a ball; up and down alike. */
    @Test
    void dragOfAMovingBall() {
        VoyageState state = whole(0.15);
        double water = RHO * WHOLE;
        double inertia = 0.15 + water / 2;
        double viscosity = state.balance.water.kinematicViscosity();
        double drag = Resistance.ball().force(0.4, 2 * R, RHO, viscosity);
        state.move(0, 0.3, 0.4, 0);
        double up = state.acceleration;
        state.move(0, 0.3, -0.4, 0);
        assertThat(up).isCloseTo((G * (water - 0.15) - drag) / inertia, within(1e-9));
        assertThat(state.acceleration).isCloseTo((G * (water - 0.15) + drag) / inertia, within(1e-9));
    }

    /**
     * Half under: half of the displacement, added mass and drag; and the waves take 0.27 rho V omega U, omega^2 = g/R
     * (Hulme 1982 [from memory], as core/docs/physics/voyage.md has it).
     */
    @Test
    void aBallThatBobsHalfUnder() {
        VoyageState state = whole(0.05);
        double half = RHO * WHOLE / 2;
        double drag = Resistance.ball().force(0.1, 2 * R, RHO, state.balance.water.kinematicViscosity()) / 2;
        double waves = 0.27 * half * Math.sqrt(G / R) * 0.1;
        state.move(0, 0, 0.1, 0);
        assertThat(state.fraction).isCloseTo(0.5, within(1e-9));
        assertThat(state.acceleration)
                .isCloseTo((G * (half - 0.05) - drag - waves) / (0.05 + half / 2), withinPercentage(0.01));
    }

    /** Archimedes: it lies so deep that it displaces its weight, x^2 (3 - 2 x) of its volume, its centre R (2 x - 1) deep. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.5, 0.7, 0.8})
    void depthAtRest(double x) {
        VoyageState state = whole(RHO * WHOLE * x * x * (3 - 2 * x));
        assertThat(state.rest(0, 0, 0)).isCloseTo(R * (2 * x - 1), within(2e-5 * R));
        assertThat(state.fraction).isCloseTo(x * x * (3 - 2 * x), within(1e-9));
        assertThat(state.wet).isCloseTo(x, within(1e-4));
        assertThat(state.spare(0)).isCloseTo(0, within(1e-10));
        // the wet part alone recedes
        assertThat(state.lost()).isCloseTo(AREA * x * SPEED, withinPercentage(0.1));
    }

    /** A layer of gas on the wet share x of the surface carries a part. */
    @Test
    void depthAtRestWithGas() {
        double layer = 3e-4;
        double x = 0.7;
        VoyageState state = whole(RHO * (WHOLE * x * x * (3 - 2 * x) + layer * AREA * x));
        assertThat(state.rest(0, layer, 0)).isCloseTo(R * (2 * x - 1), within(1e-4 * R));
        // from a rest far off it finds the same
        state.rest(0, 0, 0);
        assertThat(state.rest(0, layer, 0)).isCloseTo(R * (2 * x - 1), within(1e-4 * R));
    }

    /**
     * A light ball in a thick layer, which Newton's method from wholly under overshoots: at rest what is carried is its weight
     * still.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.005, 0.01, 0.02, 0.05})
    void aLightBallInAThickLayer(double density) {
        double mass = density * RHO * WHOLE;
        VoyageState state = whole(mass);
        state.rest(0, 1e-3, 0);
        assertThat(state.fraction).isBetween(0.0, density);
        assertThat(RHO * state.carried).isCloseTo(mass, within(1e-9 * mass));
        assertThat(RHO * (state.fraction * WHOLE + 1e-3 * AREA * state.wet)).isCloseTo(mass, within(1e-9 * mass));
    }

    /** At the surface a puck keeps its upper flat dry, and all else recedes, however deep it lies; on the way all is by wetness. */
    @Test
    void aFlatFaceKeepsDry() {
        Shape puck = Puck.ofDiameterAndHeight(0.07, 0.028);
        double flat = Math.PI / 4 * 0.07 * 0.07;
        double side = Math.PI * 0.07 * 0.028;
        Piece piece = new Piece(puck, 0.6 * RHO * puck.volume(), Makeup.usual());
        Launch launch = Launch.of(piece, BATH, FIZZ, DRY);
        VoyageState state = new VoyageState(VoyageForm.of(puck, Release.DROPPED), BATH, launch);
        state.erode(puck.volume());
        assertThat(state.rest(0, 0, 0)).isCloseTo(0.014 * 0.2, within(1e-6));
        assertThat(state.lost()).isCloseTo((flat + side) * SPEED, withinPercentage(0.1));
        // moving: by what is wet, 0.6 of the side and one flat; once it bobs as at rest
        state.move(0, 0.0028, 0, 0);
        assertThat(state.lost()).isCloseTo((flat + 0.6 * side) * SPEED, withinPercentage(0.1));
        state.bobbing = true;
        state.move(0, 0.0028, 0, 0);
        assertThat(state.lost()).isCloseTo((flat + side) * SPEED, withinPercentage(0.1));
        // half of it gone: each face but the upper flat has moved in by e, of pi (35 mm - e)^2 (28 mm - e) left
        double low = 0;
        double high = 0.02;
        for (int i = 0; i < 60; i++) {
            double e = (low + high) / 2;
            if (Math.PI * (0.035 - e) * (0.035 - e) * (0.028 - e) > puck.volume() / 2) {
                low = e;
            } else {
                high = e;
            }
        }
        state.erode(puck.volume() / 2);
        state.rest(0, 0, 0);
        double area = Math.PI * (0.035 - low) * (0.035 - low) + 2 * Math.PI * (0.035 - low) * (0.028 - low);
        assertThat(state.lost()).isCloseTo(area * SPEED, withinPercentage(0.1));
    }

    /** What is heavier than the water it displaces has no rest at the surface: it is wholly under, its top awash. */
    @Test
    void tooHeavyToRest() {
        VoyageState state = whole(1.1 * RHO * WHOLE);
        assertThat(state.rest(0, 0, 0)).isCloseTo(R, within(1e-12));
        assertThat(state.fraction).isEqualTo(1);
        assertThat(state.spare(0)).isCloseTo(-0.1 * RHO * WHOLE, within(1e-9));
    }

    /** A bath of depth H covers x^2 (3 - 2 x) of a ball that stands in it, x = H/2R; one deeper than it all. */
    @Test
    void aShallowBathCoversAPart() {
        VoyageState state = state(0.15, 1, 1, BATH.withDepth(0.05));
        state.erode(WHOLE);
        double x = 0.05 / (2 * R);
        assertThat(state.covered()).isCloseTo(x * x * (3 - 2 * x), within(1e-5));
        assertThat(whole(0.15).covered()).isEqualTo(1);
    }

    /** Geometry: lowest point below the surface over the height, 0 out of the water and 1 wholly under. */
    @Test
    void draftOfADepth() {
        VoyageState state = whole(0.15);
        assertThat(state.draft(0)).isCloseTo(0.5, within(1e-12));
        assertThat(state.draft(R / 2)).isCloseTo(0.75, within(1e-8));
        assertThat(state.draft(-2 * R)).isZero();
        assertThat(state.draft(2 * R)).isEqualTo(1);
        assertThat(state.centre(0.5)).isCloseTo(0, within(1e-9));
        assertThat(state.centre(1)).isCloseTo(R, within(1e-12));
    }

    /** By the drift flux of core/docs/physics/voyage.md, alpha = j/(1.2 j + v): the share f of it lightens the water. */
    @Test
    void thePlumeLightensTheWater() {
        FizzParameters layered = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0.45, 0, 0.65);
        Launch launch = Launch.of(new Piece(BALL, 0.15, Makeup.usual()), BATH, layered, new VoyageParameters(0, 0.5));
        VoyageState state = new VoyageState(VoyageForm.of(BALL, Release.DROPPED), BATH, launch);
        state.erode(WHOLE);
        state.immerse(1, R, 0);
        double full = state.fullLayer;
        assertThat(full).isPositive();
        assertThat(state.lifting).as("no layer, no plume yet").isCloseTo(RHO, within(1e-9));
        state.immerse(1, R, full);
        BathProperties water = state.balance.water;
        double flux = SPEED * 0.15 / WHOLE * Makeup.USUAL_GAS_CAPACITY * 0.65 * water.molarVolume(R);
        // of a ball four times its plan area gives gas
        double alpha = 4 * flux / (1.2 * 4 * flux + water.driftVelocity);
        assertThat(state.lifting).isCloseTo(RHO * (1 - 0.5 * alpha), withinPercentage(1e-6));
        state.immerse(1, R, full / 2);
        assertThat(state.lifting).isCloseTo(RHO * (1 - 0.25 * alpha), withinPercentage(1e-6));
        // the layer grows by what it lacks in a second, an exponential
        assertThat(state.layerRate(full / 4)).isCloseTo(0.75 * full, withinPercentage(1e-9));
        assertThat(state.unfilled(2)).isCloseTo(Math.exp(-2), within(1e-12));
    }
}
