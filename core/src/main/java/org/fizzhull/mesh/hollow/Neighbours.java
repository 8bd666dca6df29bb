package org.fizzhull.mesh.hollow;

import org.fizzhull.mesh.TriangleMesh;

/**
 * The vertices of a closed mesh that share an edge, and their order by height: single precision of the height above the
 * lowest point, then the number of the vertex, so that no two are equal.
 */
final class Neighbours {
    private static final long INDEX = 0xFFFFFFFFL;

    private final int[] from;
    private final int[] to;

    /** Rises with the height; the low half is the number of the vertex. */
    final long[] key;

    Neighbours(TriangleMesh mesh) {
        int n = mesh.vertexCount();
        double low = mesh.box()[2];
        key = new long[n];
        for (int v = 0; v < n; v++) {
            key[v] = ((long) Float.floatToIntBits((float) (mesh.at(v, 2) - low)) << 32) | v;
        }
        // in a closed mesh each edge runs once each way
        from = new int[n + 1];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                from[mesh.corner(f, k) + 1]++;
            }
        }
        for (int v = 0; v < n; v++) {
            from[v + 1] += from[v];
        }
        to = new int[3 * mesh.facetCount()];
        int[] used = from.clone();
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                to[used[mesh.corner(f, k)]++] = mesh.corner(f, (k + 1) % 3);
            }
        }
    }

    /** The vertex of a key. */
    static int vertex(long key) {
        return (int) (key & INDEX);
    }

    /** Number of neighbours of a vertex. */
    int count(int v) {
        return from[v + 1] - from[v];
    }

    /** One of them. */
    int at(int v, int i) {
        return to[from[v] + i];
    }

    boolean lower(int a, int b) {
        return key[a] < key[b];
    }

    /** Whether no neighbour lies lower. */
    boolean lowest(int v) {
        for (int i = from[v]; i < from[v + 1]; i++) {
            if (key[to[i]] < key[v]) {
                return false;
            }
        }
        return true;
    }
}
