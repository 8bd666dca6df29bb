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
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.meshed.MeshDepthTest;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Bodies that run into each other or touch become one, what several of them fill counts once. Expected values are closed
 * forms of the solids (ANALYTIC), by sums over what is in one, two and three of them, or OTHER PROGRAM: the union by
 * Apache Commons Geometry 1.0, which cuts space by a tree of planes. Lengths in mm; a coordinate is a float32, true to 6e-8
 * of itself.
 */
class UnitedBodiesTest {
    /** Of three factors that are true to 6e-8, where nothing else is lost. */
    private static final double EXACT = 3e-7;

    @Test
    void twoCubesOverTheirCorners() {
        MeshReader.Reading union = united(Soup.cube(40).add(Soup.box(20, 20, 20, 40, 40, 40)), 2, "8 cm3");
        volumeAndArea(union, 2 * 64_000 - 8000, 2 * 9600 - 6 * 400, EXACT);
        Vec3 centroid = MassProperties.of(union.mesh()).centroid();
        // 64 at 20, 64 at 40, less 8 at 30
        double middle = (64 * 20 + 64 * 40 - 8 * 30) / 120.0;
        assertThat(centroid.x() * 1e3).isCloseTo(middle, within(1e-5));
        assertThat(centroid.z() * 1e3).isCloseTo(middle, within(1e-5));
    }

    /** Faces in one plane, the same way round: kept once. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 1, 2.5})
    void twoBoxesWithFourFacesInOnePlaneAreOneBox(double angle) {
        Soup boxes = Soup.cube(40).add(Soup.box(20, 0, 0, 40, 40, 40)).rotated(angle, 1, 2, 3);
        // what a float32 of 60 mm rounds by over the shortest side, 40 mm
        volumeAndArea(united(boxes, 2, "32 cm3"), 96_000, 2 * 1600 + 4 * 2400, angle == 0 ? EXACT : 1e-6);
    }

    /** Faces on each other, against each other: neither is kept. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 1, 2.5})
    void aBoxOnABoxLosesTheFaceBetweenThem(double angle) {
        Soup boxes = Soup.cube(40).add(Soup.box(40, 10, 10, 20, 20, 20)).rotated(angle, 3, 1, 2);
        volumeAndArea(united(boxes, 2, "0 cm3"), 72_000, 9600 + 4 * 400, angle == 0 ? EXACT : 1e-6);
    }

    /** Plates of a hundredth of their length, lying and standing: no line may pass beside them all. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void twoThinPlates(int axis) {
        Soup plates = Soup.box(0, 0, 0, 100, 60, 1).add(Soup.box(60, 20, 0.5, 80, 80, 1));
        double[] about = {axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0};
        double area = 2 * (100 * 60 + 80 * 80 - 40 * 40) + 320 + 320 - 0.5 * 2 * (40 + 40);
        // a float32 of 140 mm is true to 8e-6 mm, and a plate of 1 mm has two faces
        volumeAndArea(
                united(plates.rotated(Math.PI / 2, about), 2, "0.8 cm3"), 6000 + 6400 - 40 * 40 * 0.5, area, 1.6e-5);
    }

    /** One square over another, turned by 45 degrees: s^2 (4 - 2 sqrt 2), and 16 sides of s (1 - 1 / sqrt 2). */
    @Test
    void aStarOfTwoSquarePlates() {
        Soup plate = Soup.box(-20, -20, 0, 40, 40, 10);
        MeshReader.Reading star = united(Soup.empty().add(plate).add(plate.rotated(Math.PI / 4, 0, 0, 1)), 2);
        double square = 1600 * (4 - 2 * Math.sqrt(2));
        volumeAndArea(star, 10 * square, 2 * square + 160 * 40 * (1 - Math.sqrt(0.5)), EXACT);
    }

    /** The eight corners of a cube poke out of the six faces of another, turned about its diagonal. */
    @Test
    void aCubeTurnedAboutItsDiagonal() {
        Soup cube = Soup.box(-20, -20, -20, 40, 40, 40);
        compare(cube, cube.rotated(Math.PI / 3, 1, 1, 1));
        compare(cube, cube.rotated(0.7, 1, 2, 5));
    }

