package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Corners on open edges that lie within a tolerance of one another, joined. Corners elsewhere stay as they are.
 *
 * @param corners the facets after joining, those that collapsed left out
 * @param joined number of corners that were joined to another
 * @param first the first corner another was joined to; -1 where there is none
 */
record NearCorners(int[] corners, int joined, int first) {
    /** Most corners that are looked at: a mesh with more is not a body with a few cracks, and is left as it is. */
    private static final int MOST = 20_000;

    /** Joins corners of the given sides (three times the facet plus the corner) within {@code tolerance} metres. */
    static NearCorners of(double[] xyz, int[] corners, int[] sides, double tolerance) {
        int[] candidates = Vertices.byX(xyz, corners, sides);
        int[] renamed = IntStream.range(0, xyz.length / 3).toArray();
        int joined = 0;
        int first = -1;
        for (int i = 0; i < candidates.length && candidates.length <= MOST; i++) {
            int v = candidates[i];
            for (int j = i + 1; j < candidates.length && renamed[v] == v; j++) {
                int w = candidates[j];
                if (xyz[3 * w] - xyz[3 * v] > tolerance) {
                    break;
                }
                if (renamed[w] == w && Vertices.distance(xyz, v, w) <= tolerance) {
                    renamed[w] = v;
                    joined++;
                    first = first < 0 ? v : first;
                }
            }
        }
        return new NearCorners(joined == 0 ? corners : renamed(corners, renamed), joined, first);
    }

    private static int[] renamed(int[] corners, int[] renamed) {
        int[] all = Arrays.stream(corners).map(v -> renamed[v]).toArray();
        return MeshMending.without(
                all,
                f -> all[3 * f] == all[3 * f + 1] || all[3 * f + 1] == all[3 * f + 2] || all[3 * f + 2] == all[3 * f]);
    }
}
