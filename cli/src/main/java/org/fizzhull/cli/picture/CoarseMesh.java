package org.fizzhull.cli.picture;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.fizzhull.mesh.TriangleMesh;

/**
 * A mesh with few enough facets to be drawn: the vertices in one cell of a lattice become one, at their mean, and facets
 * that lose a side are left out. For looking at only: thin walls may close.
 */
final class CoarseMesh {
    private static final int MOST_FACETS = 5000;
    private static final int FINEST = 64;
    private static final int COARSEST = 8;

    private CoarseMesh() {}

    static TriangleMesh of(TriangleMesh mesh) {
        TriangleMesh coarse = mesh;
        for (int cells = FINEST; coarse.facetCount() > MOST_FACETS && cells >= COARSEST; cells = cells * 4 / 5) {
            coarse = clustered(mesh, cells);
        }
        return coarse;
    }

    private static TriangleMesh clustered(TriangleMesh mesh, int cells) {
        double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        double size = 0;
        for (int k = 0; k < 3; k++) {
            double high = -Double.MAX_VALUE;
            for (int v = 0; v < mesh.vertexCount(); v++) {
                low[k] = Math.min(low[k], mesh.at(v, k));
                high = Math.max(high, mesh.at(v, k));
            }
            size = Math.max(size, high - low[k]);
        }
        double step = size / cells;
        Map<Long, Integer> index = new HashMap<>();
        int[] cluster = new int[mesh.vertexCount()];
        for (int v = 0; v < cluster.length; v++) {
            long key = 0;
            for (int k = 0; k < 3; k++) {
                key = key << 20 | (long) ((mesh.at(v, k) - low[k]) / step);
            }
            Integer known = index.putIfAbsent(key, index.size());
            cluster[v] = known == null ? index.size() - 1 : known;
        }
        double[] xyz = new double[3 * index.size()];
        int[] members = new int[index.size()];
        for (int v = 0; v < cluster.length; v++) {
            members[cluster[v]]++;
            for (int k = 0; k < 3; k++) {
                xyz[3 * cluster[v] + k] += mesh.at(v, k);
            }
        }
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] /= members[i / 3];
        }
        int[] corners = new int[3 * mesh.facetCount()];
        int n = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            int a = cluster[mesh.corner(f, 0)];
            int b = cluster[mesh.corner(f, 1)];
            int c = cluster[mesh.corner(f, 2)];
            if (a != b && b != c && c != a) {
                corners[n++] = a;
                corners[n++] = b;
                corners[n++] = c;
            }
        }
        return n == 0 ? mesh : new TriangleMesh(xyz, Arrays.copyOf(corners, n));
    }
}