    @Test
    void threeThatOverlapEachOther() {
        Soup three = Soup.cube(40).add(Soup.box(20, 20, 20, 40, 40, 40)).add(Soup.box(10, 30, 5, 40, 40, 40));
        double twice = 20 * 20 * 20 + 30 * 10 * 35 + 30 * 30 * 25;
        double thrice = 20 * 10 * 20;
        MeshReader.Reading union = united(three, 3);
        assertThat(MassProperties.of(union.mesh()).volume() * 1e9)
                .isCloseTo(3 * 64_000 - twice + thrice, within(EXACT * 155_000));
        assertThat(union.mesh().facetCount()).isLessThan(300);
    }

    /** Two balls of radius r at the distance d lose the lens pi (2 r - d)^2 (4 r + d) / 12 (Weisstein, Sphere-Sphere
     * Intersection, MathWorld; not opened). Chords of 2 pi / 256 cost 2.5e-4. */
    @Test
    void twoBalls() {
        Soup balls = Soup.ball(20, 128).add(Soup.ball(20, 128).shifted(13, 5, 21));
        double d = Math.sqrt(13 * 13 + 5 * 5 + 21 * 21);
        double lens = Math.PI * (40 - d) * (40 - d) * (80 + d) / 12;
        double cap = 2 * Math.PI * 20 * (20 - d / 2);
        MeshReader.Reading union = united(balls, 2);
        volumeAndArea(union, 8.0 / 3 * Math.PI * 8000 - lens, 8 * Math.PI * 400 - 2 * cap, 5e-4);
    }

    /** A ball of radius 20 on a stick of radius 8 that begins in its middle, all about one axis. */
    @Test
    void aBallOnAStick() {
        double[] r = {0, 8, 8, 0};
        double[] z = {0, 0, 50, 50};
        double height = Math.sqrt(400 - 64);
        double cap = Math.PI * (20 - height) * (20 - height) * (60 - 20 + height) / 3;
        MeshReader.Reading union = united(Soup.ball(20, 128).add(Soup.revolved(r, z, 256)), 2);
        double volume = 4.0 / 3 * Math.PI * 8000 + Math.PI * 64 * (50 - height) - cap;
        double area =
                4 * Math.PI * 400 - 2 * Math.PI * 20 * (20 - height) + 16 * Math.PI * (50 - height) + Math.PI * 64;
        volumeAndArea(union, volume, area, 5e-4);
    }

    /** Coarse balls of which every facet matters. */
    @Test
    void twoCoarseBallsAndATorusAsAnotherProgramUnitesThem() {
        compare(Soup.ball(20, 6), Soup.ball(17, 5).shifted(11, 6, 9));
        compare(Soup.twistedTorus(22.5, 12.5, 12, 8), Soup.ball(15, 5).shifted(20, 3, 4));
        compare(
                Soup.twistedTorus(22.5, 12.5, 12, 8),
                Soup.twistedTorus(22.5, 12.5, 12, 8).rotated(1.2, 1, 0.2, 0.1));
    }

