package org.fizzhull.shape.meshed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.body.PrismMesh;

/** A profile belongs to the body, not to its place, direction or size. ANALYTIC; tolerances are the demanded ones. */
class MeshShapeProperties {
    private static final TriangleMesh WEDGE =
            PrismMesh.of(new double[] {0, 0.05, 0.02, 0}, new double[] {0, 0, 0.03, 0.04}, 0.015, 0.015, 0.035);

    private static final DepthProfile PROFILE = MeshProfiles.of(WEDGE).all();

    @Property(tries = 3)
    void quarterTurnsMovesAndSizesKeepTheProfile(
            @ForAll @IntRange(max = 2) int axis,
            @ForAll @IntRange(min = 1, max = 3) int quarters,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) @Scale(6) double move,
            @ForAll @DoubleRange(min = 0.2, max = 8) @Scale(6) double size) {
        double[] turn =
                HullBodies.turn(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0, quarters * Math.PI / 2);
        for (int i = 0; i < turn.length; i++) {
            turn[i] *= size;
        }
        DepthProfile moved = MeshProfiles.of(HullBodies.moved(WEDGE, turn, move, -move, 2 * move))
                .all();
        // the longest of some ten thousand ways, which seldom ends in the very deepest point
        assertThat(moved.deepest()).isCloseTo(size * PROFILE.deepest(), within(1e-3 * moved.deepest()));
        for (double share = 0; share < 0.5; share += 0.05) {
            double d = share * PROFILE.deepest();
            // what the profile of a mesh promises: 0.5 % of the whole volume, 2 % of an area
            double cube = size * size * size;
            assertThat(moved.volume(size * d))
                    .isCloseTo(PROFILE.volume(d) * cube, within(0.005 * PROFILE.volume(0) * cube));
            double area = PROFILE.area(d) * size * size;
            assertThat(moved.area(size * d)).isCloseTo(area, within(0.02 * area));
        }
    }

    @Property(tries = 20)
    void placeOfTheFileDoesNotMatter(
            @ForAll @DoubleRange(min = -0.5, max = 0.5) @Scale(6) double x,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) @Scale(6) double z) {
        MeshProfiles profiles = new MeshProfiles(PROFILE, PROFILE, PROFILE);
        double[] unit = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        MeshShape here = MeshShape.of("a.stl", "mm", WEDGE, profiles);
        MeshShape there = MeshShape.of("a.stl", "mm", HullBodies.moved(WEDGE, unit, x, -x, z), profiles);
        assertThat(there.volume()).isCloseTo(here.volume(), within(1e-12 * here.volume()));
        assertThat(there.centroid().minus(here.centroid()).norm()).isLessThan(1e-14);
        assertThat(there.planArea()).isCloseTo(here.planArea(), within(1e-12));
        assertThat(there.hull().orElseThrow().reach(0, 0, -1)).isCloseTo(0, within(1e-15));
    }
}
