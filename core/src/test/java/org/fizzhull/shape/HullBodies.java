package org.fizzhull.shape;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;

/** Bodies the hydrostatics tests cut, made straight from meridians and facets. */
public final class HullBodies {
    private HullBodies() {}

    public static Hull cylinder(double diameter, double length) {
        double r = diameter / 2;
        return new RevolvedHull(Profile2D.builder().line(0, r, length, r).build());
    }

    /** Apex up, base at z = 0. */
    public static Hull cone(double radius, double height) {
        return new RevolvedHull(Profile2D.builder().line(0, radius, height, 0).build());
    }

    public static Hull ball(double radius) {
        return new RevolvedHull(Profile2D.builder()
                .arc(radius, 0, radius, radius, 1, 0, 2 * radius)
                .build());
    }

    /** Cap of height h of a ball, flat face down at z = 0. */
    public static Hull dome(double radius, double height) {
        return new RevolvedHull(Profile2D.builder()
                .arc(height - radius, 0, radius, radius, 1, 0, height)
                .build());
    }

    /** Half of a hollow ball, open side up, lowest point at z = 0. */
    public static Hull bowl(double outer, double inner) {
        return new RevolvedHull(Profile2D.builder()
                .arc(outer, 0, outer, outer, 1, 0, outer)
                .inner()
                .arc(outer, 0, inner, inner, 1, outer - inner, outer)
                .build());
    }

    /** Half a ball, flat face up. */
    public static Hull cup(double radius) {
        return new RevolvedHull(
                Profile2D.builder().arc(radius, 0, radius, radius, 1, 0, radius).build());
    }

    public static Hull torus(double centre, double tube) {
        return new RevolvedHull(Profile2D.builder()
                .arc(tube, centre, tube, tube, 1, 0, 2 * tube)
                .inner()
                .arc(tube, centre, tube, tube, -1, 0, 2 * tube)
                .build());
    }

    /** Two half spheroids on a common circle, the pointed one (half axis c1) up. */
    public static Hull egg(double a, double c1, double c2) {
        return new RevolvedHull(Profile2D.builder()
                .arc(c2, 0, a, c2, 1, 0, c2)
                .arc(c2, 0, a, c1, 1, c2, c2 + c1)
                .build());
    }

    public static Hull spheroid(double a, double c) {
        return egg(a, c, c);
    }

    public static Hull capsule(double radius, double straight) {
        return new RevolvedHull(Profile2D.builder()
                .arc(radius, 0, radius, radius, 1, 0, radius)
                .line(radius, radius, radius + straight, radius)
                .arc(radius + straight, 0, radius, radius, 1, radius + straight, 2 * radius + straight)
                .build());
    }

    /** Box with its centre at the origin, 12 facets. */
    public static TriangleMesh box(double a, double b, double c) {
        double[] xyz = new double[24];
        for (int v = 0; v < 8; v++) {
            xyz[3 * v] = (v & 1) == 0 ? -a / 2 : a / 2;
            xyz[3 * v + 1] = (v & 2) == 0 ? -b / 2 : b / 2;
            xyz[3 * v + 2] = (v & 4) == 0 ? -c / 2 : c / 2;
        }
        int[] corners = {
            0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5
        };
        return new TriangleMesh(xyz, corners);
    }

    public static PolyhedronHull block(double a, double b, double c) {
        return new PolyhedronHull(box(a, b, c), 0);
    }

    /** Mesh of a closed meridian polygon (r, z) from pole to pole, upwards on the outside, with n segments. */
    public static TriangleMesh turned(double[][] meridian, int n) {
        List<double[]> points = new ArrayList<>();
        int[][] ring = new int[meridian.length][n];
        for (int i = 0; i < meridian.length; i++) {
            double r = meridian[i][0];
            for (int k = 0; k < n; k++) {
                if (r == 0 && k > 0) {
                    ring[i][k] = ring[i][0];
                    continue;
                }
                double a = 2 * Math.PI * k / n;
                ring[i][k] = points.size();
                points.add(new double[] {r * Math.cos(a), r * Math.sin(a), meridian[i][1]});
            }
        }
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i + 1 < meridian.length; i++) {
            for (int k = 0; k < n; k++) {
                int l = (k + 1) % n;
                if (ring[i][k] != ring[i][l]) {
                    corners.addAll(List.of(ring[i][k], ring[i][l], ring[i + 1][k]));
                }
                if (ring[i + 1][k] != ring[i + 1][l]) {
                    corners.addAll(List.of(ring[i][l], ring[i + 1][l], ring[i + 1][k]));
                }
            }
        }
        double[] xyz = new double[3 * points.size()];
        for (int v = 0; v < points.size(); v++) {
            System.arraycopy(points.get(v), 0, xyz, 3 * v, 3);
        }
        return new TriangleMesh(
                xyz, corners.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Mesh of an ellipsoid about the origin, n segments round and n/2 from pole to pole. */
    public static TriangleMesh ellipsoid(double a, double b, double c, int n) {
        int rows = n / 2;
        double[][] meridian = new double[rows + 1][];
        for (int i = 0; i <= rows; i++) {
            double t = -Math.PI / 2 + Math.PI * i / rows;
            meridian[i] = new double[] {i == 0 || i == rows ? 0 : Math.cos(t), Math.sin(t)};
        }
        return scaled(turned(meridian, n), a, b, c);
    }

    public static TriangleMesh scaled(TriangleMesh mesh, double a, double b, double c) {
        return moved(mesh, new double[] {a, 0, 0, 0, b, 0, 0, 0, c}, 0, 0, 0);
    }

    /** The mesh after x -> M x + d, M by rows. */
    public static TriangleMesh moved(TriangleMesh mesh, double[] m, double dx, double dy, double dz) {
        double[] xyz = new double[3 * mesh.vertexCount()];
        for (int v = 0; v < mesh.vertexCount(); v++) {
            double x = mesh.at(v, 0);
            double y = mesh.at(v, 1);
            double z = mesh.at(v, 2);
            xyz[3 * v] = m[0] * x + m[1] * y + m[2] * z + dx;
            xyz[3 * v + 1] = m[3] * x + m[4] * y + m[5] * z + dy;
            xyz[3 * v + 2] = m[6] * x + m[7] * y + m[8] * z + dz;
        }
        int[] corners = new int[3 * mesh.facetCount()];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = mesh.corner(i / 3, i % 3);
        }
        return new TriangleMesh(xyz, corners);
    }

    /** Turn by an angle about a unit axis, by rows. */
    public static double[] turn(double x, double y, double z, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double d = 1 - c;
        return new double[] {
            c + d * x * x,
            d * x * y - s * z,
            d * x * z + s * y,
            d * x * y + s * z,
            c + d * y * y,
            d * y * z - s * x,
            d * x * z - s * y,
            d * y * z + s * x,
            c + d * z * z
        };
    }
}
