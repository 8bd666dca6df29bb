package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** ANALYTIC: the grid of a ball of radius R, of which 4/3 pi (R - d)^3 is left at the depth d. */
class ErosionGridTest {
    private static final double R = 0.0325;
    private static final DepthProfile PROFILE = Sphere.ofDiameter(2 * R).depthProfile(DepthProfile.Exposure.ALL);
    private static final ErosionGrid GRID = evaluated(new ErosionGrid(PROFILE, 200));
    private static final double WHOLE = volume(0);

    private static ErosionGrid evaluated(ErosionGrid grid) {
        grid.evaluate();
        return grid;
    }

    private static double volume(double d) {
        return 4 * Math.PI / 3 * Math.pow(R - d, 3);
    }

    private static double area(double d) {
        return 4 * Math.PI * (R - d) * (R - d);
    }

    /** A hundredth is left at R (1 - 0.01^(1/3)), a tenth at R (1 - 0.1^(1/3)), nothing at R. */
    @Test
    void depthsOfTheEndAndOfACrumb() {
        assertThat(GRID.cells * GRID.step).isCloseTo(R * (1 - Math.cbrt(0.01)), within(1e-12));
        assertThat(GRID.crumb).isCloseTo(R * (1 - Math.cbrt(0.1)), within(1e-12));
    }

    /** The volume of a ball is a cubic of the depth, so that between nodes its cubic is exact, and so is the area. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.5, 0.9, 1})
    void volumeAndAreaBetweenNodes(double t) {
        for (int i : new int[] {0, 57, 199}) {
            double d = (i + t) * GRID.step;
            assertThat(GRID.volume(i, t)).isCloseTo(volume(d), within(1e-12 * WHOLE));
            assertThat(GRID.area(i, t)).isCloseTo(area(d), withinPercentage(1e-7));
        }
    }

    /** The inverse, from any guess; beyond the end the area stays what it is there. */
    @ParameterizedTest
    @ValueSource(ints = {0, 50, 199, 250})
    void stepsToAVolume(int guess) {
        for (double d : new double[] {0, 1e-4, 0.01, 0.0125, 0.025}) {
            assertThat(GRID.stepsTo(volume(d), guess)).isCloseTo(d / GRID.step, within(1e-7));
        }
        double end = GRID.cells * GRID.step;
        assertThat(GRID.stepsTo(volume(end), guess)).isCloseTo(GRID.cells, within(1e-7));
        double beyond = volume(end) - 0.5 * area(end) * GRID.step;
        assertThat(GRID.stepsTo(beyond, guess)).isCloseTo(GRID.cells + 0.5, within(1e-6));
    }

    /** Analytic: a ball of which a share s is left has receded by R (1 - s^(1/3)); the ends stand for what is beyond. */
    @Test
    void depthOfAVolume() {
        assertThat(ErosionGrid.depthOf(PROFILE, 0.3 * WHOLE, 0.001)).isCloseTo(R * (1 - Math.cbrt(0.3)), within(1e-12));
        assertThat(ErosionGrid.depthOf(PROFILE, 0.3 * WHOLE, 0.03)).isCloseTo(R * (1 - Math.cbrt(0.3)), within(1e-12));
        assertThat(ErosionGrid.depthOf(PROFILE, WHOLE, 0.01)).isZero();
        assertThat(ErosionGrid.depthOf(PROFILE, 0, 0.01)).isCloseTo(R, within(1e-12));
    }

    /** A grid that is evaluated where it is asked holds what one does that is evaluated at once, to the last bit. */
    @Test
    void whatIsAskedForIsWhatWouldHaveStoodThere() {
        ErosionGrid once = new ErosionGrid(PROFILE, 200);
        assertThat(once.areaAt(120)).isEqualTo(GRID.areaAt(120));
        assertThat(once.volumeAt(7)).isEqualTo(GRID.volumeAt(7));
    }

    /**
     * Afloat with one face dry, here a slab of the same volume that recedes from one side: of a volume V the front stands at
     * (V0 - V)/A, and its area stays A.
     */
    @Test
    void theFrontOfAPieceThatFloats() {
        double area = 5e-3;
        double deepest = WHOLE / area;
        DepthProfile slab =
                new DepthProfile(new double[] {0, deepest}, new double[] {WHOLE, 0}, new double[] {area, area}, 0);
        AfloatFront evaluated = new AfloatFront(() -> Optional.of(slab), GRID);
        evaluated.evaluate();
        for (AfloatFront front : List.of(evaluated, new AfloatFront(() -> Optional.of(slab), GRID))) {
            assertThat(front.keepsUp()).isTrue();
            assertThat(front.way(0, 40)).isCloseTo((WHOLE - volume(40 * GRID.step)) / area, within(1e-9));
            assertThat(front.way(40, 41))
                    .isCloseTo((volume(40 * GRID.step) - volume(41 * GRID.step)) / area, within(1e-9));
            // from the middle of a cell half of its way is left
            assertThat(front.way(40.5, 41)).isCloseTo(front.way(40, 41) / 2, withinPercentage(1e-6));
            assertThat(front.way(0.25, 1)).isCloseTo(0.75 * front.way(0, 1), withinPercentage(1e-6));
            assertThat(front.area(0.4 * WHOLE, 50)).isCloseTo(area, withinPercentage(1e-6));
        }
        AfloatFront none = new AfloatFront(Optional::empty, GRID);
        none.evaluate();
        assertThat(none.keepsUp()).isFalse();
        assertThatIllegalStateException().isThrownBy(() -> none.way(0, 1));
    }
}
