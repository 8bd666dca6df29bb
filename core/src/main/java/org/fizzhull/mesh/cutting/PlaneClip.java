package org.fizzhull.mesh.cutting;

import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.measure.MassProperties;

/**
 * Cuts the body of a closed triangle mesh by a plane without building caps. The reference point lies on the plane, so
 * that the cut face adds nothing to the volume and its moments; the cut face itself comes from the directed cut
 * segments by Green's theorem. No loops are chained and no face is triangulated, so holes, several loops and bodies
 * that are not convex need nothing special (docs/physics/hydrostatics.md, 4). Only the facets near the plane are looked
 * at one by one ({@link CutSums}). Immutable; a cut allocates nothing.
 *
 * <p>A vertex on the plane counts as above it. A crossing point is always computed from the vertex with the lower
 * index, so that both facets of an edge see the same point to the last bit.
 */
public final class PlaneClip {
    private final Vec3 origin;
    private final FacetTree tree;
    private final CutSums sums;

    /**
     * Prepares the cuts of a closed mesh whose facets are anticlockwise seen from outside.
     *
     * @param tree tree of the facets
     */
    public PlaneClip(FacetTree tree) {
        this.tree = tree;
        this.origin = MassProperties.boxCentre(tree.mesh());
        this.sums = new CutSums(tree, origin.x(), origin.y(), origin.z());
    }

    /**
     * {@return largest {@code n . x} over the vertices that facets use, m}
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     */
    public double reach(double nx, double ny, double nz) {
        Vec3 at = tree.farthest(nx, ny, nz);
        return nx * at.x() + ny * at.y() + nz * at.z();
    }

