package org.fizzhull.mesh.repair;

import java.util.Arrays;
import org.fizzhull.mesh.uniting.FacetEdges;

/** Corners on open edges that lie within a tolerance of one another, joined. Corners elsewhere stay as they are. */
final class NearCorners {
    /** Corners looked at; with more, the mesh is no body with cracks but a heap of facets. */
    private static final int MOST = 20_000;

    private final int[] corners;
    private final int joined;
    private final int first;

    private NearCorners(int[] corners, int joined, int first) {
        this.corners = corners;
        this.joined = joined;
        this.first = first;
    }

    /** Joins corners of the given edges (three times the facet plus the corner) within {@code tolerance} metres. */
    static NearCorners of(double[] xyz, int[] corners, int[] edges, double tolerance) {
        int[] candidates = ends(corners, edges);
        if (candidates.length > MOST) {
            return new NearCorners(corners, 0, -1);
        }
        double[] x = new double[candidates.length];
        sortByX(xyz, candidates, x);
        int[] renamed = new int[xyz.length / 3];
        Arrays.setAll(renamed, v -> v);
        int joined = 0;
        int first = -1;
        for (int i = 0; i < candidates.length; i++) {
            int v = candidates[i];
            for (int j = i + 1; j < candidates.length && x[j] - x[i] <= tolerance && renamed[v] == v; j++) {
                int w = candidates[j];
                if (renamed[w] == w && MeshMending.distance(xyz, v, w) <= tolerance) {
                    renamed[w] = v;
                    joined++;
                    first = first < 0 ? v : first;
                }
            }
        }
        return new NearCorners(joined == 0 ? corners : rename(corners, renamed), joined, first);
    }

    /** The vertices at both ends of some edges, each once. */
    static int[] ends(int[] corners, int[] edges) {
        int[] ends = new int[2 * edges.length];
        for (int i = 0; i < edges.length; i++) {
            ends[2 * i] = corners[edges[i]];
            ends[2 * i + 1] = corners[FacetEdges.next(edges[i])];
        }
        Arrays.sort(ends);
        int kept = 0;
        for (int i = 0; i < ends.length; i++) {
            if (i == 0 || ends[i] != ends[i - 1]) {
                ends[kept++] = ends[i];
            }
        }
        return Arrays.copyOf(ends, kept);
    }

    /** Sorts some vertices by x, m, which is put beside them. */
    static void sortByX(double[] xyz, int[] candidates, double[] x) {
        Integer[] byX = new Integer[candidates.length];
        Arrays.setAll(byX, i -> i);
        Arrays.sort(byX, (i, j) -> Double.compare(xyz[3 * candidates[i]], xyz[3 * candidates[j]]));
        int[] before = candidates.clone();
        for (int i = 0; i < before.length; i++) {
            candidates[i] = before[byX[i]];
            x[i] = xyz[3 * candidates[i]];
        }
    }

    private static int[] rename(int[] corners, int[] renamed) {
        int[] left = new int[corners.length];
        int used = 0;
        for (int h = 0; h < corners.length; h += 3) {
            int a = renamed[corners[h]];
            int b = renamed[corners[h + 1]];
            int c = renamed[corners[h + 2]];
            if (a != b && b != c && c != a) {
                left[used++] = a;
                left[used++] = b;
                left[used++] = c;
            }
        }
        return Arrays.copyOf(left, used);
    }

    /** The facets after joining, those that collapsed left out. */
    int[] corners() {
        return corners;
    }

    /** Number of corners that were joined to another. */
    int joined() {
        return joined;
    }

    /** The first corner another was joined to; -1 where there is none. */
    int first() {
        return first;
    }
}
