package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/** ANALYTIC: tables of a ball (Archimedes: wet share and draft are one) and of an upright prism (straight lines). */
class ImmersionTablesTest {
    private static final Hull BALL = HullBodies.ball(1);
    private static final Immersion OF_A_BALL = whole(BALL, 4 * Math.PI);

    /** Tables of which every node is worked out at once. */
    private static Immersion whole(Hull hull, double surface) {
        Immersion made = new Immersion(hull, Vec3.UP, surface);
        made.evaluate();
        return made;
    }

    /** A prism 2 by 3 and 4 high, whose side is 40 of 52: depth and fraction are one, and the side gets wet evenly. */
    @Test
    void aPrism() {
        double whole = 2 * 6 + 40;
        Hull block = HullBodies.block(2, 3, 4);
        for (Immersion prism :
                new Immersion[] {Immersion.ofPrism(6, whole), new Immersion(block, Vec3.UP, whole), whole(block, whole)
                }) {
            for (double x : new double[] {0.01, 0.3, 0.5, 0.77, 0.95}) {
                assertThat(prism.fraction(x)).isCloseTo(x, within(1e-7));
                assertThat(prism.depth(x)).isCloseTo(x, within(1e-7));
                assertThat(prism.plane(x)).isCloseTo(1, within(1e-7));
                assertThat(prism.wet(x)).isCloseTo((6 + 40 * x) / whole, within(1e-6));
                assertThat(prism.wetting(x)).isCloseTo(40 / whole, within(1e-4));
            }
            assertThat(prism.wet(0)).as("its lower flat").isCloseTo(6 / whole, within(1e-5));
            // the upper flat gets wet in the last of 64 cells
            assertThat(prism.wetting(0.999)).isCloseTo(40 / whole + 64 * 6 / whole, within(1e-3));
        }
    }

    /** Out of the water nothing is under, wholly under all is, and what stands beside 0 to 1 counts as its end. */
    @Test
    void theEnds() {
        for (double beside : new double[] {0, -0.5}) {
            assertThat(OF_A_BALL.fraction(beside)).isZero();
            assertThat(OF_A_BALL.plane(beside)).isZero();
            assertThat(OF_A_BALL.depth(beside)).isZero();
            assertThat(OF_A_BALL.wet(beside)).isCloseTo(0, within(1e-3));
            // per share of the volume, from a table that begins at a millionth: sqrt(1/3) sqrt(s) over its first cell
            assertThat(OF_A_BALL.wetting(beside)).isCloseTo(OF_A_BALL.wetting(0.01), within(1e-12));
        }
        for (double beside : new double[] {1, 1.5}) {
            assertThat(OF_A_BALL.fraction(beside)).isEqualTo(1);
            assertThat(OF_A_BALL.plane(beside)).isZero();
            assertThat(OF_A_BALL.depth(beside)).isEqualTo(1);
            assertThat(OF_A_BALL.wet(beside)).isEqualTo(1);
            assertThat(OF_A_BALL.wetting(beside)).isCloseTo(OF_A_BALL.wetting(0.99), within(1e-12));
        }
    }

    /** Water plane of a ball x deep: its area pi (2 x)(2 - 2 x) times the height over the volume, 6 x (1 - x). */
    @Test
    void theWaterPlaneOfABall() {
        for (int i = 1; i < 64; i++) {
            double x = i / 64.0;
            assertThat(OF_A_BALL.plane(x)).isCloseTo(6 * x * (1 - x), within(1e-9));
        }
        // between nodes on a chord, below the parabola by at most 6/4/64^2
        assertThat(OF_A_BALL.plane(32.5 / 64)).isCloseTo(1.5, within(6.0 / 4 / 64 / 64 + 6e-4));
    }

    /** At the nodes of the fraction the draft is that of the cubic; the growth of the wet share is the difference quotient. */
    @Test
    void draftAndWetShareOfABall() {
        for (int i = 1; i < 64; i++) {
            double x = Draft.ballDraft(i / 64.0);
            assertThat(x * x * (3 - 2 * x)).isCloseTo(i / 64.0, within(1e-12));
            assertThat(OF_A_BALL.depth(i / 64.0)).isCloseTo(x, within(1e-9));
            assertThat(OF_A_BALL.wet(i / 64.0)).isCloseTo(x, within(1e-9));
            double next = i == 63 ? 1 : Draft.ballDraft((i + 1) / 64.0);
            assertThat(OF_A_BALL.wetting((i + 0.5) / 64)).isCloseTo(64 * (next - x), within(1e-7));
        }
        // between nodes of the middle the cubic follows to the fourth order of 1/64
        assertThat(OF_A_BALL.depth(0.5 + 0.5 / 64)).isCloseTo(Draft.ballDraft(0.5 + 0.5 / 64), within(1e-6));
        assertThat(OF_A_BALL.depth(0.3 + 0.1 / 64)).isCloseTo(Draft.ballDraft(0.3 + 0.1 / 64), within(1e-5));
    }

    /** Tables that are worked out where they are read hold the same bits as whole ones, whatever is read first. */
    @Test
    void tablesReadInAnyOrder() {
        for (double x : new double[] {0.999, 0.5, 0.013, 0.25, 1 / 64.0}) {
            Immersion once = new Immersion(BALL, Vec3.UP, 4 * Math.PI);
            assertThat(once.wetting(x)).isEqualTo(OF_A_BALL.wetting(x));
            assertThat(once.wet(x)).isEqualTo(OF_A_BALL.wet(x));
            Immersion again = new Immersion(BALL, Vec3.UP, 4 * Math.PI);
            assertThat(again.plane(x)).isEqualTo(OF_A_BALL.plane(x));
            assertThat(again.fraction(x)).isEqualTo(OF_A_BALL.fraction(x));
            assertThat(again.depth(x)).isEqualTo(OF_A_BALL.depth(x));
        }
    }
}
