package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import java.util.List;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.voyage.result.Outcome;
import org.fizzhull.voyage.result.Voyage;
import org.fizzhull.voyage.result.VoyageEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The quick voyage of a ball in closed form. Without soaked pores and plume, with a layer l of gas on every wet face, a ball of
 * radius r and density rho_b has the spare rho (V + l A) - rho_b V, over its displacement 1 + 3 l/r - rho_b/rho.
 */
class QuickVoyageFormulasTest {
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final double SPEED = 5e-3 / 60;
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final Shape BALL = Sphere.ofDiameter(2 * R);
    private static final VoyageParameters DRY = new VoyageParameters(0, 0);

    private static FizzParameters fizz(double layerRatio) {
        return new FizzParameters(SPEED, 0, 0, 0, 1e-3, layerRatio, 0, 0.65);
    }

    private static Launch launch(Shape shape, double mass, double layerRatio) {
        return Launch.of(new Piece(shape, mass, Makeup.usual()), BATH, fizz(layerRatio), DRY);
    }

    private static QuickVoyage voyage(Shape shape, Release release) {
        return new QuickVoyage(VoyageForm.of(shape, release), BATH);
    }

    /** Layer of gas on the bottom of a launch, m. */
    private static double layerOnBottom(Launch launch) {
        ForceBalance laws = new ForceBalance(new BathProperties(BATH, R));
        laws.set(launch, WHOLE);
        return laws.fullLayer(laws.flux(laws.water.molarVolume(BATH.depth() - R)), 4);
    }

    /** Archimedes: a ball without gas floats x of its diameter deep all the way and is wet on x of its surface. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.8})
    void aBallThatFloats(double density) {
        QuickVoyage voyage = voyage(BALL, Release.DROPPED);
        Launch launch = launch(BALL, density * RHO * WHOLE, 0);
        voyage.run(launch);
        double x = Draft.ballDraft(density);
        assertThat(voyage.outcome()).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.fizzTime()).isCloseTo(R * (1 - Math.cbrt(0.01)) / (SPEED * x), withinPercentage(0.2));
        assertThat(voyage.margin()).isCloseTo(1 - density, within(1e-9));
        assertThat(voyage.sinksLater()).isFalse();
        assertThat(voyage.staysToTheEnd()).isTrue();
        assertThat(voyage.upTime()).isNaN();
        assertThat(voyage.upWidth()).isZero();
        assertThat(voyage.grazes()).isFalse();
        assertThat(voyage.floatsAtOnce(launch)).isTrue();
        assertThat(voyage.floatsToTheEnd(launch)).isTrue();
        assertThat(voyage.reserve(launch)).isCloseTo(1 - density, within(1e-9));
    }

    /** One that sinks is wet all over, and has as little to spare all the way. */
    @Test
    void aBallThatSinks() {
        QuickVoyage voyage = voyage(BALL, Release.DROPPED);
        Launch launch = launch(BALL, 1.2 * RHO * WHOLE, 0);
        voyage.run(launch);
        assertThat(voyage.outcome()).isEqualTo(Outcome.STAYS_DOWN);
        assertThat(voyage.fizzTime()).isCloseTo(R * (1 - Math.cbrt(0.01)) / SPEED, withinPercentage(1e-6));
        assertThat(voyage.margin()).isCloseTo(0.2, within(1e-9));
        assertThat(voyage.floatsAtOnce(launch)).isFalse();
        assertThat(voyage.floatsToTheEnd(launch)).isFalse();
        assertThat(voyage.staysToTheEnd()).isFalse();
        assertThat(voyage.reserve(launch)).isCloseTo(-0.2, within(1e-9));
        // its spare does not grow
        assertThat(voyage.spareInTime(launch)).isZero();
    }

