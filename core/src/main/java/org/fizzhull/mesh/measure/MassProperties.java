package org.fizzhull.mesh.measure;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Volume, surface, centroid and second moments of the body a closed triangle mesh bounds, for density 1; a mesh turned
 * inside out has a negative volume, which is left as it is. Sums of tetrahedra from the centre of the box around the
 * mesh to each facet: exact but for rounding, about 1e-15 of the box. Formulas: Kallay, journal of graphics tools
 * 11(2), 2006 (seen as published code).
 *
 * @param volume enclosed volume, m3
 * @param area sum of the facet areas, m2
 * @param centroid centroid of the volume, m
 * @param xx integral of x^2 over the volume, x from the centroid, m5; the others likewise
 * @param yy integral of y^2, m5
 * @param zz integral of z^2, m5
 * @param xy integral of x y, m5
 * @param yz integral of y z, m5
 * @param zx integral of z x, m5
 */
public record MassProperties(
        double volume, double area, Vec3 centroid, double xx, double yy, double zz, double xy, double yz, double zx) {

    /**
     * {@return the properties of a mesh}
     *
     * @param mesh the mesh
     */
    public static MassProperties of(TriangleMesh mesh) {
        Vec3 o = boxCentre(mesh);
        double[] sum = new double[11];
        double[] v = new double[9];
        double[] n = new double[3];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                int corner = mesh.corner(f, k);
                v[3 * k] = mesh.at(corner, 0) - o.x();
                v[3 * k + 1] = mesh.at(corner, 1) - o.y();
                v[3 * k + 2] = mesh.at(corner, 2) - o.z();
            }
            add(v, n, sum);
        }
        double volume = sum[1] / 6;
        double gx = sum[2] / 24 / volume;
        double gy = sum[3] / 24 / volume;
        double gz = sum[4] / 24 / volume;
        return new MassProperties(
                volume,
                sum[0] / 2,
                o.plus(new Vec3(gx, gy, gz)),
                sum[5] / 120 - volume * gx * gx,
                sum[6] / 120 - volume * gy * gy,
                sum[7] / 120 - volume * gz * gz,
                sum[8] / 120 - volume * gx * gy,
                sum[9] / 120 - volume * gy * gz,
                sum[10] / 120 - volume * gz * gx);
    }

    /** Adds the tetrahedron from the origin to one facet; d is six times its volume. */
    private static void add(double[] v, double[] n, double[] sum) {
        n[0] = (v[4] - v[1]) * (v[8] - v[2]) - (v[5] - v[2]) * (v[7] - v[1]);
        n[1] = (v[5] - v[2]) * (v[6] - v[0]) - (v[3] - v[0]) * (v[8] - v[2]);
        n[2] = (v[3] - v[0]) * (v[7] - v[1]) - (v[4] - v[1]) * (v[6] - v[0]);
        double d = v[0] * n[0] + v[1] * n[1] + v[2] * n[2];
        sum[0] += Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        sum[1] += d;
        for (int k = 0; k < 3; k++) {
            int l = (k + 1) % 3;
            double sk = v[k] + v[3 + k] + v[6 + k];
            double sl = v[l] + v[3 + l] + v[6 + l];
            sum[2 + k] += d * sk;
            sum[5 + k] += d * (v[k] * v[k] + v[3 + k] * v[3 + k] + v[6 + k] * v[6 + k] + sk * sk);
            sum[8 + k] += d * (v[k] * v[l] + v[3 + k] * v[3 + l] + v[6 + k] * v[6 + l] + sk * sl);
        }
    }

    /** {@return moment of inertia about the axis through the centroid along x, for density 1, m5} */
    public double inertiaX() {
        return yy + zz;
    }

    /** {@return moment of inertia about the axis through the centroid along y, for density 1, m5} */
    public double inertiaY() {
        return zz + xx;
    }

    /** {@return moment of inertia about the axis through the centroid along z, for density 1, m5} */
    public double inertiaZ() {
        return xx + yy;
    }

    /**
     * {@return centre of the box around the vertices, m: the origin that keeps sums free of cancellation}
     *
     * @param mesh the mesh
     */
    public static Vec3 boxCentre(TriangleMesh mesh) {
        double[] box = mesh.box();
        return new Vec3((box[0] + box[3]) / 2, (box[1] + box[4]) / 2, (box[2] + box[5]) / 2);
    }
}
