package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeFiles;
import org.fizzhull.shape.text.ShapeText;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Moulds: the body is answered, the question is asked, and the piece can be had. Volumes ANALYTIC. */
class MouldFillingTest {
    private static final double[] UPSIDE_DOWN = {1, 0, 0, 0, -1, 0, 0, 0, -1};

    /** A half shell over a ball of 70 mm, wall 5 mm, open to the top; then lying on its opening. */
    @Test
    void halfMouldLyingEitherWay() {
        TriangleMesh open = ShapeMeshes.of(Bowl.ofDiameterAndWall(0.08, 0.005), 128);
        double half = 2 * Math.PI / 3 * Math.pow(0.035, 3);
        for (boolean turned : new boolean[] {false, true}) {
            TriangleMesh mesh = turned ? HullBodies.moved(open, UPSIDE_DOWN, 0, 0, 0) : open;
            MeshShape shape = MeshShape.of("half.stl", "mm", mesh);
            assertThat(shape.notices()).extracting(Notice::code).contains("mesh-mould");
            assertThat(shape.notices().toString())
                    .contains(shape.filling().volume() > 89.75e-6 ? "89.8 cm3" : "89.7 cm3")
                    .contains("mesh(file=\"half.stl\", unit=mm, piece=hollow)");
            // upside down it is no boat as filed, and the maker is told how to ask about one
            assertThat(shape.notices().toString().contains("turn it over"))
                    .isEqualTo(turned)
                    .isEqualTo(shape.hollow().isEmpty());
            // 128 chords take 0.04 %
            assertThat(shape.filling().volume()).isCloseTo(half, within(1e-3 * half));
        }
    }

    /** A block with a cubic cavity, closed; the piece is the cube. */
    @Test
    void sealedBlock() {
        TriangleMesh shell = ShapeMeshes.both(HullBodies.box(0.06, 0.06, 0.06), HullBodies.box(0.04, 0.04, 0.04), true);
        MeshShape shape = MeshShape.of("block.stl", "mm", shell);
        assertThat(shape.notices()).extracting(Notice::code).contains("mesh-mould");
        MeshShape piece = shape.filling();
        assertThat(piece.volume()).isCloseTo(64e-6, within(1e-17));
        assertThat(piece.surface()).isCloseTo(96e-4, within(1e-15));
        assertThat(piece.depthProfile(DepthProfile.Exposure.ALL).deepest()).isCloseTo(0.02, within(2e-5));
        assertThat(piece.notices()).isEmpty();
        ShapeFiles files = new ShapeFiles() {
            @Override
            public Shape mesh(String file, @Nullable Unit unit) {
                return shape;
            }

            @Override
            public Shape revolved(String file) {
                throw new AssertionError(file);
            }
        };
        assertThat(ShapeText.read(piece.text(), files).volume()).isEqualTo(piece.volume());
        assertThat(ShapeText.read("mesh(file=\"block.stl\", unit=mm, piece=body)", files))
                .isSameAs(shape);
        assertThatThrownBy(() -> ShapeText.read("mesh(file=\"block.stl\", unit=mm, piece=mould)", files))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("body or hollow");
    }

    @Test
    void bodyWithoutHollowHasNoFilling() {
        MeshShape box = MeshShape.of("box.stl", "mm", HullBodies.box(0.06, 0.04, 0.03));
        assertThat(box.notices()).isEmpty();
        assertThatThrownBy(box::filling).isInstanceOf(Refusal.class).hasMessageContaining("no hollow");
    }

    /** A file in inches read as millimetres, and one in micrometres: the refusal names the unit. */
    @Test
    void sizeNamesTheUnit() {
        TriangleMesh inches = HullBodies.box(0.0025, 0.002, 0.001);
        assertThatThrownBy(() -> MeshShape.of("a.stl", "mm", inches))
                .hasMessageContaining("a body of 2.5 mm")
                .hasMessageContaining("unit=in it would be 63.5 mm");
        TriangleMesh micrometres = HullBodies.box(65, 40, 30);
        assertThatThrownBy(() -> MeshShape.of("a.stl", "mm", micrometres))
                .hasMessageContaining("a body of 65000 mm")
                .hasMessageContaining("unit=um it would be 65 mm");
    }
}
