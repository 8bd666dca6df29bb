package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.junit.jupiter.api.Test;

/** ANALYTIC: the weighing of a ball held under water, of which 4/3 pi (R - v t)^3 is left, on a scale under the bowl. */
class HeldUnderTest {
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final double SPEED = 5e-3 / 60;
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final Shape BALL = Sphere.ofDiameter(2 * R);
    private static final HeldUnder BOWL = new HeldUnder(VoyageForm.of(BALL, Release.DROPPED), BATH);

    private static Launch launch(double mass, double layerRatio, double gasShare, VoyageParameters voyage) {
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, layerRatio, 0, gasShare);
        return Launch.of(new Piece(BALL, mass, Makeup.usual()), BATH, fizz, voyage);
    }

    private static double left(double seconds) {
        return 4 * Math.PI / 3 * Math.pow(R - SPEED * seconds, 3);
    }

    /** Without gas, plume and soaked pores: the reading is the first mass with (rho_w - rho_b) V(t). */
    @Test
    void withoutGasTheScaleShowsTheBuoyancy() {
        Launch plain = launch(0.16, 0, 0, new VoyageParameters(0, 0));
        for (double t : new double[] {1, 60, 200}) {
            double spare = (RHO - 0.16 / WHOLE) * left(t);
            assertThat(BOWL.spare(plain, t, true)).isCloseTo(spare, within(1e-8));
            assertThat(BOWL.reading(plain, t, true)).isCloseTo(0.16 + spare, within(1e-8));
            assertThat(BOWL.leftAcross(plain, t)).isCloseTo(2 * (R - SPEED * t), within(1e-8));
        }
    }

    /** What leaves as gas is off the scale: 4.6 mol/kg of what dissolved, times the share that is seen from half its height. */
    @Test
    void gasThatLeftIsOffTheScale() {
        Launch gassing = launch(0.16, 0, 0.65, new VoyageParameters(0, 0));
        double t = 120;
        double seen = 0.65 * Math.exp(-R / 0.5);
        double escaped = 0.16 / WHOLE * (WHOLE - left(t)) * Makeup.USUAL_GAS_CAPACITY * 0.044009 * seen;
        double spare = (RHO - 0.16 / WHOLE) * left(t);
        assertThat(BOWL.reading(gassing, t, true)).isCloseTo(0.16 + spare - escaped, within(1e-7));
    }

    /** A mould larger by a tenth in each size holds 1.331 times the volume, and a front of v/1.1 in the table of the shape. */
    @Test
    void aLargerPiece() {
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 0);
        Launch larger = new Launch(
                new Piece(BALL, 0.2, Makeup.usual()), BATH.temperature(), 1.331, 1, fizz, new VoyageParameters(0, 0));
        double left = 4 * Math.PI / 3 * Math.pow(1.1 * R - SPEED * 60, 3);
        assertThat(BOWL.spare(larger, 60, true)).isCloseTo((RHO - 0.2 / (1.331 * WHOLE)) * left, within(1e-7));
        // every face has moved in by v t
        assertThat(BOWL.leftAcross(larger, 60)).isCloseTo(2 * (1.1 * R - SPEED * 60), within(1e-9));
    }

    /**
     * A surface rougher by 1.2 than that of its size: 1.2 times the area takes the volume in less time, gives more gas and
     * carries more of it; the faces themselves move in by v t.
     */
    @Test
    void aRougherLargerPiece() {
        double k = 1.1;
        double rough = 1.2;
        double t = 40;
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0.45, 0, 0.65);
        double f = 0.5;
        Piece piece = new Piece(BALL, 0.2, Makeup.usual());
        Launch launch = new Launch(piece, BATH.temperature(), k * k * k, rough, fizz, new VoyageParameters(0, f));
        ForceBalance laws = new ForceBalance(new BathProperties(BATH, R));
        laws.set(launch, WHOLE);
        double r = k * R - SPEED * rough * t;
        double body = 4 * Math.PI / 3 * r * r * r;
        double filled = 1 - Math.exp(-t);
        double flux = laws.flux(laws.water.molarVolume);
        // a ball has four times its plan area
        double layer = laws.fullLayer(flux, 4) * filled;
        double gas = layer * 4 * Math.PI * r * r * rough;
        double lifting = RHO * (1 - f * laws.plume(flux * 4 * rough) * filled);
        double spare = lifting * (body + gas) - 0.2 / (WHOLE * k * k * k) * body;
        assertThat(BOWL.spare(launch, t, true)).isCloseTo(spare, within(1e-6));
        assertThat(BOWL.leftAcross(launch, t)).isCloseTo(2 * (k * R - SPEED * t), within(1e-9));
        // never below a tenth of its size
        assertThat(BOWL.leftAcross(launch, 1e4)).isCloseTo(0.2 * R, within(1e-12));
    }

    /** A core of 20 g and 10 ml, and salt on top that comes off while its face moves in by its own thickness. */
    @Test
    void whatItCarries() {
        Shape loaded = Loaded.with(Loaded.with(BALL, new Inset(0.020, 10e-6)), new Topping("salt", 0.006, 2165, 0.5));
        double thickness = 0.006 / 2165 / 0.5 / (Math.PI * R * R);
        Piece piece = new Piece(loaded, 0.2, Makeup.usual());
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 0);
        Launch launch = Launch.of(piece, BATH, fizz, new VoyageParameters(0, 0));
        HeldUnder bowl = new HeldUnder(VoyageForm.of(loaded, Release.DROPPED), BATH);
        for (double t : new double[] {0.5 * thickness / SPEED, 2 * thickness / SPEED, 100}) {
            double body = left(t) - 10e-6;
            double salt = 0.006 * Math.max(0, 1 - SPEED * t / thickness);
            double spare = RHO * (body + 10e-6 + salt / 2165) - piece.density() * body - 0.020 - salt;
            assertThat(bowl.spare(launch, t, true)).isCloseTo(spare, within(2e-6));
        }
        ToppingLoss loss = ToppingLoss.of(loaded);
        assertThat(loss.any()).isTrue();
        assertThat(loss.mass(thickness / 4)).isCloseTo(0.0015, within(1e-9));
        assertThat(loss.volume(thickness / 4)).isCloseTo(0.0015 / 2165, within(1e-12));
        assertThat(loss.volume(2 * thickness)).isCloseTo(0.006 / 2165, within(1e-12));
        assertThat(ToppingLoss.of(BALL).any()).isFalse();
        assertThat(ToppingLoss.of(BALL).mass(1)).isZero();
    }

    /** By the closed form of the way up: a spare that grows by its own rate is that of the time less the lag. */
    @Test
    void spareOfAPieceThatComesUp() {
        FizzParameters fizz = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0.45, 0, 0.65);
        Launch launch = Launch.of(new Piece(BALL, 0.16, Makeup.usual()), BATH, fizz, new VoyageParameters(0, 0));
        double up = 150;
        double growth =
                (BOWL.spare(launch, up, true) - BOWL.spare(launch, 0.98 * up, true)) / (0.02 * up) / (RHO * left(up));
        assertThat(growth).isGreaterThan(2e-6);
        double r = R - SPEED * up;
        double way = BATH.depth() - 2 * r;
        double lag = Resistance.ball().lag(growth, way, left(up), 2 * r);
        assertThat(BOWL.spareLettingGo(launch, up)).isCloseTo(BOWL.spare(launch, up - lag, true), within(1e-9));
    }

    /**
     * Layer and plume fill as 1 - exp(-t): at 1 s the layer lifts 1 - 1/e of what it does at once full, but for the little
     * that the front moves. A scale that does not feel the plume shows what a piece without one does.
     */
    @Test
    void layerAndPlumeFillTogether() {
        Launch layered = launch(0.16, 0.45, 0.65, new VoyageParameters(0, 0));
        Launch plain = launch(0.16, 0, 0.65, new VoyageParameters(0, 0));
        double atOnce = BOWL.spare(layered, 1, true) - BOWL.spare(plain, 1, true);
        double full = BOWL.spare(layered, 30, true) - BOWL.spare(plain, 30, true);
        // the area of the front falls from 1 s to 30 s
        double areas = Math.pow((R - SPEED) / (R - 30 * SPEED), 2);
        assertThat(atOnce / full).isCloseTo((1 - Math.exp(-1)) * areas, withinPercentage(0.01));
        Launch plume = launch(0.16, 0.45, 0.65, new VoyageParameters(0, 0.5));
        assertThat(BOWL.spare(plume, 30, false)).isCloseTo(BOWL.spare(layered, 30, false), within(1e-12));
        double lighterAtOnce = BOWL.spare(plume, 1, false) - BOWL.spare(plume, 1, true);
        double lighter = BOWL.spare(plume, 30, false) - BOWL.spare(plume, 30, true);
        assertThat(lighter).isPositive();
        // what it lightens is the displaced water, with the layer that holds 1 - 1/e of its gas at 1 s
        double displacedAtOnce = left(1) + atOnce / RHO;
        double displaced = left(30) + full / RHO;
        assertThat(lighterAtOnce / lighter)
                .isCloseTo((1 - Math.exp(-1)) * displacedAtOnce / displaced, withinPercentage(0.01));
    }

    /**
     * A ball without gas whose density is that of the water has no spare at any time, so that it lets go with none; of one
     * that is lighter by a little the spare falls with what is left of it.
     */
    @Test
    void spareWhereItLetsGo() {
        Launch even = launch(RHO * WHOLE, 0, 0, new VoyageParameters(0, 0));
        assertThat(BOWL.spareLettingGo(even, 120)).isCloseTo(0, within(1e-9));
        // growth below 0: the slowest that is looked at, 1e-6 a second, gives the longest way up
        Launch light = launch(0.99 * RHO * WHOLE, 0, 0, new VoyageParameters(0, 0));
        double r = R - SPEED * 200;
        double way = BATH.depth() - 2 * r;
        double body = 4 * Math.PI / 3 * r * r * r;
        double lag = Math.cbrt((6 * 1.5 * way + 1.125 * way * way * 0.42 * Math.PI * r * r / body) / (9.80665 * 1e-6));
        assertThat(BOWL.spareLettingGo(light, 200)).isCloseTo(0.01 * RHO * left(200 - lag), withinPercentage(0.01));
    }
}