    /**
     * Cuts by the plane {@code n . x = c}, n a unit vector, and fills {@code out}.
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     * @param c offset of the plane along its normal, m
     * @param out takes the cut
     */
    public void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        out.clear();
        out.frame(nx, ny, nz);
        double lift = c - (nx * origin.x() + ny * origin.y() + nz * origin.z());
        double px = origin.x() + lift * nx;
        double py = origin.y() + lift * ny;
        double pz = origin.z() + lift * nz;
        int nodes = tree.nodes();
        for (int i = 0; i < nodes; ) {
            int side = sums.side(i, nx, ny, nz, lift);
            if (side != 0) {
                if (side < 0) {
                    sums.add(i, lift * nx, lift * ny, lift * nz, out);
                }
                i = sums.after(i);
                continue;
            }
            int end = tree.leaf(i) ? tree.end(i) : 0;
            for (int f = tree.first(i); f < end; f++) {
                facet(f, nx, ny, nz, px, py, pz, out);
            }
            i++;
        }
        out.mx += out.volume * px;
        out.my += out.volume * py;
        out.mz += out.volume * pz;
        face(px, py, pz, out);
    }

    /**
     * {@return area of the surface below the plane {@code n . x = c}, n a unit vector, m2}
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     * @param c offset of the plane along its normal, m
     */
    public double areaBelow(double nx, double ny, double nz, double c) {
        double lift = c - (nx * origin.x() + ny * origin.y() + nz * origin.z());
        double sum = 0;
        double[] deep = new double[3];
        for (int i = 0; i < tree.nodes(); ) {
            int side = sums.side(i, nx, ny, nz, lift);
            if (side != 0) {
                sum += side < 0 ? sums.areaOf(i) : 0;
                i = sums.after(i);
                continue;
            }
            int end = tree.leaf(i) ? tree.end(i) : 0;
            for (int f = tree.first(i); f < end; f++) {
                for (int k = 0; k < 3; k++) {
                    deep[k] = c - nx * tree.at(f, 3 * k) - ny * tree.at(f, 3 * k + 1) - nz * tree.at(f, 3 * k + 2);
                }
                sum += sums.area(f) * shareBelow(deep);
            }
            i++;
        }
        return sum;
    }

    /** Share of a facet below a plane, by how deep its corners lie: one alone on its side cuts off the share t u. */
    private static double shareBelow(double[] deep) {
        int wet = 0;
        for (double d : deep) {
            wet += d >= 0 ? 1 : 0;
        }
        if (wet == 0 || wet == 3) {
            return wet == 3 ? 1 : 0;
        }
        int alone = 0;
        while (deep[alone] >= 0 != (wet == 1)) {
            alone++;
        }
        double d = deep[alone];
        double cut = d / (d - deep[(alone + 1) % 3]) * d / (d - deep[(alone + 2) % 3]);
        return wet == 1 ? cut : 1 - cut;
    }

    private void facet(int f, double nx, double ny, double nz, double px, double py, double pz, PlaneCut out) {
        double ax = tree.at(f, 0) - px;
        double ay = tree.at(f, 1) - py;
        double az = tree.at(f, 2) - pz;
        double bx = tree.at(f, 3) - px;
        double by = tree.at(f, 4) - py;
        double bz = tree.at(f, 5) - pz;
        double dx = tree.at(f, 6) - px;
        double dy = tree.at(f, 7) - py;
        double dz = tree.at(f, 8) - pz;
        double ha = nx * ax + ny * ay + nz * az;
        double hb = nx * bx + ny * by + nz * bz;
        double hd = nx * dx + ny * dy + nz * dz;
        boolean wetA = ha < 0;
        boolean wetB = hb < 0;
        boolean wetD = hd < 0;
        if (wetA == wetB && wetB == wetD) {
            if (wetA) {
                add(ax, ay, az, bx, by, bz, dx, dy, dz, out);
            }
            return;
        }
        int a = sums.corner(f, 0);
        int b = sums.corner(f, 1);
        int d = sums.corner(f, 2);
        if (wetA == wetB) {
            corner(dx, dy, dz, d, hd, ax, ay, az, a, ha, bx, by, bz, b, hb, out);
        } else if (wetB == wetD) {
            corner(ax, ay, az, a, ha, bx, by, bz, b, hb, dx, dy, dz, d, hd, out);
        } else {
            corner(bx, by, bz, b, hb, dx, dy, dz, d, hd, ax, ay, az, a, ha, out);
        }
    }

    /** A facet whose corner a is alone on its side; a, b, d in the order of the facet, from the reference point. */
    private static void corner(
            double ax,
            double ay,
            double az,
            int a,
            double ha,
            double bx,
            double by,
            double bz,
            int b,
            double hb,
            double dx,
            double dy,
            double dz,
            int d,
            double hd,
            PlaneCut out) {
        double tb = share(a, ha, b, hb);
        double td = share(a, ha, d, hd);
        // canonical: from the vertex with the lower index
        double ex = a < b ? ax + tb * (bx - ax) : bx + tb * (ax - bx);
        double ey = a < b ? ay + tb * (by - ay) : by + tb * (ay - by);
        double ez = a < b ? az + tb * (bz - az) : bz + tb * (az - bz);
        double gx = a < d ? ax + td * (dx - ax) : dx + td * (ax - dx);
        double gy = a < d ? ay + td * (dy - ay) : dy + td * (ay - dy);
        double gz = a < d ? az + td * (dz - az) : dz + td * (az - dz);
        if (ha < 0) {
            add(ax, ay, az, ex, ey, ez, gx, gy, gz, out);
            segment(gx, gy, gz, ex, ey, ez, out);
        } else {
            add(ex, ey, ez, bx, by, bz, dx, dy, dz, out);
            add(ex, ey, ez, dx, dy, dz, gx, gy, gz, out);
            segment(ex, ey, ez, gx, gy, gz, out);
        }
    }

    private static double share(int i, double hi, int j, double hj) {
        return i < j ? hi / (hi - hj) : hj / (hj - hi);
    }

    private static void add(
            double ax,
            double ay,
            double az,
            double bx,
            double by,
            double bz,
            double cx,
            double cy,
            double cz,
            PlaneCut out) {
        double d = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
        out.volume += d / 6;
        out.mx += d * (ax + bx + cx) / 24;
        out.my += d * (ay + by + cy) / 24;
        out.mz += d * (az + bz + cz) / 24;
    }

    /** Green's theorem for one directed edge of the cut face, anticlockwise about n; sums are left in the holder. */
    private static void segment(double fx, double fy, double fz, double tx, double ty, double tz, PlaneCut out) {
        double u0 = fx * out.ux + fy * out.uy + fz * out.uz;
        double w0 = fx * out.wx + fy * out.wy + fz * out.wz;
        double u1 = tx * out.ux + ty * out.uy + tz * out.uz;
        double w1 = tx * out.wx + ty * out.wy + tz * out.wz;
        double cross = u0 * w1 - u1 * w0;
        out.area += cross / 2;
        out.ax += cross * (u0 + u1) / 6;
        out.ay += cross * (w0 + w1) / 6;
        out.juu += cross * (u0 * u0 + u0 * u1 + u1 * u1) / 12;
        out.jww += cross * (w0 * w0 + w0 * w1 + w1 * w1) / 12;
        out.juw += cross * (u0 * w1 + 2 * u0 * w0 + 2 * u1 * w1 + u1 * w0) / 24;
    }

    private static void face(double px, double py, double pz, PlaneCut out) {
        if (!(out.area > 0)) {
            out.area = out.juu = out.jww = out.juw = 0;
            out.ax = px;
            out.ay = py;
            out.az = pz;
            return;
        }
        double u = out.ax / out.area;
        double w = out.ay / out.area;
        out.juu -= out.area * u * u;
        out.jww -= out.area * w * w;
        out.juw -= out.area * u * w;
        out.ax = px + u * out.ux + w * out.wx;
        out.ay = py + u * out.uy + w * out.wy;
        out.az = pz + u * out.uz + w * out.wz;
    }
}
