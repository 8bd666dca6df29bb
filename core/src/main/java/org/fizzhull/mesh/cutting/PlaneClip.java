package org.fizzhull.mesh.cutting;

import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.MassProperties;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;

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
    private final TriangleMesh mesh;
    private final Vec3 origin;
    private final FacetTree tree;
    private final CutSums sums;

    /** Prepares the cuts of a closed mesh whose facets are anticlockwise seen from outside. */
    public PlaneClip(FacetTree tree) {
        this.mesh = tree.mesh();
        this.tree = tree;
        this.origin = MassProperties.boxCentre(mesh);
        this.sums = new CutSums(tree, origin.x(), origin.y(), origin.z());
    }

    /** Largest {@code n . x} over the vertices that facets use, m. */
    public double reach(double nx, double ny, double nz) {
        return sums.reach(0, nx, ny, nz, Double.NEGATIVE_INFINITY);
    }

    /** Cuts by the plane {@code n . x = c}, n a unit vector, and fills {@code out}. */
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
                facet(sums.corner(f, 0), sums.corner(f, 1), sums.corner(f, 2), nx, ny, nz, px, py, pz, out);
            }
            i++;
        }
        out.mx += out.volume * px;
        out.my += out.volume * py;
        out.mz += out.volume * pz;
        face(px, py, pz, out);
    }

    private void facet(
            int a, int b, int d, double nx, double ny, double nz, double px, double py, double pz, PlaneCut out) {
        double ha = height(a, nx, ny, nz, px, py, pz);
        double hb = height(b, nx, ny, nz, px, py, pz);
        double hd = height(d, nx, ny, nz, px, py, pz);
        boolean wetA = ha < 0;
        boolean wetB = hb < 0;
        boolean wetD = hd < 0;
        if (wetA && wetB && wetD) {
            double ax = mesh.at(a, 0) - px;
            double ay = mesh.at(a, 1) - py;
            double az = mesh.at(a, 2) - pz;
            double bx = mesh.at(b, 0) - px;
            double by = mesh.at(b, 1) - py;
            double bz = mesh.at(b, 2) - pz;
            add(ax, ay, az, bx, by, bz, mesh.at(d, 0) - px, mesh.at(d, 1) - py, mesh.at(d, 2) - pz, out);
        } else if (wetA == wetB && wetA != wetD) {
            corner(d, hd, a, ha, b, hb, px, py, pz, out);
        } else if (wetB == wetD && wetB != wetA) {
            corner(a, ha, b, hb, d, hd, px, py, pz, out);
        } else if (wetD == wetA && wetD != wetB) {
            corner(b, hb, d, hd, a, ha, px, py, pz, out);
        }
    }

    /** A facet whose corner a is alone on its side; a, b, d in the order of the facet. */
    private void corner(
            int a, double ha, int b, double hb, int d, double hd, double px, double py, double pz, PlaneCut out) {
        double tb = share(a, ha, b, hb);
        double td = share(a, ha, d, hd);
        double ax = mesh.at(a, 0) - px;
        double ay = mesh.at(a, 1) - py;
        double az = mesh.at(a, 2) - pz;
        double bx = mesh.at(b, 0) - px;
        double by = mesh.at(b, 1) - py;
        double bz = mesh.at(b, 2) - pz;
        double dx = mesh.at(d, 0) - px;
        double dy = mesh.at(d, 1) - py;
        double dz = mesh.at(d, 2) - pz;
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

    private double height(int v, double nx, double ny, double nz, double px, double py, double pz) {
        return nx * (mesh.at(v, 0) - px) + ny * (mesh.at(v, 1) - py) + nz * (mesh.at(v, 2) - pz);
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
