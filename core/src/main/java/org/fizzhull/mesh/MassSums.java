package org.fizzhull.mesh;

import org.fizzhull.geometry.Vec3;

/**
 * Running sums over facets that give the mass properties of the body they close: area, three volume fluxes, first and
 * second moments, about an origin near the body. One pass, in blocks, so that a reader can feed it while the facets are
 * still in the processor's cache. Formulas: Kallay, journal of graphics tools 11(2), 2006 (seen as published code).
 */
final class MassSums {
    private final double ox;
    private final double oy;
    private final double oz;
    private double area;
    private double fluxX;
    private double fluxY;
    private double fluxZ;
    private double mx;
    private double my;
    private double mz;
    private double xx;
    private double yy;
    private double zz;
    private double xy;
    private double yz;
    private double zx;

    /** Sums about an origin; the nearer it is to the body, the less is lost to rounding. */
    MassSums(double ox, double oy, double oz) {
        this.ox = ox;
        this.oy = oy;
        this.oz = oz;
    }

    /** Adds the facets from one index up to another. */
    void add(Vertices vertices, int[] corners, int fromFacet, int toFacet) {
        for (int h = 3 * fromFacet; h < 3 * toFacet; h += 3) {
            int a = 3 * corners[h];
            int b = 3 * corners[h + 1];
            int c = 3 * corners[h + 2];
            add(
                    vertices.at(a),
                    vertices.at(a + 1),
                    vertices.at(a + 2),
                    vertices.at(b),
                    vertices.at(b + 1),
                    vertices.at(b + 2),
                    vertices.at(c),
                    vertices.at(c + 1),
                    vertices.at(c + 2));
        }
    }

    /** Adds facets of a block as they stand in the file, lengths in its unit: no vertex has to be looked up. */
    void add(FacetBits block, int from, int to) {
        for (int f = from; f < to; f++) {
            int[] bits = block.array(f);
            int at = block.at(f);
            add(
                    Float.intBitsToFloat(bits[at]),
                    Float.intBitsToFloat(bits[at + 1]),
                    Float.intBitsToFloat(bits[at + 2]),
                    Float.intBitsToFloat(bits[at + 3]),
                    Float.intBitsToFloat(bits[at + 4]),
                    Float.intBitsToFloat(bits[at + 5]),
                    Float.intBitsToFloat(bits[at + 6]),
                    Float.intBitsToFloat(bits[at + 7]),
                    Float.intBitsToFloat(bits[at + 8]));
        }
    }

    /** Adds the tetrahedron from the origin to one facet; d is six times its volume. */
    private void add(
            double x0, double y0, double z0, double x1, double y1, double z1, double x2, double y2, double z2) {
        double ax = x0 - ox;
        double ay = y0 - oy;
        double az = z0 - oz;
        double bx = x1 - ox;
        double by = y1 - oy;
        double bz = z1 - oz;
        double cx = x2 - ox;
        double cy = y2 - oy;
        double cz = z2 - oz;
        double nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
        double ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
        double nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
        double sx = ax + bx + cx;
        double sy = ay + by + cy;
        double sz = az + bz + cz;
        double d = ax * nx + ay * ny + az * nz;
        area += Math.sqrt(nx * nx + ny * ny + nz * nz);
        fluxX += sx * nx;
        fluxY += sy * ny;
        fluxZ += sz * nz;
        mx += d * sx;
        my += d * sy;
        mz += d * sz;
        xx += d * (ax * ax + bx * bx + cx * cx + sx * sx);
        yy += d * (ay * ay + by * by + cy * cy + sy * sy);
        zz += d * (az * az + bz * bz + cz * cz + sz * sz);
        xy += d * (ax * ay + bx * by + cx * cy + sx * sy);
        yz += d * (ay * az + by * bz + cy * cz + sy * sz);
        zx += d * (az * ax + bz * bx + cz * cx + sz * sx);
    }

    /** Volume, m3: the mean of the three fluxes. */
    double volume() {
        return (fluxX + fluxY + fluxZ) / 18;
    }

    /** Area, m2. */
    double area() {
        return area / 2;
    }

    /** Largest difference between the volumes by x, y and z, m3; nothing on a closed surface. */
    double fluxSpread() {
        double high = Math.max(fluxX, Math.max(fluxY, fluxZ));
        return (high - Math.min(fluxX, Math.min(fluxY, fluxZ))) / 6;
    }

    /** The properties. */
    MassProperties properties() {
        double volume = volume();
        double gx = mx / 24 / volume;
        double gy = my / 24 / volume;
        double gz = mz / 24 / volume;
        return new MassProperties(
                volume,
                area / 2,
                new Vec3(ox + gx, oy + gy, oz + gz),
                xx / 120 - volume * gx * gx,
                yy / 120 - volume * gy * gy,
                zz / 120 - volume * gz * gz,
                xy / 120 - volume * gx * gy,
                yz / 120 - volume * gy * gz,
                zx / 120 - volume * gz * gx);
    }
}
