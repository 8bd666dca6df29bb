package org.fizzhull.mesh.hollow;

import java.util.Arrays;
import java.util.BitSet;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;

/** The facet straight below an underside vertex: the floor that the material there hangs over. Immutable. */
final class FacetBelow {
    private final TriangleMesh mesh;
    private final RayTable rays;

    /** The underside vertices in rising order: vertical ray i goes through vertex number i of this array. */
    private final int[] vertices;

    /** @param undersides the vertices for which {@link #of} may be called */
    FacetBelow(TriangleMesh mesh, BitSet undersides) {
        this.mesh = mesh;
        vertices = undersides.stream().toArray();
        double[] x = undersides.stream().mapToDouble(v -> mesh.at(v, 0)).toArray();
        double[] y = undersides.stream().mapToDouble(v -> mesh.at(v, 1)).toArray();
        rays = new RayTable(mesh, 2, x, y);
    }

    /**
     * The highest facet below a vertex, those at the vertex left out; -1 where there is none or where it faces down.
     */
    int of(int v) {
        int ray = Arrays.binarySearch(vertices, v);
        for (int k = rays.end(ray) - 1; k >= rays.first(ray); k--) {
            int f = rays.facet(k);
            if (rays.height(k) < mesh.at(v, 2) && mesh.corners(f).noneMatch(corner -> corner == v)) {
                return rays.leaves(k) ? f : -1;
            }
        }
        return -1;
    }
}
