package org.fizzhull.shape.meshed;

import org.fizzhull.mesh.TriangleMesh;

/**
 * Area of the part of a mesh's surface that lies below a plane {@code n . x = c}, m2. Exact: a facet that the plane
 * crosses is cut along it. One pass over all facets, nothing kept.
 */
final class FacetSurface {
    private FacetSurface() {}

    /** Area below the plane, m2; (nx, ny, nz) a unit vector, c in m. */
    static double below(TriangleMesh mesh, double nx, double ny, double nz, double c) {
        double sum = 0;
        double[] x = new double[9];
        double[] deep = new double[3];
        for (int f = 0; f < mesh.facetCount(); f++) {
            int wet = 0;
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                for (int axis = 0; axis < 3; axis++) {
                    x[3 * k + axis] = mesh.at(v, axis);
                }
                deep[k] = c - nx * x[3 * k] - ny * x[3 * k + 1] - nz * x[3 * k + 2];
                wet += deep[k] >= 0 ? 1 : 0;
            }
            double area = area(x);
            if (wet == 3) {
                sum += area;
            } else if (wet > 0) {
                // one corner alone on its side cuts off the share (t u) of the facet
                int alone = 0;
                while (deep[alone] >= 0 != (wet == 1)) {
                    alone++;
                }
                double d = deep[alone];
                double t = d / (d - deep[(alone + 1) % 3]);
                double u = d / (d - deep[(alone + 2) % 3]);
                sum += wet == 1 ? area * t * u : area * (1 - t * u);
            }
        }
        return sum;
    }

    private static double area(double[] x) {
        double ax = x[3] - x[0];
        double ay = x[4] - x[1];
        double az = x[5] - x[2];
        double bx = x[6] - x[0];
        double by = x[7] - x[1];
        double bz = x[8] - x[2];
        double cx = ay * bz - az * by;
        double cy = az * bx - ax * bz;
        double cz = ax * by - ay * bx;
        return Math.sqrt(cx * cx + cy * cy + cz * cz) / 2;
    }
}
