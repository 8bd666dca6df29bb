package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.DepthColumns;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.PrismMesh;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A depth profile belongs to the body, not to its facets: slivers, facets without area, needles and creases change
 * nothing, turning it changes nothing, and the bounds of any body hold. ANALYTIC: symmetry and the closed forms.
 */
class MeshDepthRobustTest {
    private static final double SAME_DEPTH = 0.01;

    static Stream<TriangleMesh> bodies() {
        return Stream.of(
                ShapeMeshes.of(Cone.ofDiameterAndHeight(0.05, 0.06), 300),
                blades(),
                slivered(HullBodies.box(0.06, 0.04, 0.03), 200),
                divided(HullBodies.box(0.06, 0.04, 0.03), 3),
                ShapeMeshes.of(Bowl.ofDiameterAndWall(0.09, 0.004), 64));
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void turnedTenTimes(TriangleMesh mesh) {
        DepthProfile plain = profile(mesh);
        bounded(mesh, plain);
        Random random = new Random(20);
        for (int i = 0; i < 10; i++) {
            Vec3 axis = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            double[] turn = HullBodies.turn(axis.x(), axis.y(), axis.z(), 6 * random.nextDouble());
            DepthProfile turned = profile(HullBodies.moved(mesh, turn, 0.1, -0.2, 0.3));
            alike(turned, plain);
        }
    }

    /** The same solid with 1, 4, 16, 64 and 256 times the facets, and with 200 slivers and their facets without area. */
    @Test
    void dividedAndSlivered() {
        TriangleMesh box = HullBodies.box(0.06, 0.04, 0.03);
        DepthProfile exact = Block.ofSides(0.06, 0.04, 0.03).depthProfile(Exposure.ALL);
        for (int k = 0; k <= 4; k++) {
            alike(profile(divided(box, k)), exact);
        }
        alike(profile(slivered(box, 200)), exact);
    }

    private static void alike(DepthProfile found, DepthProfile expected) {
        assertThat(found.deepest()).isCloseTo(expected.deepest(), within(SAME_DEPTH * expected.deepest()));
        for (double share = 0; share < 0.9; share += 0.1) {
            double d = share * expected.deepest();
            assertThat(found.volume(d)).isCloseTo(expected.volume(d), within(0.005 * expected.volume(0)));
        }
    }

    /** Half the smallest side, the ball of the same volume; V falls and A is not below 0. */
    private static void bounded(TriangleMesh mesh, DepthProfile profile) {
        double[] box = mesh.box();
        double side = Math.min(box[5] - box[2], Math.min(box[3] - box[0], box[4] - box[1]));
        assertThat(profile.deepest()).isLessThanOrEqualTo(side / 2);
        assertThat(4 * Math.PI / 3 * Math.pow(profile.deepest(), 3))
                .isLessThanOrEqualTo(profile.volume(0) * (1 + 1e-9));
        double last = profile.volume(0);
        for (int i = 1; i <= 1000; i++) {
            double d = profile.deepest() * i / 1000;
            assertThat(profile.volume(d)).isLessThanOrEqualTo(last * (1 + 1e-12));
            assertThat(profile.area(d)).isGreaterThanOrEqualTo(-1e-12);
            last = profile.volume(d);
        }
    }

    private static DepthProfile profile(TriangleMesh mesh) {
        DepthColumns columns = MeshDepth.of(mesh, false, false);
        return new DepthProfile(columns.depth(), columns.volume(), columns.area(), columns.relativeError());
    }

    /** A prism of 80 thin blades: a star whose tips are needles and whose valleys are creases. */
    private static TriangleMesh blades() {
        int n = 160;
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            double r = i % 2 == 0 ? 0.03 : 0.01;
            x[i] = r * Math.cos(2 * Math.PI * i / n);
            y[i] = r * Math.sin(2 * Math.PI * i / n);
        }
        return PrismMesh.of(x, y, 0, 0, 0.03);
    }

    /** Each facet divided into four. */
    private static TriangleMesh divided(TriangleMesh mesh, int times) {
        TriangleMesh left = mesh;
        for (int k = 0; k < times; k++) {
            List<double[]> points = new ArrayList<>();
            List<Integer> corners = new ArrayList<>();
            for (int f = 0; f < left.facetCount(); f++) {
                int at = points.size();
                for (int c = 0; c < 3; c++) {
                    points.add(point(left, f, c, c));
                }
                for (int c = 0; c < 3; c++) {
                    points.add(point(left, f, c, (c + 1) % 3));
                }
                corners.addAll(List.of(at, at + 3, at + 5, at + 3, at + 1, at + 4));
                corners.addAll(List.of(at + 5, at + 4, at + 2, at + 3, at + 4, at + 5));
            }
            left = ShapeMeshes.mesh(points, corners);
        }
        return left;
    }

    private static double[] point(TriangleMesh mesh, int f, int c, int d) {
        double[] at = new double[3];
        for (int k = 0; k < 3; k++) {
            at[k] = (mesh.at(mesh.corner(f, c), k) + mesh.at(mesh.corner(f, d), k)) / 2;
        }
        return at;
    }

    /** Every edge's first facet divided at many places along it, and facets without area over the places. */
    private static TriangleMesh slivered(TriangleMesh mesh, int places) {
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            int at = points.size();
            for (int c = 0; c < 3; c++) {
                points.add(point(mesh, f, c, c));
            }
            int before = at;
            for (int i = 1; i < places; i++) {
                double[] between = new double[3];
                for (int k = 0; k < 3; k++) {
                    double t = (double) i / places;
                    between[k] = (1 - t) * points.get(at)[k] + t * points.get(at + 1)[k];
                }
                points.add(between);
                int now = points.size() - 1;
                corners.addAll(List.of(before, now, at + 2));
                // three distinct corners on one line
                corners.addAll(List.of(before, at + 1, now));
                before = now;
            }
            corners.addAll(List.of(before, at + 1, at + 2));
        }
        return ShapeMeshes.mesh(points, corners);
    }
}
