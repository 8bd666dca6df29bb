package org.fizzhull.mesh;

import org.fizzhull.numeric.Vec3;

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

    /** Computes the properties of a mesh. */
    public static MassProperties of(TriangleMesh mesh) {
        Vec3 o = boxCentre(mesh);
        double volume = 0;
        double area = 0;
        double mx = 0;
        double my = 0;
        double mz = 0;
        double xx = 0;
        double yy = 0;
        double zz = 0;
        double xy = 0;
        double yz = 0;
        double zx = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            int a = mesh.corner(f, 0);
            int b = mesh.corner(f, 1);
            int c = mesh.corner(f, 2);
            double ax = mesh.at(a, 0) - o.x();
            double ay = mesh.at(a, 1) - o.y();
            double az = mesh.at(a, 2) - o.z();
            double bx = mesh.at(b, 0) - o.x();
            double by = mesh.at(b, 1) - o.y();
            double bz = mesh.at(b, 2) - o.z();
            double cx = mesh.at(c, 0) - o.x();
            double cy = mesh.at(c, 1) - o.y();
            double cz = mesh.at(c, 2) - o.z();
            double d = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
            double nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
            double ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
            double nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
            area += 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
            double sx = ax + bx + cx;
            double sy = ay + by + cy;
            double sz = az + bz + cz;
            volume += d / 6;
            mx += d * sx / 24;
            my += d * sy / 24;
            mz += d * sz / 24;
            xx += d * (ax * ax + bx * bx + cx * cx + sx * sx) / 120;
            yy += d * (ay * ay + by * by + cy * cy + sy * sy) / 120;
            zz += d * (az * az + bz * bz + cz * cz + sz * sz) / 120;
            xy += d * (ax * ay + bx * by + cx * cy + sx * sy) / 120;
            yz += d * (ay * az + by * bz + cy * cz + sy * sz) / 120;
            zx += d * (az * ax + bz * bx + cz * cx + sz * sx) / 120;
        }
        double gx = mx / volume;
        double gy = my / volume;
        double gz = mz / volume;
        return new MassProperties(
                volume,
                area,
                new Vec3(o.x() + gx, o.y() + gy, o.z() + gz),
                xx - volume * gx * gx,
                yy - volume * gy * gy,
                zz - volume * gz * gz,
                xy - volume * gx * gy,
                yz - volume * gy * gz,
                zx - volume * gz * gx);
    }

    /** Moment of inertia about the axis through the centroid along x, for density 1, m5. */
    public double inertiaX() {
        return yy + zz;
    }

    /** Moment of inertia about the axis through the centroid along y, for density 1, m5. */
    public double inertiaY() {
        return zz + xx;
    }

    /** Moment of inertia about the axis through the centroid along z, for density 1, m5. */
    public double inertiaZ() {
        return xx + yy;
    }

    /** Centre of the box around the vertices, m: the origin that keeps sums free of cancellation. */
    static Vec3 boxCentre(TriangleMesh mesh) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int v = 0; v < mesh.vertexCount(); v++) {
            for (int k = 0; k < 3; k++) {
                low[k] = Math.min(low[k], mesh.at(v, k));
                high[k] = Math.max(high[k], mesh.at(v, k));
            }
        }
        return new Vec3((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
    }
}
