package org.fizzhull.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A mesh whose dry hollows are closed, each by a lid at its rim: what displaces water while they hold air. The surface
 * of a hollow is cut off at the rim; the lid is a fan around one point, so that a rim that is not star-shaped is covered
 * by facets that overlap with opposite signs. Volumes, centroids and water planes come out right all the same, and the
 * mesh is closed edge by edge; only the area of such a lid is too large, and it is never wet.
 */
final class RimLid {
    private final OpenHollows hollows;
    private final TriangleMesh mesh;
    private final double[] apexes;
    private final int[] apexOf;
    private final int[] shared;
    private final Map<Long, Integer> crossings = new HashMap<>();
    private double[] xyz;
    private int vertices;
    private int[] corners;
    private int used;

    private RimLid(OpenHollows hollows, int count) {
        this.hollows = hollows;
        mesh = hollows.mesh;
        apexes = new double[3 * count];
        apexOf = new int[count];
        shared = new int[count];
        vertices = mesh.vertexCount();
        xyz = new double[3 * vertices + 3 * count];
        for (int i = 0; i < 3 * vertices; i++) {
            xyz[i] = mesh.at(i / 3, i % 3);
        }
        corners = new int[3 * mesh.facetCount()];
        Arrays.fill(apexOf, -1);
    }

    /** Closes the dry hollows of a mesh, of so many that were found. */
    static TriangleMesh close(OpenHollows hollows, int count) {
        RimLid lid = new RimLid(hollows, count);
        for (int f = 0; f < lid.mesh.facetCount(); f++) {
            int h = hollows.dryOwner(f);
            if (h < 0) {
                lid.facet(lid.mesh.corner(f, 0), lid.mesh.corner(f, 1), lid.mesh.corner(f, 2));
            } else {
                lid.cut(f, h);
            }
        }
        for (int h = 0; h < count; h++) {
            if (lid.apexOf[h] >= 0) {
                int a = lid.apexOf[h];
                lid.xyz[3 * a] = lid.apexes[3 * h] / lid.shared[h];
                lid.xyz[3 * a + 1] = lid.apexes[3 * h + 1] / lid.shared[h];
                lid.xyz[3 * a + 2] = hollows.level(h);
            }
        }
        return new TriangleMesh(Arrays.copyOf(lid.xyz, 3 * lid.vertices), Arrays.copyOf(lid.corners, lid.used));
    }

    /** Keeps what of a facet is above the rim, and spans the lid from the line where it is cut. */
    private void cut(int f, int h) {
        double level = hollows.level(h);
        int[] keep = new int[4];
        int kept = 0;
        int[] gone = new int[4];
        boolean[] onRim = new boolean[4];
        int lost = 0;
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(f, k);
            int w = mesh.corner(f, (k + 1) % 3);
            int side = side(v, level);
            int other = side(w, level);
            if (side >= 0) {
                keep[kept++] = v;
            }
            if (side <= 0) {
                onRim[lost] = side == 0;
                gone[lost++] = v;
            }
            if (side * other < 0) {
                int at = crossing(v, w, level);
                keep[kept++] = at;
                onRim[lost] = true;
                gone[lost++] = at;
            }
        }
        for (int i = 2; i < kept; i++) {
            facet(keep[0], keep[i - 1], keep[i]);
        }
        for (int i = 0; i < lost; i++) {
            int j = (i + 1) % lost;
            if (onRim[i] && onRim[j] && lost > 2) {
                span(gone[i], gone[j], h);
            }
        }
    }

    private int side(int v, double level) {
        double above = mesh.at(v, 2) - level;
        return above > hollows.same() ? 1 : above < -hollows.same() ? -1 : 0;
    }

    private void span(int a, int b, int h) {
        if (apexOf[h] < 0) {
            apexOf[h] = vertex();
        }
        apexes[3 * h] += xyz[3 * a];
        apexes[3 * h + 1] += xyz[3 * a + 1];
        shared[h]++;
        facet(a, b, apexOf[h]);
    }

    private int crossing(int v, int w, double level) {
        long edge = (long) Math.min(v, w) << 32 | Math.max(v, w);
        Integer known = crossings.get(edge);
        if (known != null) {
            return known;
        }
        int low = Math.min(v, w);
        int high = Math.max(v, w);
        double t = (level - mesh.at(low, 2)) / (mesh.at(high, 2) - mesh.at(low, 2));
        int at = vertex();
        for (int axis = 0; axis < 2; axis++) {
            xyz[3 * at + axis] = mesh.at(low, axis) + t * (mesh.at(high, axis) - mesh.at(low, axis));
        }
        xyz[3 * at + 2] = level;
        crossings.put(edge, at);
        return at;
    }

    private int vertex() {
        if (3 * vertices == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        return vertices++;
    }

    private void facet(int a, int b, int c) {
        if (used + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[used++] = a;
        corners[used++] = b;
        corners[used++] = c;
    }
}
