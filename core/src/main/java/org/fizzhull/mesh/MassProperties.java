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
        MassSums sums = new MassSums(o.x(), o.y(), o.z());
        mesh.addTo(sums);
        return sums.properties();
    }

    /** The same body measured in another unit, of which the unit so far is this long. */
    MassProperties times(double unit) {
        double area = unit * unit;
        double volume = area * unit;
        double second = volume * area;
        return new MassProperties(
                this.volume * volume,
                this.area * area,
                centroid.times(unit),
                xx * second,
                yy * second,
                zz * second,
                xy * second,
                yz * second,
                zx * second);
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
    public static Vec3 boxCentre(TriangleMesh mesh) {
        double[] box = mesh.box();
        return new Vec3((box[0] + box[3]) / 2, (box[1] + box[4]) / 2, (box[2] + box[5]) / 2);
    }
}
