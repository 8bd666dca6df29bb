package org.fizzhull.mesh.hollow;

import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;

/** The facet straight below a vertex: what something that falls from there meets. */
final class FloorBelow {
    private final TriangleMesh mesh;
    private final RayTable rays;

    /** Number of the ray through a vertex that may be asked. */
    private final int[] ray;

    /** @param births below 0 for the vertices that may be asked: undersides without lower neighbours */
    FloorBelow(TriangleMesh mesh, byte[] births) {
        this.mesh = mesh;
        int[] asked =
                IntStream.range(0, births.length).filter(v -> births[v] < 0).toArray();
        ray = new int[births.length];
        for (int r = 0; r < asked.length; r++) {
            ray[asked[r]] = r;
        }
        double[] x = IntStream.of(asked).mapToDouble(v -> mesh.at(v, 0)).toArray();
        double[] y = IntStream.of(asked).mapToDouble(v -> mesh.at(v, 1)).toArray();
        rays = new RayTable(mesh, 2, x, y);
    }

    /** The highest facet below a vertex that is none of its own, and looks up; -1 where there is none. */
    int under(int v) {
        for (int k = rays.end(ray[v]) - 1; k >= rays.first(ray[v]); k--) {
            int f = rays.facet(k);
            boolean own = mesh.corner(f, 0) == v || mesh.corner(f, 1) == v || mesh.corner(f, 2) == v;
            if (!own && rays.height(k) < mesh.at(v, 2)) {
                return rays.leaves(k) ? f : -1;
            }
        }
        return -1;
    }
}
