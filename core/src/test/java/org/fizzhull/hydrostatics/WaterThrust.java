package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hull;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.numeric.GaussLegendre;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.ProfileFaces;
import org.fizzhull.shape.revolved.RevolvedHull;
import org.jspecify.annotations.Nullable;

/**
 * The push of still water on the wetted surface, summed from the pressure on its faces: a second way to what
 * {@link Hull#cut} gets from volumes, for checks. Per unit of (water density times gravity): the force is in m3 and
 * equals displaced volume times the up vector, the moment about the origin of the body frame is in m4. A mutable
 * holder; exact for meshes, within about 1e-7 of the body for bodies of revolution, whose faces are summed ring by
 * ring in panels that end where the water line enters or leaves a face.
 */
final class WaterThrust {
    private static final int SCAN = 16;

    /** Force in the body frame, m3. */
    public double fx;

    public double fy;

    public double fz;

    /** Moment about the origin of the body frame, m4. */
    public double mx;

    public double my;

    public double mz;

    /** Sums the pressure below the plane {@code n . x = c}; false where the kind of hull shows no surface. */
    public boolean on(Hull hull, double nx, double ny, double nz, double c) {
        fx = fy = fz = mx = my = mz = 0;
        if (hull instanceof RevolvedHull revolved) {
            meridian(revolved.profile(), nx, ny, nz, c);
            return true;
        }
        if (hull instanceof PolyhedronHull polyhedron) {
            facets(polyhedron.mesh(), nx, ny, nz, c);
            return true;
        }
        return false;
    }

    private void meridian(Profile2D profile, double nx, double ny, double nz, double c) {
        double s = Math.sqrt(nx * nx + ny * ny);
        for (Profile2D.Piece piece : profile.pieces()) {
            boolean straight = piece.bulge() == 0;
            double from = straight ? piece.z0() : ProfileFaces.angle(piece, piece.z0());
            double to = straight ? piece.z1() : ProfileFaces.angle(piece, piece.z1());
            face(piece, 0, from, to, piece.inner() ? -1 : 1, s, nz, c);
        }
        for (ProfileFaces.Flat flat : ProfileFaces.flats(profile)) {
            face(null, flat.z(), flat.inner(), flat.outer(), flat.top() ? 1 : -1, s, nz, c);
        }
        double ex = s > 0 ? nx / s : 1;
        double ey = s > 0 ? ny / s : 0;
        fy = fx * ey;
        fx = fx * ex;
        mx = -my * ey;
        my = my * ex;
    }

    /** A face by its parameter: height of a line, angle of an arc, radius of a flat ring (no piece) at height z. */
    private void face(
            Profile2D.@Nullable Piece piece,
            double z,
            double from,
            double to,
            int sign,
            double s,
            double nz,
            double c) {
        double start = from;
        double low = from;
        for (int k = 1; k <= SCAN; k++) {
            double high = k == SCAN ? to : from + (to - from) * k / SCAN;
            int now = wet(piece, z, high, s, nz, c);
            // a cell may hold two changes: wholly wet, partly wet, dry
            for (int before = wet(piece, z, low, s, nz, c); before != now; before = wet(piece, z, low, s, nz, c)) {
                double end = high;
                for (int pass = 0; pass < 50; pass++) {
                    double middle = (low + end) / 2;
                    if (wet(piece, z, middle, s, nz, c) == before) {
                        low = middle;
                    } else {
                        end = middle;
                    }
                }
                panel(piece, z, start, end, sign, s, nz, c);
                start = end;
                low = end;
            }
            low = high;
        }
        panel(piece, z, start, to, sign, s, nz, c);
    }

    /** 1 where the whole ring is under water, 0 where part of it is, -1 where none. */
    private static int wet(Profile2D.@Nullable Piece piece, double flat, double x, double s, double nz, double c) {
        double r = piece == null ? x : radius(piece, x);
        double deep = c - nz * (piece == null ? flat : height(piece, x));
        return deep >= s * r ? 1 : deep <= -s * r ? -1 : 0;
    }

    private static double radius(Profile2D.Piece piece, double x) {
        return piece.bulge() == 0 ? piece.radius(x) : piece.rc() + piece.bulge() * piece.p() * Math.cos(x);
    }

    private static double height(Profile2D.Piece piece, double x) {
        return piece.bulge() == 0 ? x : piece.zc() + piece.q() * Math.sin(x);
    }

