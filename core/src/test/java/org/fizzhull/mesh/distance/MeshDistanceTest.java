package org.fizzhull.mesh.distance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;

/** Distances, balls, crossings and rays against elementary geometry. ANALYTIC. */
class MeshDistanceTest {
    /** Outside of a box the nearest point is that of its surface whose coordinates are cut off at the faces. */
    @Test
    void distanceToTriangles() {
        TriangleMesh box = HullBodies.box(2, 3, 1);
        Random random = new Random(5);
        double[] way = new double[3];
        NearestFacet nearest = new NearestFacet(new FacetTree(box));
        for (int i = 0; i < 2000; i++) {
            double x = 6 * random.nextDouble() - 3;
            double y = 6 * random.nextDouble() - 3;
            double z = 6 * random.nextDouble() - 3;
            double ax = Math.abs(x) - 1;
            double ay = Math.abs(y) - 1.5;
            double az = Math.abs(z) - 0.5;
            double out = Math.sqrt(
                    Math.pow(Math.max(0, ax), 2) + Math.pow(Math.max(0, ay), 2) + Math.pow(Math.max(0, az), 2));
            double in = -Math.max(ax, Math.max(ay, az));
            double least = Double.POSITIVE_INFINITY;
            for (int f = 0; f < box.facetCount(); f++) {
                double squared = PointTriangle.squared(corners(box, f), 0, x, y, z, way);
                assertThat(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]).isEqualTo(squared);
                least = Math.min(least, Math.sqrt(squared));
            }
            assertThat(nearest.distance(x, y, z)).isCloseTo(least, within(1e-4 * least + 1e-14));
            assertThat(nearest.distance(x, y, z, 1.1 * least)).isCloseTo(least, within(1e-4 * least + 1e-14));
            assertThat(nearest.distance(x, y, z, 0.9 * least)).isEqualTo(0.9 * least);
            assertThat(least).isCloseTo(out > 0 ? out : in, within(1e-14));
        }
    }

    /** A line through a body runs inside it where the winding number is 1, on a body that is not convex. */
    @Test
    void stretchesOfALine() {
        TriangleMesh mesh = wavy();
        Random random = new Random(7);
        double[] x = new double[40];
        double[] y = new double[40];
        for (int i = 0; i < x.length; i++) {
            x[i] = random.nextDouble() - 0.5;
            y[i] = random.nextDouble() - 0.5;
        }
        RayTable rays = new RayTable(mesh, 2, x, y);
        for (int i = 0; i < x.length; i++) {
            assertThat(rays.end(i)).isGreaterThan(rays.first(i));
            for (int k = 0; k < 300; k++) {
                double z = 3 * (k + 0.5) / 300 - 1.5;
                assertThat(rays.inside(i, z))
                        .as("line %s at %s", i, z)
                        .isEqualTo(winding(mesh, new Vec3(x[i], y[i], z)) > 0.5);
            }
        }
    }

    /** Winding number: solid angles over 4 pi (van Oosterom and Strackee 1983, from memory). */
    private static double winding(TriangleMesh mesh, Vec3 at) {
        double sum = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            double[] t = corners(mesh, f);
            Vec3 a = new Vec3(t[0], t[1], t[2]).minus(at);
            Vec3 b = new Vec3(t[3], t[4], t[5]).minus(at);
            Vec3 c = new Vec3(t[6], t[7], t[8]).minus(at);
            double below =
                    a.norm() * b.norm() * c.norm() + a.dot(b) * c.norm() + b.dot(c) * a.norm() + c.dot(a) * b.norm();
            sum += 2 * Math.atan2(a.dot(b.cross(c)), below);
        }
        return sum / (4 * Math.PI);
    }

    private static TriangleMesh wavy() {
        double[][] meridian = new double[41][];
        for (int i = 0; i <= 40; i++) {
            double t = Math.PI * i / 40;
            meridian[i] = new double[] {i % 40 == 0 ? 0 : Math.sin(t) * (1 + 0.4 * Math.cos(6 * t)), -Math.cos(t)};
        }
        return HullBodies.turned(meridian, 26);
    }

    private static double[] corners(TriangleMesh mesh, int facet) {
        double[] xyz = new double[9];
        for (int k = 0; k < 9; k++) {
            xyz[k] = mesh.at(mesh.corner(facet, k / 3), k % 3);
        }
        return xyz;
    }

    /** Rays that run exactly through edges and corners are inside for just one stretch. */
    @Test
    void raysThroughEdgesAndCorners() {
        TriangleMesh box = HullBodies.box(2, 2, 2);
        for (int axis = 0; axis < 3; axis++) {
            RayTable rays = RayTable.lattice(box, axis, -2, -2, 0.5, 0.5, 9, 9);
            for (int j = 0; j < 9; j++) {
                for (int i = 0; i < 9; i++) {
                    boolean middle = i > 2 && i < 6 && j > 2 && j < 6;
                    boolean rim = !middle && i >= 2 && i <= 6 && j >= 2 && j <= 6;
                    assertThat(rays.inside(9 * j + i, 1.5)).isFalse();
                    assertThat(rays.inside(9 * j + i, -1.5)).isFalse();
                    if (!rim) {
                        assertThat(rays.inside(9 * j + i, 0.1))
                                .as("%s %s %s", axis, i, j)
                                .isEqualTo(middle);
                    }
                }
            }
        }
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
