package org.fizzhull.mesh.hollow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Star;
import org.junit.jupiter.api.Test;

/** Which local minima are pits: the lowest corner of a body has material over it, whatever the facets around it. ANALYTIC. */
class LocalMinimaTest {
    /** A convex body holds no water: it has one lowest corner, and that is an underside. */
    @Test
    void noPitInSlivers() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            TriangleMesh sliver = turned(HullBodies.box(0.08, 0.001 + 0.01 * random.nextDouble(), 0.002), random);
            assertThat(OpenHollows.of(sliver).none()).as("turn %d", i).isTrue();
            LocalMinima minima = LocalMinima.of(sliver, new Neighbours(sliver));
            assertThat(minima.pits().isEmpty()).isTrue();
            assertThat(minima.undersides().cardinality()).isEqualTo(1);
        }
    }

    /** Three arms with tips of 14 degrees: the first of them to touch the floor has no pit under it. */
    @Test
    void theLowestTipOfAStarIsNoPit() {
        TriangleMesh star = ShapeMeshes.of(Star.ofPointsDiameterInnerAndHeight(3, 0.08, 0.01, 0.06), 0);
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            TriangleMesh mesh = turned(star, random);
            int lowest = 0;
            for (int v = 0; v < mesh.vertexCount(); v++) {
                lowest = mesh.at(v, 2) < mesh.at(lowest, 2) ? v : lowest;
            }
            LocalMinima minima = LocalMinima.of(mesh, new Neighbours(mesh));
            assertThat(minima.undersides().get(lowest)).as("turn %d", i).isTrue();
            OpenHollows.of(mesh);
        }
    }

    private static TriangleMesh turned(TriangleMesh mesh, Random random) {
        Vec3 axis = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
        return HullBodies.moved(mesh, HullBodies.turn(axis.x(), axis.y(), axis.z(), 6 * random.nextDouble()), 0, 0, 0);
    }
}