    private void panel(
            Profile2D.@Nullable Piece piece,
            double z,
            double from,
            double to,
            int sign,
            double s,
            double nz,
            double c) {
        double half = (to - from) / 2;
        double lean = piece == null ? 0 : (piece.r1() - piece.r0()) / (piece.z1() - piece.z0());
        for (int i = 0; i < GaussLegendre.POINTS; i++) {
            double x = from + half * (1 + GaussLegendre.node(i));
            double weight = half * GaussLegendre.weight(i) * sign;
            if (piece == null) {
                ring(x, z, 0, weight, s, nz, c);
            } else if (piece.bulge() == 0) {
                ring(piece.radius(x), x, weight, -lean * weight, s, nz, c);
            } else {
                double dz = piece.q() * Math.cos(x) * weight;
                double dr = -piece.bulge() * piece.p() * Math.sin(x) * weight;
                ring(radius(piece, x), height(piece, x), dz, -dr, s, nz, c);
            }
        }
    }

    /** A ring at (r, z) whose outward normal times its width is (outward, upward), the plane leaning in x. */
    private void ring(double r, double z, double outward, double upward, double s, double nz, double c) {
        double deep = c - nz * z;
        double edge = deep / (s * r);
        if (!(edge > -1)) {
            return;
        }
        double dry = edge >= 1 ? 0 : Math.acos(edge);
        double sine = edge >= 1 ? 0 : Math.sqrt(1 - edge * edge);
        double wet = Math.PI - dry;
        double even = 2 * (deep * wet + s * r * sine);
        double odd = -2 * (deep * sine + s * r * (wet - sine * (edge >= 1 ? 1 : edge)) / 2);
        fx -= odd * outward * r;
        fz -= even * upward * r;
        my += odd * (r * upward - z * outward) * r;
    }

    private void facets(TriangleMesh mesh, double nx, double ny, double nz, double c) {
        double[] polygon = new double[12];
        for (int f = 0; f < mesh.facetCount(); f++) {
            int count = 0;
            for (int k = 0; k < 3; k++) {
                int i = mesh.corner(f, k);
                int j = mesh.corner(f, (k + 1) % 3);
                double xi = mesh.at(i, 0);
                double yi = mesh.at(i, 1);
                double zi = mesh.at(i, 2);
                double xj = mesh.at(j, 0);
                double yj = mesh.at(j, 1);
                double zj = mesh.at(j, 2);
                double di = c - nx * xi - ny * yi - nz * zi;
                double dj = c - nx * xj - ny * yj - nz * zj;
                if (di >= 0) {
                    count = put(polygon, count, xi, yi, zi);
                }
                if (di * dj < 0) {
                    double t = di / (di - dj);
                    count = put(polygon, count, xi + t * (xj - xi), yi + t * (yj - yi), zi + t * (zj - zi));
                }
            }
            for (int k = 2; k < count; k++) {
                triangle(polygon, 3 * (k - 1), 3 * k, nx, ny, nz, c);
            }
        }
    }

    private static int put(double[] polygon, int count, double x, double y, double z) {
        polygon[3 * count] = x;
        polygon[3 * count + 1] = y;
        polygon[3 * count + 2] = z;
        return count + 1;
    }

    /** Pressure times position is quadratic on a facet: the rule of the edge middles is exact. */
    private void triangle(double[] q, int b, int d, double nx, double ny, double nz, double c) {
        double px = q[b] - q[0];
        double py = q[b + 1] - q[1];
        double pz = q[b + 2] - q[2];
        double rx = q[d] - q[0];
        double ry = q[d + 1] - q[1];
        double rz = q[d + 2] - q[2];
        double ax = (py * rz - pz * ry) / 6;
        double ay = (pz * rx - px * rz) / 6;
        double az = (px * ry - py * rx) / 6;
        for (int k = 0; k < 3; k++) {
            int i = k == 2 ? b : 0;
            int j = k == 0 ? b : d;
            double x = (q[i] + q[j]) / 2;
            double y = (q[i + 1] + q[j + 1]) / 2;
            double z = (q[i + 2] + q[j + 2]) / 2;
            double p = c - nx * x - ny * y - nz * z;
            fx -= p * ax;
            fy -= p * ay;
            fz -= p * az;
            mx -= p * (y * az - z * ay);
            my -= p * (z * ax - x * az);
            mz -= p * (x * ay - y * ax);
        }
    }
}
