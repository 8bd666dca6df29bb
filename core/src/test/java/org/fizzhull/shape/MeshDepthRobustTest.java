package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Cone;
import org.junit.jupiter.api.Tag;
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
                OddBodies.blades(),
                OddBodies.slivered(HullBodies.box(0.06, 0.04, 0.03), 200),
                OddBodies.divided(HullBodies.box(0.06, 0.04, 0.03), 3),
                OddBodies.lump(40),
                OddBodies.spiked(),
                OddBodies.slivered(OddBodies.lump(12), 30),
                ShapeMeshes.of(Bowl.ofDiameterAndWall(0.09, 0.004), 64));
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void turnedThreeTimes(TriangleMesh mesh) {
        DepthProfile plain = profile(mesh);
        bounded(mesh, plain);
        turned(mesh, plain, 3, 20);
    }

    @Tag("proof")
    @ParameterizedTest
    @MethodSource("bodies")
    void turnedThirtyTimes(TriangleMesh mesh) {
        turned(mesh, profile(mesh), 30, 21);
    }

    private static void turned(TriangleMesh mesh, DepthProfile plain, int times, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < times; i++) {
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
        DepthProfile exact = Block.ofSides(0.06, 0.04, 0.03).depthProfile(DepthProfile.Exposure.ALL);
        for (int k = 0; k <= 4; k++) {
            alike(profile(OddBodies.divided(box, k)), exact);
        }
        alike(profile(OddBodies.slivered(box, 200)), exact);
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
        return MeshDepth.of(mesh, false, false);
    }
}
