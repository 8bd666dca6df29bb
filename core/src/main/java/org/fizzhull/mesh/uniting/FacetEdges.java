package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/**
 * Facets with their edges: each edge once, with the sides of facets that lie on it. A side is told by three times the
 * facet plus the corner it runs from.
 *
 * <p>Sides are gathered by their lower corner (one counting pass, one scattering pass) and sorted among these, so that the
 * work stays n log n for any file and memory is met in the order of the file, which lists neighbours near each other as a
 * rule.
 */
public final class FacetEdges {
    private final int[] corners;

    /** Sides of all edges, one edge after another. */
    private final int[] side;

    /** First side of each edge, and the end of the last. */
    private final int[] first;

    /**
     * @param corners three corners a facet; not copied
     * @param vertices number of corners there are
     */
    public FacetEdges(int[] corners, int vertices) {
        this.corners = corners;
        int[] start = new int[vertices + 1];
        for (int h = 0; h < corners.length; h++) {
            start[Math.min(corners[h], end(h)) + 1]++;
        }
        for (int v = 0; v < vertices; v++) {
            start[v + 1] += start[v];
        }
        // the upper corner, then the side
        long[] entries = new long[corners.length];
        for (int h = 0; h < corners.length; h++) {
            int b = end(h);
            entries[start[Math.min(corners[h], b)]++] = (long) Math.max(corners[h], b) << 32 | h;
        }
        side = new int[corners.length];
        int[] begins = new int[corners.length + 1];
        int edges = 0;
        int from = 0;
        for (int v = 0; v < vertices; v++) {
            sort(entries, from, start[v]);
            for (int i = from; i < start[v]; i++) {
                if (i == from || entries[i] >> 32 != entries[i - 1] >> 32) {
                    begins[edges++] = i;
                }
                side[i] = (int) entries[i];
            }
            from = start[v];
        }
        begins[edges] = corners.length;
        first = Arrays.copyOf(begins, edges + 1);
    }

    private static void sort(long[] entries, int from, int to) {
        if (to - from > 32) {
            Arrays.sort(entries, from, to);
            return;
        }
        for (int i = from + 1; i < to; i++) {
            long entry = entries[i];
            int j = i - 1;
            while (j >= from && entries[j] > entry) {
                entries[j + 1] = entries[j];
                j--;
            }
            entries[j + 1] = entry;
        }
    }

    /** {@return number of facets} */
    public int facets() {
        return corners.length / 3;
    }

    /** {@return number of edges} */
    public int count() {
        return first.length - 1;
    }

    /**
     * {@return first place of an edge in the list of sides; those of an edge end where those of the next begin}
     *
     * @param e number of the edge
     */
    public int first(int e) {
        return first[e];
    }

    /**
     * {@return the side at a place of the list}
     *
     * @param place place in the list of sides
     */
    public int side(int place) {
        return side[place];
    }

    /**
     * {@return the corner a side runs from}
     *
     * @param h number of the side
     */
    public int corner(int h) {
        return corners[h];
    }

    /**
     * {@return the corner a side runs to}
     *
     * @param h number of the side
     */
    public int end(int h) {
        return corners[next(h)];
    }

    /**
     * {@return the side after one, round its facet}
     *
     * @param h number of the side
     */
    public static int next(int h) {
        return h % 3 == 2 ? h - 2 : h + 1;
    }

    /**
     * {@return whether a side runs from the lower corner of its edge to the upper one}
     *
     * @param h number of the side
     */
    public boolean rises(int h) {
        return corners[h] < end(h);
    }

    /** Three corners a facet. */
    int[] facetCorners() {
        return corners;
    }

    /** Lower corner of an edge. */
    int low(int e) {
        int h = side[first[e]];
        return Math.min(corners[h], end(h));
    }

    /** Upper corner of an edge. */
    int high(int e) {
        int h = side[first[e]];
        return Math.max(corners[h], end(h));
    }

    /** Edge of each side. */
    int[] edges() {
        int[] edge = new int[corners.length];
        for (int e = 0; e < count(); e++) {
            for (int i = first[e]; i < first[e + 1]; i++) {
                edge[side[i]] = e;
            }
        }
        return edge;
    }
}
