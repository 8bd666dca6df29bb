package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/** Facets with their edges: each edge once, with the facets on it. */
final class Surface {
    /** Three corners a facet. */
    final int[] corners;

    /** Lower and upper corner of each edge. */
    final int[] low;

    final int[] high;

    /** Edge from each corner of a facet to the next one: at three times the facet plus the corner. */
    final int[] edge;

    /** Sides of facets on each edge, one edge after another, as three times the facet plus the corner. */
    private final int[] side;

    private final int[] first;

    Surface(int[] corners) {
        this.corners = corners;
        int sides = corners.length;
        long[] keys = new long[sides];
        for (int h = 0; h < sides; h++) {
            keys[h] = key(h);
        }
        long[] sorted = keys.clone();
        Arrays.sort(sorted);
        int edges = 0;
        for (int i = 0; i < sides; i++) {
            if (i == 0 || sorted[i] != sorted[i - 1]) {
                sorted[edges++] = sorted[i];
            }
        }
        low = new int[edges];
        high = new int[edges];
        for (int e = 0; e < edges; e++) {
            low[e] = (int) (sorted[e] >> 32);
            high[e] = (int) sorted[e];
        }
        edge = new int[sides];
        first = new int[edges + 1];
        for (int h = 0; h < sides; h++) {
            edge[h] = Arrays.binarySearch(sorted, 0, edges, keys[h]);
            first[edge[h] + 1]++;
        }
        for (int e = 0; e < edges; e++) {
            first[e + 1] += first[e];
        }
        side = new int[sides];
        int[] next = first.clone();
        for (int h = 0; h < sides; h++) {
            side[next[edge[h]]++] = h;
        }
    }

    private long key(int h) {
        int a = corners[h];
        int b = end(h);
        return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }

    int facets() {
        return corners.length / 3;
    }

    int edges() {
        return low.length;
    }

    /** The corner at the end of a side. */
    int end(int h) {
        return corners[h % 3 == 2 ? h - 2 : h + 1];
    }

    /** Whether a side runs from the lower corner of its edge to the upper one. */
    boolean rises(int h) {
        return corners[h] < end(h);
    }

    /** First place in the list of sides of an edge; the list ends where that of the next edge begins. */
    int firstSide(int e) {
        return first[e];
    }

    /** A side at a place of the list. */
    int side(int at) {
        return side[at];
    }
}
