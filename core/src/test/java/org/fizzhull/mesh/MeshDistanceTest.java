package org.fizzhull.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/** Distances, rays and level volumes against elementary geometry. ANALYTIC. */
class MeshDistanceTest {
    /** A box of half sides p, q, s: outside the distance to the nearest point of it, inside that to the nearest face. */
    @Test
    void distanceToABox() {
        TriangleMesh box = HullBodies.box(2, 3, 1);
        FacetTree.Probe probe = new FacetTree(box, FaceSets.all(box)).probe();
        Random random = new Random(5);
        for (int i = 0; i < 5000; i++) {
            double x = 4 * random.nextDouble() - 2;
            double y = 4 * random.nextDouble() - 2;
            double z = 4 * random.nextDouble() - 2;
            double ax = Math.abs(x) - 1;
            double ay = Math.abs(y) - 1.5;
            double az = Math.abs(z) - 0.5;
            double out = Math.sqrt(
                    Math.pow(Math.max(0, ax), 2) + Math.pow(Math.max(0, ay), 2) + Math.pow(Math.max(0, az), 2));
            double in = -Math.max(ax, Math.max(ay, az));
            assertThat(probe.distance(x, y, z, 0)).isCloseTo(out > 0 ? out : in, within(1e-14));
        }
    }

    /** The tree finds what a look at every facet finds, on 2000 facets of a body that is not convex. */
    @Test
    void treeMissesNoFacet() {
        double[][] meridian = new double[41][];
        for (int i = 0; i <= 40; i++) {
            double t = Math.PI * i / 40;
            meridian[i] = new double[] {i % 40 == 0 ? 0 : Math.sin(t) * (1 + 0.4 * Math.cos(6 * t)), -Math.cos(t)};
        }
        TriangleMesh mesh = HullBodies.turned(meridian, 26);
        boolean[] all = FaceSets.all(mesh);
        FacetTree.Probe probe = new FacetTree(mesh, all).probe();
        double[] corner = new double[9];
        Random random = new Random(6);
        for (int i = 0; i < 300; i++) {
            double x = 3 * random.nextDouble() - 1.5;
            double y = 3 * random.nextDouble() - 1.5;
            double z = 3 * random.nextDouble() - 1.5;
            double least = Double.POSITIVE_INFINITY;
            for (int f = 0; f < mesh.facetCount(); f++) {
                for (int k = 0; k < 9; k++) {
                    corner[k] = mesh.at(mesh.corner(f, k / 3), k % 3);
                }
                least = Math.min(least, PointTriangle.squared(corner, 0, x, y, z));
            }
            assertThat(probe.distance(x, y, z, 0)).isEqualTo(Math.sqrt(least));
            assertThat(probe.distance(x, y, z, 0.01)).isBetween(Math.sqrt(least), Math.sqrt(least) + 0.01);
        }
    }

    /** Rays that run exactly through edges and corners are inside for just one stretch. */
    @Test
    void raysThroughEdgesAndCorners() {
        TriangleMesh box = HullBodies.box(2, 2, 2);
        boolean[] all = FaceSets.all(box);
        for (int axis = 0; axis < 3; axis++) {
            RayTable rays = new RayTable(box, all, axis, -2, -2, 0.5, 9, 9);
            for (int j = 0; j < 9; j++) {
                for (int i = 0; i < 9; i++) {
                    boolean middle = i > 2 && i < 6 && j > 2 && j < 6;
                    boolean rim = !middle && i >= 2 && i <= 6 && j >= 2 && j <= 6;
                    assertThat(rays.inside(i, j, 1.5)).isFalse();
                    assertThat(rays.inside(i, j, -1.5)).isFalse();
                    if (!rim) {
                        assertThat(rays.inside(i, j, 0.1))
                                .as("%s %s %s", axis, i, j)
                                .isEqualTo(middle);
                    }
                }
            }
        }
    }

    /** Corner values 0 0 0 1, 0 0 1 1 and 0 1 1 1 leave (1-t)^3, 1 - 3t^2 + 2t^3 and 1 - t^3. */
    @Test
    void levelsOfTetrahedra() {
        double[][] values = {{0, 0, 0, 1}, {0, 1, 0, 1}, {1, 1, 0, 1}};
        for (int kind = 0; kind < 3; kind++) {
            LevelVolumes levels = new LevelVolumes(10, 0.1);
            double[] v = values[kind];
            levels.add(2, v[0], v[1], v[2], v[3]);
            for (int k = 1; k < 10; k++) {
                double t = 0.1 * k;
                double left =
                        kind == 0 ? Math.pow(1 - t, 3) : kind == 1 ? 1 - 3 * t * t + 2 * t * t * t : 1 - t * t * t;
                double rate = kind == 0 ? 3 * (1 - t) * (1 - t) : kind == 1 ? 6 * t * (1 - t) : 3 * t * t;
                assertThat(levels.volumes()[k]).isCloseTo(2 * left, within(1e-14));
                assertThat(levels.rates()[k]).isCloseTo(2 * rate, within(1e-13));
            }
        }
        assertThat(LevelVolumes.positive(-1, -1, 1, -1)).isCloseTo(0.125, within(1e-15));
        assertThat(LevelVolumes.positive(2, 1, 1, 3)).isEqualTo(1);
        assertThat(LevelVolumes.positive(1, -1, 1, 1)).isCloseTo(0.875, within(1e-15));
        // the level 0 of -0.4 -0.4 0.6 0.6 is the level 0.4 of 0 0 1 1, in any order of the corners
        double wedge = 1 - 3 * 0.16 + 2 * 0.064;
        assertThat(LevelVolumes.positive(-0.4, 0.6, -0.4, 0.6)).isCloseTo(wedge, within(1e-15));
        assertThat(LevelVolumes.positive(0.6, 0.6, -0.4, -0.4)).isCloseTo(wedge, within(1e-15));
        assertThat(LevelVolumes.positive(-0.4, -0.4, 0.6, 0.6)).isCloseTo(wedge, within(1e-15));
    }

    /** Two boxes, one above the other and moved by half a side: the shadow is 1.5 of one; a ball's is that of its rim. */
    @Test
    void shadows() {
        TriangleMesh box = HullBodies.box(1, 1, 1);
        double[] turn = HullBodies.turn(0, 0, 1, 0.3);
        assertThat(Silhouette.area(HullBodies.moved(box, turn, 0, 0, 0))).isCloseTo(1, within(1e-14));
        double[] xyz = new double[48];
        int[] corners = new int[72];
        for (int v = 0; v < 16; v++) {
            xyz[3 * v] = box.at(v % 8, 0) + (v < 8 ? 0 : 0.5);
            xyz[3 * v + 1] = box.at(v % 8, 1);
            xyz[3 * v + 2] = box.at(v % 8, 2) + (v < 8 ? 0 : 2);
        }
        for (int i = 0; i < 72; i++) {
            corners[i] = box.corner(i % 36 / 3, i % 3) + (i < 36 ? 0 : 8);
        }
        TriangleMesh pair = new TriangleMesh(xyz, corners);
        assertThat(Silhouette.area(pair)).isCloseTo(1.5, within(1e-12));
        assertThat(Silhouette.area(HullBodies.moved(pair, turn, 0, 0, 0))).isCloseTo(1.5, within(1e-4));
    }
}
