package org.fizzhull.shape.meshed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

class MeshShapeTest {
    private static final double[] UNIT = {1, 0, 0, 0, 1, 0, 0, 0, 1};

    /** ANALYTIC: a box, wherever its file puts it. */
    @Test
    void boxOnItsTray() {
        TriangleMesh box = HullBodies.moved(HullBodies.box(0.06, 0.04, 0.03), UNIT, 0.1, 0.2, -0.3);
        MeshShape shape = MeshShape.of("a thing.stl", "mm", box);
        assertThat(shape.kind()).isEqualTo("mesh");
        assertThat(shape.text()).isEqualTo("mesh(file=\"a thing.stl\", unit=mm)");
        assertThat(shape.volume()).isCloseTo(72e-6, within(1e-17));
        assertThat(shape.surface()).isCloseTo(108e-4, within(1e-15));
        assertThat(shape.planArea()).isCloseTo(24e-4, within(1e-15));
        assertThat(shape.centroid().z()).isCloseTo(0.015, within(1e-15));
        assertThat(shape.extents().length()).isCloseTo(0.06, within(1e-15));
        assertThat(shape.hull().orElseThrow().reach(0, 0, -1)).isCloseTo(0, within(1e-16));
        assertThat(shape.depthProfile(Exposure.ALL).area(0)).isCloseTo(108e-4, within(1e-15));
        assertThat(shape.depthProfile(Exposure.TRAY).area(0)).isCloseTo(84e-4, within(1e-15));
        assertThat(shape.depthProfile(Exposure.OUTSIDE)).isSameAs(shape.depthProfile(Exposure.ALL));
        assertThat(shape.depthProfile(Exposure.TRAY).deepest()).isCloseTo(0.02, within(1e-6));
    }

    /** ANALYTIC: the flat face of a dome is found lying down, and there is none when it stands on its round side. */
    @Test
    void restingFaceIsTheFlatOneBelow() {
        TriangleMesh dome = ShapeMeshes.of(Dome.ofDiameter(0.08), 48);
        double[] over = {1, 0, 0, 0, -1, 0, 0, 0, -1};
        TriangleMesh down = HullBodies.moved(dome, over, 0, 0, 0);
        double base = 48 / 2.0 * 0.04 * 0.04 * Math.sin(2 * Math.PI / 48);
        assertThat(FaceSets.area(dome, FaceSets.resting(dome))).isCloseTo(base, within(1e-14));
        assertThat(FaceSets.resting(down).isEmpty()).isTrue();
    }

    /** The same mesh gives the same bits. */
    @Test
    void measuresTheSameTwice() {
        TriangleMesh cone = ShapeMeshes.of(Cone.ofDiameterAndHeight(0.05, 0.04), 40);
        assertThat(MeshDepth.of(cone, true, false)).isEqualTo(MeshDepth.of(cone, true, false));
    }

    @Test
    void refusesSizesAndNamesThatCannotBe() {
        DepthProfile any = Sphere.ofDiameter(0.05).depthProfile(Exposure.ALL);
        MeshProfiles profiles = new MeshProfiles(any, any, any);
        TriangleMesh large = HullBodies.box(60, 40, 30);
        assertThatThrownBy(() -> MeshShape.of("a.stl", "m", large, profiles))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("60000 mm");
        TriangleMesh box = HullBodies.box(0.06, 0.04, 0.03);
        assertThatThrownBy(() -> MeshShape.of("a\"b.stl", "mm", box, profiles)).isInstanceOf(Refusal.class);
    }

    /** What a mesh leaves out is said, and nothing is said of one that leaves nothing out. */
    @Test
    void saysWhatItLeavesOut() {
        DepthProfile any = Sphere.ofDiameter(0.05).depthProfile(Exposure.ALL);
        MeshProfiles profiles = new MeshProfiles(any, any, any);
        assertThat(codes(HullBodies.box(0.06, 0.04, 0.03), profiles)).isEmpty();
        assertThat(codes(ShapeMeshes.of(Sphere.ofDiameter(0.05), 128), profiles))
                .isEmpty();
        assertThat(codes(ShapeMeshes.of(Sphere.ofDiameter(0.05), 24), profiles)).containsExactly("mesh-chords");
        TriangleMesh bowl = ShapeMeshes.of(Bowl.ofDiameterAndWall(0.09, 0.015), 128);
        // a bowl is like half a mould
        assertThat(codes(bowl, profiles)).containsExactly("mesh-mould");
        TriangleMesh shell = ShapeMeshes.both(HullBodies.box(0.06, 0.06, 0.06), HullBodies.box(0.03, 0.03, 0.03), true);
        assertThat(codes(shell, profiles)).containsExactly("mesh-cavity-lift", "mesh-mould");
        // ANALYTIC: 3^3 cm3
        assertThat(MeshShape.of("a.stl", "mm", shell, profiles).notices().get(0).text())
                .startsWith("The 27.0 cm3 ");
        DepthProfile rough = new DepthProfile(new double[] {0, 1}, new double[] {1, 0}, new double[] {1, 1}, 0.26);
        assertThat(codes(HullBodies.box(0.06, 0.04, 0.03), new MeshProfiles(rough, rough, rough)))
                .containsExactly("mesh-rough");
    }

    private static List<String> codes(TriangleMesh mesh, MeshProfiles profiles) {
        return MeshShape.of("a.stl", "mm", mesh, profiles).notices().stream()
                .map(Notice::code)
                .toList();
    }
}
