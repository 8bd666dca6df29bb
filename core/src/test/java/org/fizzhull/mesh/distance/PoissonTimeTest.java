package org.fizzhull.mesh.distance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/** Exact time constants of diffusion out of meshes. ANALYTIC. */
class PoissonTimeTest {
    /** Triple sine series of the cube of side 1: the mean of u is 512/pi^8 times a sum over odd numbers. */
    private static double cube() {
        double sum = 0;
        for (int l = 1; l < 80; l += 2) {
            for (int m = 1; m < 80; m += 2) {
                for (int n = 1; n < 80; n += 2) {
                    double squares = l * l + m * m + n * n;
                    sum += 1 / ((double) l * l * m * m * n * n * squares);
                }
            }
        }
        return 512 / Math.pow(Math.PI, 8) * sum;
    }

    /** Observed order 2 within a band on the cube: a step half as long takes the error to a quarter. */
    @Test
    void orderTwoOnACube() {
        TriangleMesh box = HullBodies.box(1, 1, 1);
        double exact = cube();
        double coarse = exact - PoissonTime.on(box, false, false, 0.5, 0.5 / 7);
        double fine = exact - PoissonTime.on(box, false, false, 0.5, 0.5 / 14);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(1.6, 2.4);
        assertThat(fine).isCloseTo(0, within(0.004 * exact));
    }

    /** Half a cube on its closed face is a cube seen in a mirror. */
    @Test
    void closedFaceIsAMirror() {
        double found = PoissonTime.of(HullBodies.box(1, 1, 0.5), true, false, 0.5);
        assertThat(found).isCloseTo(cube(), within(0.004 * cube()));
    }

    /** R^2/15 for a ball; its mesh of 90 by 45 facets is 0.2 % smaller in R^2. */
    @Test
    void ball() {
        assertThat(PoissonTime.of(HullBodies.ellipsoid(1, 1, 1, 90), false, false, 1))
                .isCloseTo(1 / 15.0, within(0.003 / 15));
    }

    /**
     * A hollow ball of radii R and a, dry inside: u = (R^2 - r^2)/6 - (a^3/3)(1/r - 1/R), integrated in closed form. The
     * wall without flux is of first order: 3 %.
     */
    @Test
    void hollowWithoutFlux() {
        double a = 0.5;
        TriangleMesh outer = HullBodies.ellipsoid(1, 1, 1, 60);
        TriangleMesh inner = HullBodies.ellipsoid(-a, a, a, 60);
        int shared = outer.vertexCount();
        double[] xyz = new double[6 * shared];
        int[] corners = new int[6 * outer.facetCount()];
        for (int i = 0; i < 3 * shared; i++) {
            xyz[i] = outer.at(i / 3, i % 3);
            xyz[i + 3 * shared] = inner.at(i / 3, i % 3);
        }
        for (int i = 0; i < 3 * outer.facetCount(); i++) {
            corners[i] = outer.corner(i / 3, i % 3);
            corners[i + 3 * outer.facetCount()] = inner.corner(i / 3, i % 3) + shared;
        }
        double volume = 4 * Math.PI / 3 * (1 - a * a * a);
        double integral = 4
                * Math.PI
                * ((1 - a * a * a) / 18
                        - (1 - Math.pow(a, 5)) / 30
                        - a * a * a / 3 * ((1 - a * a) / 2 - (1 - a * a * a) / 3));
        double exact = integral / volume;
        assertThat(PoissonTime.on(new TriangleMesh(xyz, corners), false, true, 0.5, 0.05))
                .isCloseTo(exact, within(0.03 * exact));
    }
}
