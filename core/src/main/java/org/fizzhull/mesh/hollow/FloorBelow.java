package org.fizzhull.mesh.hollow;

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
        ray = new int[births.length];
        int count = 0;
        for (int v = 0; v < births.length; v++) {
            ray[v] = births[v] < 0 ? count++ : -1;
        }
        double[] x = new double[count];
        double[] y = new double[count];
        for (int v = 0; v < births.length; v++) {
            if (ray[v] >= 0) {
                x[ray[v]] = mesh.at(v, 0);
                y[ray[v]] = mesh.at(v, 1);
            }
        }
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
