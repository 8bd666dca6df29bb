package org.fizzhull.shape;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.numeric.GaussLegendre;

/**
 * The push of still water on the wetted surface, summed from the pressure on its faces: a second way to what
 * {@link Hull#cut} gets from volumes, for checks. Per unit of (water density times gravity): the force is in m3 and equals
 * displaced volume times the up vector, the moment about the origin of the body frame is in m4. A mutable holder; exact
 * for meshes, within about 1e-6 of the body for bodies of revolution.
 */
public final class WaterThrust {
    private static final int PANELS = 3;

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
            double lean = straight ? (piece.r1() - piece.r0()) / (piece.z1() - piece.z0()) : 0;
            double half = (to - from) / (2 * PANELS);
            for (int k = 0; k < PANELS * GaussLegendre.POINTS; k++) {
                int i = k % GaussLegendre.POINTS;
                double x = from + half * (2 * (k / GaussLegendre.POINTS) + 1 + GaussLegendre.node(i));
                double weight = half * GaussLegendre.weight(i) * (piece.inner() ? -1 : 1);
                if (straight) {
                    ring(piece.radius(x), x, weight, -lean * weight, s, nz, c);
                } else {
                    double r = piece.rc() + piece.bulge() * piece.p() * Math.cos(x);
                    double dz = piece.q() * Math.cos(x) * weight;
                    double dr = -piece.bulge() * piece.p() * Math.sin(x) * weight;
                    ring(r, piece.zc() + piece.q() * Math.sin(x), dz, -dr, s, nz, c);
                }
            }
        }
        for (ProfileFaces.Flat flat : ProfileFaces.flats(profile)) {
            double half = (flat.outer() - flat.inner()) / (2 * PANELS);
            for (int k = 0; k < PANELS * GaussLegendre.POINTS; k++) {
                int i = k % GaussLegendre.POINTS;
                double r = flat.inner() + half * (2 * (k / GaussLegendre.POINTS) + 1 + GaussLegendre.node(i));
                ring(r, flat.z(), 0, half * GaussLegendre.weight(i) * (flat.top() ? 1 : -1), s, nz, c);
            }
        }
        double ex = s > 0 ? nx / s : 1;
        double ey = s > 0 ? ny / s : 0;
        fy = fx * ey;
        fx = fx * ex;
        mx = -my * ey;
        my = my * ex;
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
