package org.fizzhull.validation.check;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.fizzhull.mesh.TriangleMesh;

/** An icosahedron whose faces are cut in four k times, all vertices on the sphere: 20 * 4^k facets. */
final class Icosphere {
    private double[] xyz = new double[0];
    private final Map<Long, Integer> middles = new HashMap<>();

    private Icosphere() {}

    static TriangleMesh of(double radius, int k) {
        Icosphere sphere = new Icosphere();
        double g = (1 + Math.sqrt(5)) / 2;
        double[][] first = {
            {-1, g, 0},
            {1, g, 0},
            {-1, -g, 0},
            {1, -g, 0},
            {0, -1, g},
            {0, 1, g},
            {0, -1, -g},
            {0, 1, -g},
            {g, 0, -1},
            {g, 0, 1},
            {-g, 0, -1},
            {-g, 0, 1}
        };
        for (double[] p : first) {
            sphere.add(p[0], p[1], p[2]);
        }
        int[] faces = {
            0, 11, 5, 0, 5, 1, 0, 1, 7, 0, 7, 10, 0, 10, 11, 1, 5, 9, 5, 11, 4, 11, 10, 2, 10, 7, 6, 7, 1, 8, 3, 9, 4,
            3, 4, 2, 3, 2, 6, 3, 6, 8, 3, 8, 9, 4, 9, 5, 2, 4, 11, 6, 2, 10, 8, 6, 7, 9, 8, 1
        };
        for (int i = 0; i < k; i++) {
            faces = sphere.quartered(faces);
        }
        double[] scaled = sphere.xyz.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= radius;
        }
        return new TriangleMesh(scaled, faces);
    }

    private int[] quartered(int[] faces) {
        int[] finer = new int[4 * faces.length];
        for (int f = 0; f < faces.length / 3; f++) {
            int a = faces[3 * f];
            int b = faces[3 * f + 1];
            int c = faces[3 * f + 2];
            int ab = middle(a, b);
            int bc = middle(b, c);
            int ca = middle(c, a);
            int[] four = {a, ab, ca, b, bc, ab, c, ca, bc, ab, bc, ca};
            System.arraycopy(four, 0, finer, 12 * f, 12);
        }
        return finer;
    }

    private int middle(int a, int b) {
        long edge = (long) Math.min(a, b) << 32 | Math.max(a, b);
        return middles.computeIfAbsent(
                edge,
                e -> add(xyz[3 * a] + xyz[3 * b], xyz[3 * a + 1] + xyz[3 * b + 1], xyz[3 * a + 2] + xyz[3 * b + 2]));
    }

    private int add(double x, double y, double z) {
        double size = Math.sqrt(x * x + y * y + z * z);
        int at = xyz.length;
        xyz = Arrays.copyOf(xyz, at + 3);
        xyz[at] = x / size;
        xyz[at + 1] = y / size;
        xyz[at + 2] = z / size;
        return at / 3;
    }
}
