package org.fizzhull.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.fizzhull.geometry.Vec3;
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
        NearestFacet nearest = new NearestFacet(new FacetTree(box, FaceSets.all(box)));
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
            assertThat(nearest.distance(x, y, z)).isCloseTo(least, within(1e-14));
            assertThat(least).isCloseTo(out > 0 ? out : in, within(1e-14));
        }
    }

    /**
     * A ball that touches from inside is shrunk to the point that a look at every facet finds, on 2000 facets of a body
     * that is not convex; what rises by less than ten degrees from where it touches does not count.
     */
    @Test
    void ballIsShrunkByTheNearestFacet() {
        TriangleMesh mesh = wavy();
        EmptyBall ball = new EmptyBall(new FacetTree(mesh, FaceSets.all(mesh)));
        Random random = new Random(6);
        int shrunk = 0;
        for (int i = 0; i < 300; i++) {
            double[] t = corners(mesh, random.nextInt(mesh.facetCount()));
            double[] touch = new double[3];
            double[] u = inward(t);
            for (int k = 0; k < 3; k++) {
                touch[k] = (t[k] + t[3 + k] + t[6 + k]) / 3;
            }
            double r = 0.2 + 1.5 * random.nextDouble();
            double expected = r;
            double best = r * (1 - 1e-4);
            for (int f = 0; f < mesh.facetCount(); f++) {
                double[] way = new double[3];
                double d = Math.sqrt(PointTriangle.squared(
                        corners(mesh, f), 0, touch[0] + r * u[0], touch[1] + r * u[1], touch[2] + r * u[2], way));
                Vec3 q = new Vec3(r * u[0] - way[0], r * u[1] - way[1], r * u[2] - way[2]);
                double rise = q.dot(new Vec3(u[0], u[1], u[2])) / q.norm();
                if (d < best && rise > Math.sin(Math.toRadians(10))) {
                    best = d;
                    expected = q.norm() / (2 * rise);
                }
            }
            shrunk += expected < r ? 1 : 0;
            // of two places that are equally near but for a ten thousandth either may be found
            double found = ball.shrunk(touch, u, r);
            double[] middle = {touch[0] + r * u[0], touch[1] + r * u[1], touch[2] + r * u[2]};
            assertThat(found).isLessThanOrEqualTo(r);
            if (Math.abs(found - expected) > 1e-9 * r) {
                assertThat(best)
                        .as("middle %s %s %s", middle[0], middle[1], middle[2])
                        .isGreaterThan(r * (1 - 2e-4));
            }
        }
        assertThat(shrunk).isGreaterThan(200);
    }

    /** A way straight through a body leaves and enters it by turns; where, a look at every facet tells. */
    @Test
    void crossingsOfAWay() {
        TriangleMesh mesh = wavy();
        FacetCrossings crossings = new FacetCrossings(new FacetTree(mesh, FaceSets.all(mesh)));
        Random random = new Random(7);
        for (int i = 0; i < 4; i++) {
            Vec3 from = new Vec3(random.nextDouble() - 0.5, random.nextDouble() - 0.5, -3);
            Vec3 to = new Vec3(random.nextDouble() - 0.5, random.nextDouble() - 0.5, 3);
            Vec3 u = to.minus(from).unit();
            int met =
                    crossings.find(new double[] {from.x(), from.y(), from.z()}, new double[] {u.x(), u.y(), u.z()}, 7);
            double inside = 0;
            for (int k = 0; k < met; k++) {
                inside += (crossings.entering(k) ? -1 : 1) * crossings.distance(k);
            }
            assertThat(met % 2).isZero();
            double stepped = 0;
            int steps = 700;
            for (int k = 0; k < steps; k++) {
                Vec3 at = from.plus(u.times(7 * (k + 0.5) / steps));
                stepped += winding(mesh, at) > 0.5 ? 7.0 / steps : 0;
            }
            assertThat(met).isPositive();
            assertThat(inside).isCloseTo(stepped, within(met * 7.0 / steps));
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

    private static double[] inward(double[] t) {
        Vec3 a = new Vec3(t[0], t[1], t[2]);
        Vec3 n = new Vec3(t[6], t[7], t[8])
                .minus(a)
                .cross(new Vec3(t[3], t[4], t[5]).minus(a))
                .unit();
        return new double[] {n.x(), n.y(), n.z()};
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
