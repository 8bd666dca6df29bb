package org.fizzhull.mesh.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Unit;
import org.junit.jupiter.api.Test;

/**
 * Files written here and read by another program, and the other way round. OTHER PROGRAM: Apache Commons Geometry 1.0,
 * which reads STL and measures by a tree of planes. What it prints of binary files headed "solid" is not compared: it
 * takes them for text.
 */
class StlOtherProgramTest {
    private static final Soup TORUS = Soup.twistedTorus(22.5, 12.5, 12, 8);
    private static final Precision.DoubleEquivalence EXACT = Precision.doubleEquivalenceOfEpsilon(1e-7);

    @Test
    void ourBinaryFileMeansTheSameToCommonsGeometry() {
        TriangleMesh mesh = read(TORUS.binary()).mesh();
        compare(mesh, StlWriter.binary(mesh, "a torus", 1e-3).array());
    }

    @Test
    void ourTextMeansTheSameToCommonsGeometry() {
        TriangleMesh mesh = read(TORUS.shuffled(2).binary()).mesh();
        compare(mesh, StlWriter.ascii(mesh, "a torus", 1e-3));
    }

    private static void compare(TriangleMesh mesh, byte[] file) {
        RegionBSPTree3D tree = IO3D.readTriangleMesh(
                        new StreamGeometryInput(new ByteArrayInputStream(file)), GeometryFormat3D.STL, EXACT)
                .toTree();
        MassProperties ours = MassProperties.of(mesh);
        // both sums are exact for the float32 facets; the tree cuts them at 1e-7 mm
        assertThat(ours.volume() * 1e9).isCloseTo(tree.getSize(), within(1e-7 * tree.getSize()));
        assertThat(ours.area() * 1e6).isCloseTo(tree.getBoundarySize(), within(1e-7 * tree.getBoundarySize()));
        Vec3 centroid = ours.centroid();
        assertThat(centroid.x() * 1e3).isCloseTo(tree.getCentroid().getX(), within(1e-6));
        assertThat(centroid.z() * 1e3).isCloseTo(tree.getCentroid().getZ(), within(1e-6));
    }

    @Test
    void ourFilesReadBackToTheSameFloats() {
        TriangleMesh mesh = read(TORUS.binary()).mesh();
        MeshReader.Reading binary = read(StlWriter.binary(mesh, "again", 1e-3).array());
        MeshReader.Reading text = read(StlWriter.ascii(mesh, "again", 1e-3));
        assertThat(binary.ascii()).isFalse();
        assertThat(text.ascii()).isTrue();
        assertThat(text.facetsRead()).isEqualTo(192);
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                for (int axis = 0; axis < 3; axis++) {
                    double first = mesh.at(mesh.corner(f, k), axis);
                    assertThat(binary.mesh().at(binary.mesh().corner(f, k), axis))
                            .isEqualTo(first);
                    assertThat(text.mesh().at(text.mesh().corner(f, k), axis)).isEqualTo(first);
                }
            }
        }
    }

    @Test
    void theCallersBufferIsLeftAsItWas() {
        byte[] file = Soup.cube(40).binary();
        ByteBuffer bytes = ByteBuffer.allocate(3 + file.length);
        bytes.position(3).mark().put(file).reset();
        double volume = MassProperties.of(
                        MeshReader.read(bytes, "t.stl", Unit.MILLIMETRE).mesh())
                .volume();
        assertThat(volume).isCloseTo(64e-6, within(1e-18));
        assertThat(bytes.position()).isEqualTo(3);
    }

    /** ANALYTIC: Pappus; an inscribed polyhedron lacks a volume of order two in the length of its edges. */
    @Test
    void theTorusIsMetWithOrderTwo() {
        double exact = 2 * Math.PI * Math.PI * 22.5 * 12.5 * 12.5 * 1e-9;
        double coarse = exact
                - MassProperties.of(
                                read(Soup.torus(22.5, 12.5, 40, 40).binary()).mesh())
                        .volume();
        double fine = exact
                - MassProperties.of(
                                read(Soup.torus(22.5, 12.5, 80, 80).binary()).mesh())
                        .volume();
        assertThat(coarse / fine).isBetween(3.9, 4.1);
    }

    private static MeshReader.Reading read(byte[] bytes) {
        return MeshReader.read(ByteBuffer.wrap(bytes), "t.stl", Unit.MILLIMETRE);
    }
}
