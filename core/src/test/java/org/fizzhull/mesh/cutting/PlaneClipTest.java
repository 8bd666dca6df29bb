package org.fizzhull.mesh.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

class PlaneClipTest {
    private static final double ROOT3 = Math.sqrt(3);
    private final PlaneCut cut = new PlaneCut();

    private void cutUnitCube(double nx, double ny, double nz, double c) {
        double[] unit = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        new PlaneClip(new FacetTree(HullBodies.moved(HullBodies.box(1, 1, 1), unit, .5, .5, .5)))
                .cut(nx, ny, nz, c, cut);
    }

    /** ANALYTIC: a face that lies in the plane needs no special case. */
    @Test
    void planeInAFace() {
        cutUnitCube(0, 0, 1, 1);
        assertThat(cut.volume).isCloseTo(1, within(1e-15));
        assertThat(cut.area).isCloseTo(1, within(1e-15));
        cutUnitCube(0, 0, 1, 0);
        assertThat(cut.volume).isCloseTo(0, within(1e-15));
    }

    /** ANALYTIC: x + y + z below 1 passes through three corners and leaves 1/6 with an equilateral face. */
    @Test
    void planeThroughCorners() {
        cutUnitCube(1 / ROOT3, 1 / ROOT3, 1 / ROOT3, 1 / ROOT3);
        assertThat(cut.volume).isCloseTo(1 / 6., within(1e-14));
        assertThat(cut.mx).isCloseTo(1 / 24., within(1e-14));
        assertThat(cut.area).isCloseTo(ROOT3 / 2, within(1e-14));
        assertThat(cut.ax).isCloseTo(1 / 3., within(1e-14));
        double side = Math.sqrt(2);
        assertThat(cut.juu).isCloseTo(ROOT3 * Math.pow(side, 4) / 96, within(1e-14));
        assertThat(cut.jww).isCloseTo(cut.juu, within(1e-14));
        assertThat(cut.juw).isCloseTo(0, within(1e-14));
    }

    /** SECOND-HAND (a mathematics web page gives 0.11727427) and ANALYTIC 13 sqrt3/192: half a cube, corner down. */
    @Test
    void halfACubeCornerDown() {
        new PlaneClip(new FacetTree(HullBodies.box(1, 1, 1))).cut(1 / ROOT3, 1 / ROOT3, 1 / ROOT3, 0, cut);
        assertThat(cut.volume).isCloseTo(.5, within(1e-14));
        assertThat(-(cut.mx + cut.my + cut.mz) / ROOT3).isCloseTo(13 * ROOT3 / 192, within(1e-14));
        assertThat(cut.area).isCloseTo(3 * ROOT3 / 4, within(1e-14));
    }

    /** SECOND-HAND (test code of an open-source hydrostatics library): box 10 at draft 5: volume 500, area 100. */
    @Test
    void boxAtHalfDraft() {
        new PlaneClip(new FacetTree(HullBodies.box(10, 10, 10))).cut(0, 0, 1, 0, cut);
        assertThat(cut.volume).isCloseTo(500, within(1e-10));
        assertThat(cut.area).isCloseTo(100, within(1e-11));
    }

    /** ANALYTIC: the outline of a block cut across is its rectangle, 2 by 5 about the centre. */
    @Test
    void sectionOfABlockIsARectangle() {
        List<double[][]> loops =
                MeshSection.of(HullBodies.box(2, 3, 5), Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(0, 0, 1));
        assertThat(loops).hasSize(1);
        double area = 0;
        double[][] loop = loops.get(0);
        for (int i = 0; i < loop.length; i++) {
            double[] a = loop[i];
            double[] b = loop[(i + 1) % loop.length];
            area += (a[0] * b[1] - a[1] * b[0]) / 2;
        }
        assertThat(Math.abs(area)).isCloseTo(10, within(1e-12));
    }
}