    /**
     * A sunken ball with a layer l lifts off where 3 l/r = rho_b/rho - 1; its spare then grows by 3 l v/r^2 of the displacement
     * a second, which gives the time of the way up.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.024, 0.020, 0.017})
    void aBallThatRises(double r) {
        double layer = layerOnBottom(launch(BALL, 1.05 * RHO * WHOLE, 0.45));
        for (int i = 0; i < 3; i++) {
            layer = layerOnBottom(launch(BALL, RHO * (1 + 3 * layer / r) * WHOLE, 0.45));
        }
        Launch launch = launch(BALL, RHO * (1 + 3 * layer / r) * WHOLE, 0.45);
        QuickVoyage voyage = voyage(BALL, Release.DROPPED);
        voyage.run(launch);
        double off = (R - r) / SPEED;
        double growth = 3 * layer * SPEED / (r * r);
        double lag = Resistance.ball().lag(growth, BATH.depth() - 2 * r, 4 * Math.PI / 3 * r * r * r, 2 * r);
        assertThat(voyage.outcome()).isEqualTo(Outcome.RISES_LATER);
        // growth is taken over a depth of 1/200 of the way, in which it changes by 1 to 2 %, the lag by a third of that
        assertThat(voyage.riseTime()).isCloseTo(off + lag, within(0.01 * lag));
        assertThat(voyage.upTime()).isEqualTo(voyage.riseTime());
        assertThat(voyage.upWidth()).isCloseTo(2 * (r - SPEED * lag), within(0.02 * SPEED * lag));
        assertThat(voyage.sinksLater()).isFalse();
        double rise = voyage.riseTime();
        assertThat(voyage.fizzTime()).isGreaterThan(R * (1 - Math.cbrt(0.01)) / SPEED);
        voyage.runUntilRise(launch);
        assertThat(voyage.riseTime()).isEqualTo(rise);
        assertThat(voyage.floatsAtOnce(launch)).isFalse();
        // on the bottom its balance was near zero for longer than half a minute a thousandth where it grows so slowly
        assertThat(voyage.grazes()).isEqualTo(1e-3 / growth > 30);
    }

    /** A rest of less than a tenth that comes up is a crumb: it stays down, and only the time is told. */
    @Test
    void aCrumbThatComesUp() {
        double r = R * Math.cbrt(0.08);
        double layer = layerOnBottom(launch(BALL, 1.2 * RHO * WHOLE, 0.45));
        for (int i = 0; i < 3; i++) {
            layer = layerOnBottom(launch(BALL, RHO * (1 + 3 * layer / r) * WHOLE, 0.45));
        }
        QuickVoyage voyage = voyage(BALL, Release.DROPPED);
        voyage.run(launch(BALL, RHO * (1 + 3 * layer / r) * WHOLE, 0.45));
        assertThat(voyage.outcome()).isEqualTo(Outcome.STAYS_DOWN);
        assertThat(voyage.riseTime()).isNaN();
        assertThat(voyage.upTime()).isGreaterThan((R - r) / SPEED);
        assertThat(voyage.upWidth()).isPositive().isLessThan(2 * r);
    }

