package org.fizzhull.hydrostatics;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.fizzhull.mesh.TriangleMesh;

/** Balls, ellipsoids and pebbles in triangles that are not alike: each corner is off its place by half a facet. */
final class UnevenBall {
    private static final double OFF = 0.5;

    private UnevenBall() {}

    /** Half axes, m, and how far the radius bulges with 3 x y z + x^3/2 of the unit ball; 4 n (n - 1) facets. */
    static TriangleMesh of(int rings, double a, double b, double c, double bulge) {
        SplittableRandom random = new SplittableRandom(3);
        int around = 2 * rings;
        List<double[]> points = new ArrayList<>();
        points.add(point(0, Math.PI, a, b, c, bulge));
        for (int j = 1; j < rings; j++) {
            for (int i = 0; i < around; i++) {
                double u = i + OFF * (random.nextDouble() - 0.5) + j % 2 * 0.5;
                double v = j + OFF * (random.nextDouble() - 0.5);
                points.add(point(2 * Math.PI * u / around, Math.PI * (1 - v / rings), a, b, c, bulge));
            }
        }
        points.add(point(0, 0, a, b, c, bulge));
        List<int[]> facets = new ArrayList<>();
        int top = points.size() - 1;
        for (int i = 0; i < around; i++) {
            int k = (i + 1) % around;
            facets.add(new int[] {0, 1 + k, 1 + i});
            facets.add(new int[] {top, top - around + i, top - around + k});
        }
        for (int j = 0; j < rings - 2; j++) {
            for (int i = 0; i < around; i++) {
                int p = 1 + j * around + i;
                int q = 1 + j * around + (i + 1) % around;
                boolean odd = j % 2 == 1;
                facets.add(odd ? new int[] {p, q, p + around} : new int[] {p, q, q + around});
                facets.add(odd ? new int[] {q, q + around, p + around} : new int[] {p, q + around, p + around});
            }
        }
        return mesh(points, facets);
    }

    /** A ball around a ball that stands {@code up} above its middle. */
    static TriangleMesh hollow(int rings, double outer, double inner, double up) {
        TriangleMesh one = of(rings, outer, outer, outer, 0);
        TriangleMesh two = of(rings, inner, inner, inner, 0);
        List<double[]> points = new ArrayList<>();
        List<int[]> facets = new ArrayList<>();
        for (boolean inside : new boolean[] {false, true}) {
            TriangleMesh mesh = inside ? two : one;
            int first = points.size();
            for (int v = 0; v < mesh.vertexCount(); v++) {
                points.add(new double[] {mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2) + (inside ? up : 0)});
            }
            for (int f = 0; f < mesh.facetCount(); f++) {
                int b = mesh.corner(f, inside ? 2 : 1);
                int c = mesh.corner(f, inside ? 1 : 2);
                facets.add(new int[] {first + mesh.corner(f, 0), first + b, first + c});
            }
        }
        return mesh(points, facets);
    }

    private static double[] point(double u, double v, double a, double b, double c, double bulge) {
        double x = Math.sin(v) * Math.cos(u);
        double y = Math.sin(v) * Math.sin(u);
        double z = Math.cos(v);
        double f = 1 + bulge * (3 * x * y * z + x * x * x / 2);
        return new double[] {a * f * x, b * f * y, c * f * z};
    }

    private static TriangleMesh mesh(List<double[]> points, List<int[]> facets) {
        double[] xyz = new double[3 * points.size()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = points.get(i / 3)[i % 3];
        }
        int[] corners = new int[3 * facets.size()];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = facets.get(i / 3)[i % 3];
        }
        return new TriangleMesh(xyz, corners);
    }
}
