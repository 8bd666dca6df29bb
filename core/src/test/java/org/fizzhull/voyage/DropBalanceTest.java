package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import java.util.List;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** ANALYTIC: the balance of a drop by Archimedes, and what a voyage asks of a shape by its geometry. */
class DropBalanceTest {
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final Shape BALL = Sphere.ofDiameter(2 * R);
    private static final VoyageParameters DRY = new VoyageParameters(0, 0);

    /** A ball 1 mm larger across holds (66/65)^3 times the volume; and so does a cube. */
    @Test
    void volumeOfALargerMould() {
        double ratio = Math.pow(66 / 65.0, 3);
        assertThat(new DropBalance(BALL, BATH).volumeRatio(1e-3)).isCloseTo(ratio, within(1e-9));
        assertThat(DropBalance.volumeRatio(6 * 4, 8, 0.2)).isCloseTo(Math.pow(1.1, 3), within(1e-12));
    }

    /** In still water at 20 C it has 998.2 kg/m3 of its volume and of what it carries, less its mass. */
    @Test
    void stillWater() {
        DropBalance drop = new DropBalance(BALL, BATH);
        assertThat(drop.still(0.1, celsius(20), 1.1)).isCloseTo(998.2 * 1.1 * WHOLE - 0.1, within(1e-5));
        assertThat(drop.still(0.1, celsius(38), 1)).isCloseTo(RHO * WHOLE - 0.1, within(1e-9));
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 10e-6));
        // a core takes its room inside: the ball is as large as before
        assertThat(new DropBalance(loaded, BATH).still(0.1, celsius(38), 1)).isCloseTo(RHO * WHOLE - 0.1, within(1e-9));
    }

    /** A boat displaces the half ball of its outside, flooded only its wall. */
    @Test
    void aBoat() {
        DropBalance drop = new DropBalance(Bowl.ofDiameterAndWall(0.09, 0.015), BATH);
        double outside = 2 * Math.PI / 3 * Math.pow(0.045, 3);
        double wall = outside - 2 * Math.PI / 3 * Math.pow(0.03, 3);
        assertThat(drop.boat(0.1, celsius(38), 1.02)).isCloseTo(RHO * 1.02 * outside - 0.1, within(1e-6));
        assertThat(drop.still(0.1, celsius(20), 1)).isCloseTo(998.2 * wall - 0.1, within(1e-5));
        assertThat(drop.boat(0.1, celsius(20), 1)).isCloseTo(998.2 * outside - 0.1, within(2e-5));
    }

    /** All terms: the layer on the true surface, the plume of four times the plan area, and the water in the pores. */
    @Test
    void aFizzingBall() {
        double k = 1.1;
        double rough = 1.2;
        FizzParameters fizz = FizzParameters.standard();
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 10e-6));
        for (Shape shape : new Shape[] {BALL, loaded}) {
            double table = shape.volume();
            double core = WHOLE - table;
            Launch launch = new Launch(
                    new Piece(shape, 0.2, Piece.Makeup.usual()),
                    BATH.temperature(),
                    k * k * k,
                    rough,
                    fizz,
                    new VoyageParameters(0.2e-3, 0.4));
            ForceBalance laws = new ForceBalance(new BathProperties(BATH, R));
            laws.set(launch, table);
            double flux = laws.flux(laws.water.molarVolume);
            double wet = 4 * Math.PI * R * R * k * k * rough;
            double gas = laws.fullLayer(flux, 4) * wet;
            double lifting = RHO * (1 - 0.4 * laws.plume(flux * 4 * rough));
            double body = table * k * k * k;
            double soaked = laws.soaked(laws.skinDepth(0), wet, body);
            assertThat(new DropBalance(shape, BATH).fizzing(launch))
                    .isCloseTo(lifting * (body + gas + core) - 0.2 - soaked, within(1e-7));
        }
    }

    /** A puck 70 by 28 mm lies flat; a ball has the drag and added mass of one, whatever it carries inside. */
    @Test
    void whatAVoyageAsksOfAShape() {
        VoyageForm puck = VoyageForm.of(Puck.ofDiameterAndHeight(0.07, 0.028), Release.DROPPED);
        assertThat(puck.halfHeight).isCloseTo(0.014, within(1e-12));
        assertThat(puck.planDiameter).isCloseTo(0.07, within(1e-9));
        assertThat(puck.flooded.facePerPlan()).isCloseTo(2 + 4 * 0.028 / 0.07, within(1e-9));
        assertThat(puck.flooded.immersion().fraction(0.37)).isCloseTo(0.37, within(1e-9));
        assertThat(puck.flooded.pierced()).isInfinite();
        assertThat(puck.airy).isEmpty();
        assertThat(puck.resistance.area(0.07))
                .as("a body with edges")
                .isCloseTo(1.05 * Math.PI / 4 * 0.07 * 0.07, within(1e-9));
        VoyageForm ball = VoyageForm.of(BALL, Release.DROPPED);
        assertThat(ball.resistance.addedMass()).isEqualTo(0.5);
        assertThat(ball.planDiameter).isCloseTo(2 * R, within(1e-9));
        assertThat(ball.flooded.facePerPlan()).isCloseTo(4, within(1e-9));
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        assertThat(VoyageForm.of(bowl, Release.DROPPED).airy).isEmpty();
        Stage dry = VoyageForm.of(bowl, Release.PLACED).airy.orElseThrow();
        // outer half ball over its plan: 2; the wall is pierced after 15 mm; the hollow is a half ball of 30 mm
        assertThat(dry.facePerPlan()).isCloseTo(2, within(1e-6));
        assertThat(dry.pierced()).isCloseTo(0.015, within(1e-12));
        assertThat(dry.hollow()).isCloseTo(2 * Math.PI / 3 * Math.pow(0.03, 3), within(1e-12));
        assertThat(dry.above()).isCloseTo(0, within(1e-12));
        assertThat(dry.immersion().wet(0.5)).isBetween(0.5, 0.75);
        for (int wrong : new int[] {9, 100_001}) {
            assertThatThrownBy(() -> VoyageForm.of(BALL, Release.DROPPED, wrong))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(VoyageForm.of(BALL, Release.DROPPED, 10).flooded.grid().cells)
                .isEqualTo(10);
        assertThat(ball.flooded.grid().cells).isEqualTo(200);
    }

    /** A form for one voyage gives that voyage to the last bit. */
    @Test
    void aFormForOneVoyage() {
        for (Shape shape : List.of(BALL, Puck.ofDiameterAndHeight(0.07, 0.028), Bowl.ofDiameterAndWall(0.09, 0.015))) {
            for (Release release : Release.values()) {
                Piece piece = new Piece(shape, 0.9 * RHO * shape.volume(), Piece.Makeup.usual());
                Launch launch = Launch.of(piece, BATH, FizzParameters.standard(), VoyageParameters.standard());
                QuickVoyage usual = new QuickVoyage(VoyageForm.of(shape, shape.restingAttitude(), release), BATH);
                QuickVoyage once =
                        new QuickVoyage(VoyageForm.forOneVoyage(shape, shape.restingAttitude(), release), BATH);
                usual.run(launch);
                once.run(launch);
                assertThat(once.fizzTime()).isEqualTo(usual.fizzTime());
                assertThat(once.margin()).isEqualTo(usual.margin());
                assertThat(once.outcome()).isEqualTo(usual.outcome());
            }
        }
    }

    /** The log of a ball that sinks: mass, size, depth and gas of each row by its front; all its gas is somewhere. */
    @Test
    void theSeriesOfASunkenBall() {
        double speed = 5e-3 / 60;
        FizzParameters fizz = new FizzParameters(speed, 0, 0, 0, 1e-3, 0, 0, 0.65);
        Piece piece = new Piece(BALL, 0.16, Piece.Makeup.usual());
        Voyage voyage =
                FullVoyage.of(VoyageForm.of(BALL, Release.DROPPED), BATH).run(piece, fizz, DRY);
        var series = voyage.series();
        double most = 0;
        for (int i = 0; i < series.rows(); i++) {
            double r = R - series.eroded()[i];
            assertThat(series.mass()[i]).isCloseTo(0.16 * Math.pow(r / R, 3), within(1e-6));
            assertThat(series.size()[i]).isCloseTo(2 * r, within(1e-9));
            assertThat(series.left()[i]).isCloseTo(4.6 * series.mass()[i], withinPercentage(1e-6));
            assertThat(series.gas()[i] + series.dissolved()[i] + series.left()[i])
                    .isCloseTo(4.6 * 0.16, within(1e-4));
            most = Math.max(most, series.gasRate()[i]);
            if (series.time()[i] > 30) {
                assertThat(series.eroded()[i]).isCloseTo(speed * series.time()[i], within(1e-5));
                assertThat(series.centreDepth()[i]).isCloseTo(BATH.depth() - r, within(1e-6));
                assertThat(series.immersed()[i]).isEqualTo(1);
                double step = i + 1 < series.rows() ? series.time()[i + 1] / series.time()[i] : 1.02;
                assertThat(step).isBetween(1.0, 1.0201);
            }
        }
        assertThat(voyage.peakGasRate()).isEqualTo(most);
        assertThat(series.rows()).isBetween(150, 400);
        // 22.414 l/mol at 0 C and 1 atm
        assertThat(voyage.dryVolume(2)).isCloseTo(2 * 22.414e-3 * 311.15 / 273.15, withinPercentage(0.01));
        assertThat(voyage.riseTime()).isEmpty();
        assertThat(Voyage.Outcome.STAYS_DOWN.words()).isEqualTo("stays down");
        assertThat(Voyage.Event.Kind.SINKS.words()).isEqualTo("goes under");
        assertThat(new VoyageLog(
                                new EquationOfMotion(new VoyageState(
                                        VoyageForm.of(BALL, Release.DROPPED), BATH, Launch.of(piece, BATH, fizz, DRY))),
                                1)
                        .events())
                .isEmpty();
    }
}
