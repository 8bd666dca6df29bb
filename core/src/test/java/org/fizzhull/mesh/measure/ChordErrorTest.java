package org.fizzhull.mesh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The stated error of meshes against the true one. ANALYTIC. */
class ChordErrorTest {
    /** An ellipsoid of 4 pi a b c / 3: to a tenth of the error. */
    @ParameterizedTest
    @ValueSource(ints = {24, 48, 96})
    void ellipsoid(int chords) {
        TriangleMesh mesh = HullBodies.ellipsoid(3, 2, 1.5, chords);
        double lacks = 4 * Math.PI / 3 * 3 * 2 * 1.5 - MassProperties.of(mesh).volume();
        ChordError error = ChordError.of(mesh);
        assertThat(error.volume()).isCloseTo(lacks, within(0.1 * lacks));
        assertThat(error.spread()).isCloseTo(error.volume(), within(1e-3 * lacks));
    }

    /**
     * A cylinder of n chords: pi r^2 h (1 - sin(t)/t), t = 2 pi/n, and r (1 - cos(t/2)) off the middle of a chord. One
     * row of halved rectangles is the worst case: of those that meet in a corner one counts twice, so that the
     * estimate is a sixth low.
     */
    @Test
    void cylinderKeepsItsEdges() {
        int n = 60;
        ChordError error = ChordError.of(HullBodies.turned(new double[][] {{0, 0}, {2, 0}, {2, 3}, {0, 3}}, n));
        double turn = 2 * Math.PI / n;
        double lacks = Math.PI * 4 * 3 * (1 - Math.sin(turn) / turn);
        assertThat(error.volume()).isCloseTo(lacks, within(0.2 * lacks));
        assertThat(error.height()).isCloseTo(2 * (1 - Math.cos(turn / 2)), within(2e-4));
    }

    /** Inside a ring half of the surface curves the other way along it: volume 2 pi^2 R r^2. */
    @Test
    void ring() {
        int n = 80;
        double[][] circle = new double[n + 1][];
        for (int i = 0; i <= n; i++) {
            double a = 2 * Math.PI * i / n;
            circle[i] = new double[] {3 + Math.cos(a), Math.sin(a)};
        }
        circle[n] = circle[0];
        TriangleMesh mesh = HullBodies.turned(circle, 2 * n);
        double lacks = 2 * Math.PI * Math.PI * 3 - MassProperties.of(mesh).volume();
        assertThat(ChordError.of(mesh).volume()).isCloseTo(lacks, within(0.1 * lacks));
    }

    /** A block has edges, not chords. */
    @Test
    void blocksAreExact() {
        assertThat(ChordError.of(HullBodies.box(1, 2, 3))).isEqualTo(new ChordError(0, 0, 0));
    }
}
