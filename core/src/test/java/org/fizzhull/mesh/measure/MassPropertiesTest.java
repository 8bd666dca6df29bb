package org.fizzhull.mesh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

class MassPropertiesTest {
    /**
     * PUBLISHED (second-hand): Tonon 2004, the tetrahedron quoted in public test code. The
     * centroid by hand: the mean of the corners. The corners are printed to five decimals, which moves the volume by up
     * to about 400 x 5e-6. The paper's off-diagonal names are swapped.
     */
    @Test
    void tetrahedronOfTonon() {
        double[] xyz = {8.3322, -11.86875, .93355, .75523, 5, 16.37072, 52.61236, 5, -5.3858, 2, 5, 3};
        MassProperties it = MassProperties.of(new TriangleMesh(xyz, new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 3, 2}));
        double sign = Math.signum(it.volume());
        assertThat(sign * it.volume()).isCloseTo(1873.233236, within(2e-3));
        assertThat(it.centroid().x()).isCloseTo(15.9249475, within(1e-12));
        assertThat(it.centroid().y()).isCloseTo(.7828125, within(1e-12));
        assertThat(it.centroid().z()).isCloseTo(3.7296175, within(1e-12));
        assertThat(sign * it.inertiaX()).isCloseTo(43520.33257, within(.5));
        assertThat(sign * it.inertiaY()).isCloseTo(194711.28938, within(.5));
        assertThat(sign * it.inertiaZ()).isCloseTo(191168.76173, within(.5));
        assertThat(Math.abs(it.xy())).isCloseTo(11996.20119, within(.5));
        assertThat(Math.abs(it.zx())).isCloseTo(46343.16662, within(.5));
        assertThat(Math.abs(it.yz())).isCloseTo(4417.6615, within(.5));
    }

    /** ANALYTIC: volume abc, moments abc (b^2 + c^2)/12; far from the origin, so that the local origin counts. */
    @Test
    void boxFarAway() {
        double[] unit = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        MassProperties it = MassProperties.of(HullBodies.moved(HullBodies.box(2, 3, 5), unit, 1e5, -2e5, 3e5));
        assertThat(it.volume()).isCloseTo(30, within(1e-8));
        assertThat(it.area()).isCloseTo(62, within(1e-8));
        assertThat(it.centroid().x()).isCloseTo(1e5, within(1e-9));
        assertThat(it.inertiaX()).isCloseTo(30 * 34 / 12., within(1e-7));
        assertThat(it.inertiaZ()).isCloseTo(30 * 13 / 12., within(1e-7));
        assertThat(it.xy()).isCloseTo(0, within(1e-7));
    }

    /**
     * ANALYTIC: a turned box keeps its products of inertia by the rule of tensors; guards the signs of the
     * products.
     */
    @Test
    void productsOfATurnedBox() {
        double a = 0.3;
        MassProperties it =
                MassProperties.of(HullBodies.moved(HullBodies.box(2, 3, 5), HullBodies.turn(0, 0, 1, a), 1, 2, 3));
        double xx = 30 * 4 / 12.;
        double yy = 30 * 9 / 12.;
        assertThat(it.xy()).isCloseTo((xx - yy) * Math.sin(a) * Math.cos(a), within(1e-12));
        assertThat(it.xx()).isCloseTo(xx * Math.pow(Math.cos(a), 2) + yy * Math.pow(Math.sin(a), 2), within(1e-12));
    }
}