    /** 96 posts of all sizes, half of them sunk into a plate, the others on it. */
    @Test
    void manyLettersOnAPlate() {
        Soup plate = Soup.box(0, 0, 0, 120, 80, 6);
        double volume = 120 * 80 * 6;
        double area = 2 * 120 * 80 + 2 * 6 * 200;
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 8; j++) {
                double wide = 2 + i % 4;
                double deep = 3 + j % 3;
                double sunk = (i + j) % 2 == 0 ? 3 : 0;
                plate.add(Soup.box(3 + 9.7 * i, 3 + 9.3 * j, 6 - sunk, wide, deep, 4 + sunk));
                volume += 4 * wide * deep;
                area += 8 * (wide + deep);
            }
        }
        volumeAndArea(united(plate, 97), volume, area, EXACT);
    }

    /** A wall with a hollow and a plug that reaches into it: what the hollow keeps stays empty. */
    @Test
    void aPlugInAHollow() {
        Soup plug = Soup.cube(40).add(Soup.box(10, 10, 10, 20, 20, 20).turned()).add(Soup.box(15, 15, 20, 5, 5, 40));
        MeshReader.Reading union = united(plug, 2);
        assertThat(MassProperties.of(union.mesh()).volume() * 1e9)
                .isCloseTo(56_000 + 25 * 10 + 25 * 20, within(EXACT * 56_750));
        assertThat(union.notices()).extracting(Notice::code).contains("mesh-cavity");
    }

    /** Cubes in space, each a shell of its own that touches up to 26 others. */
    @Test
    void cubesInSpace() {
        Soup cubes = Soup.empty();
        boolean[][][] full = new boolean[7][7][7];
        int count = 0;
        int faces = 0;
        for (int i = 1; i < 6; i++) {
            for (int j = 1; j < 6; j++) {
                for (int k = 1; k < 6; k++) {
                    full[i][j][k] = (i * 7 + j * 3 + k * 5) % 4 != 0;
                    if (full[i][j][k]) {
                        count++;
                        faces += 6
                                - 2 * (full[i - 1][j][k] ? 1 : 0)
                                - 2 * (full[i][j - 1][k] ? 1 : 0)
                                - 2 * (full[i][j][k - 1] ? 1 : 0);
                        // sides that no two cubes meet in to the last bit, as programs write them
                        cubes.add(Soup.box(3.1 * i - 1e-5 * (j % 2), 3.1 * j, 3.1 * k, 3.1 + 1e-5, 3.1, 3.1 + 1e-5));
                    }
                }
            }
        }
        volumeAndArea(united(cubes, count), count * Math.pow(3.1, 3), faces * 3.1 * 3.1, 2e-5);
    }

    /** What is left of two boxes that make one at each depth is what is left of the one. */
    @Test
    void theDepthOfTheUnionIsThatOfTheSolid() {
        Soup boxes = Soup.box(0, 0, 0, 40, 40, 30).add(Soup.box(20, 0, 0, 40, 40, 30));
        MeshShape shape = MeshShape.of("boxes.stl", "mm", read(boxes).mesh());
        DepthProfile exact = ShapeText.read("block(length=60 mm, width=40 mm, height=30 mm)")
                .depthProfile(DepthProfile.Exposure.ALL);
        MeshDepthTest.near("two boxes", shape.depthProfile(DepthProfile.Exposure.ALL), exact, 0.005, 0.02);
    }

    /** A surface that faces inward and breaks out may be meant to be taken away: it is not guessed. */
    @Test
    void whatMayBeMeantToBeTakenAwayIsRefused() {
        Soup hole = Soup.cube(40).add(Soup.box(30, 10, 10, 20, 10, 10).turned());
        assertThat(StlAnswer.judge(hole.binary())).isFalse();
    }

    private static void compare(Soup one, Soup two) {
        RegionBSPTree3D tree = tree(one);
        tree.union(tree(two));
        MeshReader.Reading union = united(Soup.empty().add(one).add(two), 2);
        MassProperties ours = MassProperties.of(union.mesh());
        assertThat(ours.volume() * 1e9).isCloseTo(tree.getSize(), within(1e-6 * tree.getSize()));
        assertThat(ours.area() * 1e6).isCloseTo(tree.getBoundarySize(), within(1e-6 * tree.getBoundarySize()));
        assertThat(ours.centroid().x() * 1e3).isCloseTo(tree.getCentroid().getX(), within(1e-5));
        assertThat(ours.centroid().y() * 1e3).isCloseTo(tree.getCentroid().getY(), within(1e-5));
        assertThat(ours.centroid().z() * 1e3).isCloseTo(tree.getCentroid().getZ(), within(1e-5));
    }

    static RegionBSPTree3D tree(Soup soup) {
        return IO3D.readTriangleMesh(
                        new StreamGeometryInput(new ByteArrayInputStream(soup.binary())),
                        GeometryFormat3D.STL,
                        Precision.doubleEquivalenceOfEpsilon(1e-5))
                .toTree();
    }

    private static void volumeAndArea(MeshReader.Reading found, double volume, double area, double within) {
        assertThat(MassProperties.of(found.mesh()).volume() * 1e9)
                .as("volume")
                .isCloseTo(volume, within(within * volume));
        assertThat(MassProperties.of(found.mesh()).area() * 1e6).as("area").isCloseTo(area, within(within * area));
    }

    private static MeshReader.Reading united(Soup soup, int bodies, String... says) {
        MeshReader.Reading found = read(soup);
        assertThat(StlAnswer.judge(soup.binary())).isTrue();
        assertThat(found.notices())
                .filteredOn(notice -> notice.code().equals("mesh-united"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).startsWith(bodies + " bodies"));
        for (String words : says) {
            assertThat(found.notices().toString()).contains(words);
        }
        return found;
    }

    private static MeshReader.Reading read(Soup soup) {
        return MeshReader.read(ByteBuffer.wrap(soup.binary()), "t.stl", Unit.MILLIMETRE);
    }
}