    /**
     * Round a core of mass m_c and volume V_c, a light body carries down to V (rho - rho_b) = m_c - rho V_c: it floats by the
     * draft of its load until then, and sinks with the rest.
     */
    @Test
    void aCoreThatPullsItUnder() {
        Shape shape = Loaded.with(BALL, new Inset(0.020, 10e-6));
        double light = 0.8 * RHO;
        double body = shape.volume();
        double under = (0.020 - RHO * 10e-6) / (RHO - light);
        Launch launch = launch(shape, light * body + 0.020, 0);
        QuickVoyage voyage = voyage(shape, Release.DROPPED);
        voyage.run(launch);
        assertThat(voyage.outcome()).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.sinksLater()).isTrue();
        assertThat(voyage.staysToTheEnd()).isEqualTo(under < 0.1 * body);
        assertThat(voyage.margin())
                .isCloseTo((RHO * (body + 10e-6) - light * body - 0.020) / (RHO * body), within(1e-6));
        // afloat: dr = -v x dt, x the draft of load over room; then wet all over
        double end = Math.cbrt(3 * (0.01 * body + 10e-6) / (4 * Math.PI));
        double sinks = Math.cbrt(3 * (under + 10e-6) / (4 * Math.PI));
        double time = (sinks - end) / SPEED;
        int steps = 4000;
        for (int i = 0; i < steps; i++) {
            double r = sinks + (R - sinks) * (i + 0.5) / steps;
            double room = 4 * Math.PI / 3 * r * r * r;
            double load = light * (room - 10e-6) + 0.020;
            time += (R - sinks) / steps / (SPEED * Draft.ballDraft(Math.min(1, load / (RHO * room))));
        }
        assertThat(voyage.fizzTime()).isCloseTo(time, withinPercentage(0.5));
        assertThat(voyage.floatsAtOnce(launch)).isTrue();
        assertThat(voyage.floatsToTheEnd(launch)).isEqualTo(under < 0.1 * body);
        // the smallest spare on the way to a tenth, over the displacement of the body; while far from 0 it is looked at
        // each
        // fourth of 200 depths, of which one takes 2.4 % of the volume there
        double least = (RHO * (0.1 * body + 10e-6) - light * 0.1 * body - 0.020) / (RHO * 0.1 * body);
        double ahead = (0.020 - RHO * 10e-6) / (RHO * 0.1 * body) * 4 * 0.024;
        assertThat(voyage.reserve(launch)).isBetween(least - 1e-6, least + ahead);
    }

    /** Spare of 1 + 3 l/r - rho_b/rho at the last moment from which it comes up within 20 s of the drop. */
    @Test
    void spareInTime() {
        Launch launch = launch(BALL, 1.04 * RHO * WHOLE, 0.45);
        double layer = layerOnBottom(launch);
        double moment = 20;
        for (int i = 0; i < 20; i++) {
            double r = R - SPEED * moment;
            double lag = Resistance.ball()
                    .lag(3 * layer * SPEED / (r * r), BATH.depth() - 2 * r, 4 * Math.PI / 3 * r * r * r, 2 * r);
            moment = 20 - lag;
        }
        double r = R - SPEED * moment;
        assertThat(voyage(BALL, Release.DROPPED).spareInTime(launch)).isCloseTo(1 + 3 * layer / r - 1.04, within(2e-4));
    }

    /**
     * Two methods for one law: the equation of motion and the walk by depths tell the same of boats and other pieces. Fizz
     * times within 1 % and the time in which the moving piece of the full one comes to rest; rise times within half of the way
     * up, of 8 s as a rule.
     */
    @Test
    void quickAndFullAgree() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        double closed = 2 * Math.PI / 3 * Math.pow(0.045, 3);
        int sunk = 0;
        int afloat = 0;
        for (Release release : Release.values()) {
            VoyageForm form = VoyageForm.of(bowl, release);
            FullVoyage full = FullVoyage.of(form, BATH);
            QuickVoyage quick = new QuickVoyage(form, BATH);
            for (double share : new double[] {0.5, 0.6, 0.75, 0.9, 0.97, 1.05}) {
                for (double layer : new double[] {0, 0.45}) {
                    Launch launch = launch(bowl, share * RHO * closed, layer);
                    Voyage slow = full.run(launch);
                    quick.run(launch);
                    String as = release + " " + share + " " + layer + " " + slow.events();
                    assertThat(quick.outcome()).as(as).isEqualTo(slow.outcome());
                    // one whose air is let out near its balance bobs under for a moment, which the quick one does not
                    // know
                    boolean bobs = slow.events().stream().anyMatch(it -> it.kind() == VoyageEvent.Kind.PIERCED);
                    if (!bobs) {
                        assertThat(quick.sinksLater()).as(as).isEqualTo(slow.sinksLater());
                        assertThat(quick.staysToTheEnd()).as(as).isEqualTo(slow.floatsToTheEnd());
                    }
                    double moving = slow.events().get(0).kind() == VoyageEvent.Kind.SETTLES
                            ? slow.events().get(0).time()
                            : 0;
                    assertThat(quick.fizzTime())
                            .as(as)
                            .isCloseTo(slow.fizzTime(), within(0.01 * slow.fizzTime() + moving));
                    if (slow.outcome() == Outcome.RISES_LATER) {
                        assertThat(quick.riseTime())
                                .as(as)
                                .isCloseTo(slow.riseTime().orElseThrow(), within(4.0));
                    }
                    sunk += slow.outcome() == Outcome.STAYS_DOWN ? 1 : 0;
                    afloat += slow.outcome() == Outcome.FLOATS_AT_ONCE ? 1 : 0;
                }
            }
        }
        assertThat(List.of(sunk, afloat)).allSatisfy(count -> assertThat(count).isGreaterThan(4));
    }

    /** A boat just let go has the closed half ball to displace with: what is left of it is margin and reserve. */
    @Test
    void aBoatAtTheDrop() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        double closed = 2 * Math.PI / 3 * Math.pow(0.045, 3);
        QuickVoyage voyage = voyage(bowl, Release.PLACED);
        Launch heavy = launch(bowl, 1.05 * RHO * closed, 0);
        voyage.run(heavy);
        assertThat(voyage.outcome()).isEqualTo(Outcome.STAYS_DOWN);
        assertThat(voyage.reserve(heavy)).isLessThan(-0.05 + 1e-6);
        Launch light = launch(bowl, 0.8 * RHO * closed, 0);
        assertThat(voyage.floatsAtOnce(light)).isTrue();
        assertThat(voyage.margin()).isLessThan(0.2 + 1e-6);
    }
}
