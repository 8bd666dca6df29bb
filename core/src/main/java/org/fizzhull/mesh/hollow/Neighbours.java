package org.fizzhull.mesh.hollow;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.Buckets;

/**
 * The vertices of a closed mesh that share an edge, and their order by height: single precision of the height above the
 * lowest point, then the number of the vertex, so that no two are equal.
 */
final class Neighbours {
    private static final long INDEX = 0xFFFFFFFFL;

    private final TriangleMesh mesh;

    /** Corners of facets by vertex: in a closed mesh each edge runs once each way. */
    private final Buckets sides;

    /** Rises with the height; the low half is the number of the vertex. */
    final long[] key;

    Neighbours(TriangleMesh mesh) {
        this.mesh = mesh;
        int n = mesh.vertexCount();
        double low = mesh.box()[2];
        key = new long[n];
        for (int v = 0; v < n; v++) {
            key[v] = ((long) Float.floatToIntBits((float) (mesh.at(v, 2) - low)) << 32) | v;
        }
        sides = Buckets.of(n, 3 * mesh.facetCount(), h -> mesh.corner(h / 3, h % 3));
    }

    /** The vertex of a key. */
    static int vertex(long key) {
        return (int) (key & INDEX);
    }

    /** The neighbours of a vertex. */
    int[] of(int v) {
        int[] others = new int[sides.end(v) - sides.first(v)];
        for (int i = 0; i < others.length; i++) {
            int h = sides.at(sides.first(v) + i);
            others[i] = mesh.corner(h / 3, (h + 1) % 3);
        }
        return others;
    }

    /** Those of them that lie lower: none at a local minimum. */
    int[] lower(int v) {
        int[] others = of(v);
        int count = 0;
        for (int other : others) {
            if (lower(other, v)) {
                others[count++] = other;
            }
        }
        return Arrays.copyOf(others, count);
    }

    /** Whether a lies lower than b. */
    boolean lower(int a, int b) {
        return key[a] < key[b];
    }
}
