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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2.1, Double.NaN))).isEqualTo(1);
        // a guess beside the body counts as none
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2.1, 7))).isEqualTo(1);
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2.1, -7))).isEqualTo(1);
        // level of a third of it: half a metre below the middle
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2, -0.5))).isEqualTo(1);
        assertThat(cutsOf(() -> level(brick, Vec3.UP, 2, 1))).isEqualTo(2);
    }

    @Test
    void aConeIsSolvedByNewtonsMethod() {
        Hull cone = counted(HullBodies.cone(1, 2));
        for (double s : new double[] {0.2, 0.5, 0.8}) {
            double displaced = s * cone.volume();
            for (Vec3 up : new Vec3[] {Vec3.UP, new Vec3(0.6, 0, 0.8), new Vec3(0, 0, -1)}) {
                assertThat(cutsOf(() -> level(cone, up, displaced, Double.NaN))).isLessThanOrEqualTo(7);
                double answer = Draft.of(HullBodies.cone(1, 2), up, displaced).level();
                assertThat(cutsOf(() -> level(cone, up, displaced, answer))).isEqualTo(1);
                assertThat(cutsOf(() -> level(cone, up, displaced, answer + 1e-4)))
                        .isLessThanOrEqualTo(3);
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

    /** A body of revolution: 37 drafts of the scan, 5 degrees apart, and some Newton steps for each of its turning points. */
    @Test
    void aBodyOfRevolution() {
        Hull cone = counted(HullBodies.cone(30, 60));
        for (double s : new double[] {0.4, 0.5, 0.55, 0.7}) {
            // up to three ways, with two summits between them: 37 x 4, and 5 turning points x 4 x 3
            assertThat(cutsOf(() -> Attitudes.find(cone, cone.centroid(), s))).isLessThan(208);
        }
    }

    /**
     * A brick of half density, its water line through its middle in any attitude by symmetry, so that a turn takes one cut: some
     * ten turns of at most 0.3 rad from anywhere, two summits or saddles left on the way from an end face.
     */
    @Test
    void aDescent() {
        Hull brick = counted(HullBodies.block(1, 2, 3));
        for (Vec3 start : new Vec3[] {
            new Vec3(0.36, 0.48, 0.8), new Vec3(0.96, 0, 0.28), new Vec3(-0.28, 0, 0.96), Vec3.UP, new Vec3(0, 1, 0)
        }) {
            Floating body = new Floating(brick, Vec3.ZERO, 3);
            double neutral = GeneralSearch.neutral(body);
            int taken = cutsOf(() -> new Descent(body).from(start.x(), start.y(), start.z(), neutral));
            assertThat(taken).isLessThan(16);
        }
        // 100 starts and 14 faces and corners, which end within a degree of what is known: nine cuts each or less
        assertThat(cutsOf(() -> Attitudes.find(brick, Vec3.ZERO, 0.5))).isLessThan(114 * 9);
    }

    /**
     * Two turning points of a body may lie within 5 degrees of each other: near where they meet, as many ways are found as the
     * righting arm, looked at each half a degree, has rises through 0, the ends counted.
     */
    @ParameterizedTest
    @CsvSource({
        "cylinder, 0.87, 0.8",
        "cylinder, 0.885, 0.8",
        "cylinder, 0.8, 0.8",
        "cylinder, 0.95, 0.8",
        "cone, 2, 0.415",
        "cone, 2, 0.4175",
        "cone, 2, 0.5825",
        "cone, 2, 0.585",
        "cone, 2, 0.41",
        "cone, 2, 0.59"
    })
    void turningPointsCloseTogether(String kind, double slim, double s) {
        Hull hull = kind.equals("cone") ? HullBodies.cone(30, 30 * slim) : HullBodies.cylinder(1, slim);
        double displaced = s * hull.volume();
        int ways = 0;
        double last = -1;
        for (int i = 1; i < 360; i++) {
            double arm = Stability.rightingArm(
                    hull, hull.centroid(), Vec3.UP, new Vec3(0, 1, 0), Math.PI * i / 360, displaced);
            ways += last < 0 && arm > 0 ? 1 : 0;
            last = arm;
        }
        // upright counts as a rise from the side before it, upside down as one to the side behind it
        ways += last < 0 ? 1 : 0;
        assertThat(Attitudes.find(hull, hull.centroid(), s)).hasSize(ways);
    }
}
