package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicInteger;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/**
 * How many cuts a search takes. By the convergence of Newton's method: the number of right digits doubles with each, so that a
 * smooth volume is solved to 1e-13 in some five from within a tenth, where halving would take 43; a start at the answer needs
 * one, and one beside it two.
 */
class SearchCostTest {
    private final AtomicInteger cuts = new AtomicInteger();

    /** The same hull that counts its cuts. */
    private Hull counted(Hull hull) {
        return (Hull) Proxy.newProxyInstance(
                Hull.class.getClassLoader(), new Class<?>[] {Hull.class}, (self, method, given) -> {
                    if (method.getName().equals("cut")) {
                        cuts.incrementAndGet();
                    }
                    try {
                        return method.invoke(hull, given);
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                });
    }

    private int cutsOf(Runnable search) {
        cuts.set(0);
        search.run();
        return cuts.get();
    }

    private static void level(Hull hull, Vec3 up, double displaced, double guess) {
        Draft.level(hull, up.x(), up.y(), up.z(), displaced, guess, new PlaneCut());
    }

    /** A straight-sided body is found at once, from no guess as from any. */
    @Test
    void straightSides() {
        Hull brick = counted(HullBodies.block(1, 2, 3));
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2.1, Double.NaN))).isLessThanOrEqualTo(2);
        // a guess beside the body counts as none
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2.1, 7))).isLessThanOrEqualTo(2);
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2.1, -7))).isLessThanOrEqualTo(2);
        // level of a third of it: half a metre below the middle
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2, -0.5))).isLessThanOrEqualTo(2);
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2, 1))).isLessThanOrEqualTo(3);
    }

    @Test
    void aConeIsSolvedByNewtonsMethod() {
        Hull cone = counted(HullBodies.cone(1, 2));
        for (double s : new double[] {0.2, 0.5, 0.8}) {
            double displaced = s * cone.volume();
            for (Vec3 up : new Vec3[] {Vec3.UP, new Vec3(0.6, 0, 0.8), new Vec3(0, 0, -1)}) {
                assertThat(cutsOf(() -> level(cone, up, displaced, Double.NaN))).isLessThanOrEqualTo(9);
                double answer = Draft.of(HullBodies.cone(1, 2), up, displaced).level();
                assertThat(cutsOf(() -> level(cone, up, displaced, answer))).isLessThanOrEqualTo(2);
                assertThat(cutsOf(() -> level(cone, up, displaced, answer + 1e-4)))
                        .isLessThanOrEqualTo(4);
            }
        }
    }

    /** Turned by a hundredth, the water plane pivots about its own centroid: the next draft lies within 1e-4 of that. */
    @Test
    void aSmallTurnStartsFromTheLastDraft() {
        Hull cone = counted(HullBodies.cone(1, 2));
        Floating body = new Floating(cone, cone.centroid(), 0.4 * cone.volume());
        double angle = 0.7;
        body.at(Math.sin(angle) * 0.6, Math.sin(angle) * 0.8, Math.cos(angle));
        double turned = angle + 0.01;
        int taken = cutsOf(() -> body.at(Math.sin(turned) * 0.6, Math.sin(turned) * 0.8, Math.cos(turned)));
        assertThat(taken).isLessThanOrEqualTo(4);
        Hull plain = HullBodies.cone(1, 2);
        Vec3 up = new Vec3(Math.sin(turned) * 0.6, Math.sin(turned) * 0.8, Math.cos(turned));
        assertThat(body.level)
                .isCloseTo(Draft.of(plain, up, 0.4 * plain.volume()).level(), within(1e-12));
    }

    /** A body of revolution: 37 drafts of the scan and some Newton steps for each of its turning points. */
    @Test
    void aBodyOfRevolution() {
        Hull cone = counted(HullBodies.cone(30, 60));
        // three ways at s = 0.55, with two summits between them
        int taken = cutsOf(() -> Attitudes.find(cone, cone.centroid(), 0.55));
        assertThat(taken).isLessThan(400);
    }
}
