package org.fizzhull.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/** Hollows on top against closed forms. ANALYTIC, to the cells of the grid. */
class TopPitsTest {
    private static final double[] UPSIDE_DOWN = {1, 0, 0, 0, -1, 0, 0, 0, -1};

    /** A cup with a cone in it: pi r^2 h/3 up to the rim. */
    @Test
    void cupOfACone() {
        TriangleMesh cup = HullBodies.turned(new double[][] {{0, 0}, {4, 0}, {4, 3}, {3, 3}, {0, 1}}, 180);
        assertThat(TopPits.volume(cup)).isCloseTo(Math.PI * 9 * 2 / 3, within(0.5));
        assertThat(TopPits.volume(HullBodies.moved(cup, UPSIDE_DOWN, 0, 0, 0))).isEqualTo(0);
    }

    /** A post does not fill, the moat around it does, to the lower of its two rims. */
    @Test
    void moat() {
        double[][] outline = {{0, 0}, {4, 0}, {4, 2}, {3, 2}, {3, 1}, {1, 1}, {1, 3}, {0, 3}};
        TriangleMesh moat = HullBodies.turned(outline, 180);
        assertThat(TopPits.volume(moat)).isCloseTo(Math.PI * (9 - 1), within(0.8));
    }

    /** Nothing stands on a block, a ball or in a hole that goes through. */
    @Test
    void nothingStands() {
        assertThat(TopPits.volume(HullBodies.box(1, 2, 3))).isEqualTo(0);
        assertThat(TopPits.volume(HullBodies.ellipsoid(1, 1, 1, 32))).isLessThan(1e-3);
        double[][] pipe = {{1, 0}, {2, 0}, {2, 3}, {1, 2}, {1, 0}};
        assertThat(TopPits.volume(HullBodies.turned(pipe, 60))).isLessThan(0.02);
    }
}
