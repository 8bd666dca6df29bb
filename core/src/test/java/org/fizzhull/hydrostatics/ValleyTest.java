package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/** By symmetry: a long cylinder lies on its side and rolls freely, a ball lies any way; a cube just stable on its corner. */
class ValleyTest {
    private static final Hull LOG = HullBodies.cylinder(1, 3);

    private static Vec3 rolled(double angle) {
        return new Vec3(Math.cos(angle), Math.sin(angle), 0);
    }

    private static Floating log() {
        Floating body = new Floating(LOG, LOG.centroid(), 0.6 * LOG.volume());
        body.at(rolled(0.3));
        return body;
    }

    /** All around it the log has the same energy, and belongs to one family; leaning along its length it does not. */
    @Test
    void aLogRollsFreely() {
        Floating body = log();
        double neutral = GeneralSearch.neutral(body);
        Valley valley = new Valley(body, false, neutral);
        assertThat(body.up()).as("back where it began").isEqualTo(rolled(0.3));
        for (int i = 0; i < 100; i++) {
            body.at(rolled(2 * Math.PI * i / 100));
            assertThat(valley.holds(body)).as("turned to %s", body.up()).isTrue();
        }
        for (double lean : new double[] {0.05, 0.3, Math.PI / 2}) {
            body.at(rolled(1).times(Math.cos(lean)).plus(Vec3.UP.times(Math.sin(lean))));
            assertThat(valley.holds(body)).isFalse();
        }
        // lighter, it lies otherwise deep, and is no member
        Floating other = new Floating(LOG, LOG.centroid(), 0.4 * LOG.volume());
        other.at(rolled(0.3));
        assertThat(valley.holds(other)).isFalse();
    }

    /** A walk of 0.08 rad a stride closes after 79; it takes a few cuts each, and no second walk the other way. */
    @Test
    void theWalkClosesOnItself() {
        AtomicInteger cuts = new AtomicInteger();
        Hull counted = (Hull) Proxy.newProxyInstance(
                Hull.class.getClassLoader(), new Class<?>[] {Hull.class}, (self, method, given) -> {
                    cuts.addAndGet(method.getName().equals("cut") ? 1 : 0);
                    try {
                        return method.invoke(LOG, given);
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                });
        Floating body = new Floating(counted, LOG.centroid(), 0.6 * LOG.volume());
        body.at(rolled(0.3));
        cuts.set(0);
        Valley valley = new Valley(body, false, GeneralSearch.neutral(body));
        // the log is round about its axis: each stride keeps its draft, so that a cut or two settle it
        assertThat(cuts.get()).isBetween(78, 79 * 4);
        body.at(rolled(3));
        assertThat(valley.holds(body)).isTrue();
    }

    /** A descent into a known family ends where it comes into it, and not before. */
    @Test
    void aDescentEndsInAKnownFamily() {
        Floating body = log();
        double neutral = GeneralSearch.neutral(body);
        Valley valley = new Valley(body, false, neutral);
        Descent descent = new Descent(body);
        descent.settled(valley);
        for (Vec3 start : List.of(new Vec3(0.36, 0.48, 0.8), new Vec3(-0.8, 0.1, 0.3).unit(), Vec3.UP)) {
            assertThat(descent.from(start.x(), start.y(), start.z(), neutral)).isTrue();
            assertThat(body.nz).isCloseTo(0, within(1e-3));
            assertThat(valley.holds(body)).isTrue();
        }
        // GM of a half-sunk log along its length is far above 0, about its axis it is 0
        assertThat(body.smallerGm()).isCloseTo(0, within(1e-9));
        assertThat(body.largerGm()).isGreaterThan(0.5);
    }

    /** Where no turn lowers the energy, here since each look at it finds more, the run has failed and the body is as it was. */
    @Test
    void aRunThatFails() {
        Hull brick = HullBodies.block(1, 2, 3);
        AtomicInteger looks = new AtomicInteger();
        Hull rising = (Hull) Proxy.newProxyInstance(
                Hull.class.getClassLoader(), new Class<?>[] {Hull.class}, (self, method, given) -> {
                    try {
                        Object told = method.invoke(brick, given);
                        if (method.getName().equals("cut")) {
                            PlaneCut out = (PlaneCut) given[4];
                            double sinks = looks.incrementAndGet() * out.volume;
                            out.mx -= sinks * (double) given[0];
                            out.my -= sinks * (double) given[1];
                            out.mz -= sinks * (double) given[2];
                        }
                        return told;
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                });
        Floating body = new Floating(rising, Vec3.ZERO, 3);
        assertThat(new Descent(body).from(0.36, 0.48, 0.8, 3e-8)).isFalse();
        assertThat(body.up().minus(new Vec3(0.36, 0.48, 0.8)).norm()).isLessThan(1e-12);
    }

    /** Of a ball every direction is one family, whatever the first member. */
    @Test
    void aBallLiesAnyWay() {
        Hull ball = HullBodies.ball(1);
        Floating body = new Floating(ball, ball.centroid(), ball.volume() / 3);
        body.at(0, 0, 1);
        double neutral = 1e-4;
        Valley valley = new Valley(body, true, neutral);
        for (Vec3 way : List.of(new Vec3(1, 0, 0), new Vec3(0, -1, 0), new Vec3(0.36, 0.48, -0.8))) {
            body.at(way);
            assertThat(valley.holds(body)).isTrue();
        }
        // a heavy side gives it a GM of 0.1, which is no longer any way
        Floating heavy = new Floating(ball, ball.centroid().minus(new Vec3(0, 0, 0.1)), ball.volume() / 3);
        heavy.at(0, 0, 1);
        assertThat(valley.holds(heavy)).isFalse();
    }

    /**
     * A cube lies on its corner from s = 1/6 on (ANALYTIC, as ThresholdTest has it), at first in so narrow a hollow that few of
     * 100 starts end there: all eight are found, with the six faces, and the shares of all add up to 1.
     */
    @Test
    void attitudesWithHardlyAShare() {
        Hull cube = HullBodies.block(1, 1, 1);
        List<Attitude> ways = Attitudes.find(cube, Vec3.ZERO, 0.1675);
        long corners = ways.stream()
                .filter(it -> Math.abs(Math.abs(it.up().x()) - 1 / Math.sqrt(3)) < 1e-6)
                .count();
        assertThat(corners).isEqualTo(8);
        assertThat(ways).hasSize(14);
        assertThat(ways.stream().mapToDouble(Attitude::share).sum()).isCloseTo(1, within(1e-12));
        assertThat(ways).isSortedAccordingTo((a, b) -> Double.compare(b.share(), a.share()));
        assertThat(Attitudes.find(cube, Vec3.ZERO, 0.1660)).hasSize(6);
    }
}
