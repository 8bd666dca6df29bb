package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.fizzhull.mesh.measure.Buckets;

/**
 * Facets with their edges: each edge once, with the sides of facets that lie on it. A side (half-edge) has the number
 * 3 f + k: facet f, from its corner k to the next. The lower corner of an edge is that with the smaller number,
 * whatever its height.
 *
 * <p>Edges are sorted by their lower corner, then by the upper one, by two counting passes: O(facets + vertices).
 */
public final class FacetEdges {
    private final int[] corners;

    /** Sides of all edges, one edge after another. */
    private final int[] side;

    /** Index in {@link #side} of the first side of each edge, and the number of all sides at the end. */
    private final int[] first;

    /**
     * @param corners three corners a facet; not copied
     * @param vertices number of corners there are
     */
    public FacetEdges(int[] corners, int vertices) {
        this.corners = corners;
        // radix sort: the second pass is stable and keeps the order of the first
        Buckets byUpper = Buckets.of(vertices, corners.length, h -> Math.max(corners[h], corners[next(h)]));
        Buckets byLower = Buckets.of(vertices, corners.length, i -> {
            int h = byUpper.at(i);
            return Math.min(corners[h], corners[next(h)]);
        });
        side = new int[corners.length];
        int[] begins = new int[corners.length + 1];
        int edges = 0;
        for (int i = 0; i < side.length; i++) {
            side[i] = byUpper.at(byLower.at(i));
            if (i == 0 || !together(corners, side[i], side[i - 1])) {
                begins[edges++] = i;
            }
        }
        begins[edges] = corners.length;
        first = Arrays.copyOf(begins, edges + 1);
    }

    /** Whether two sides lie on one edge. */
    private static boolean together(int[] corners, int h, int g) {
        int from = corners[h];
        int to = corners[next(h)];
        int begin = corners[g];
        int end = corners[next(g)];
        return (from == begin && to == end) || (from == end && to == begin);
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
     * {@return index of the first side of an edge in the list of sides; the last is just before the first of the next
     * edge}
     *
     * @param e number of the edge
     */
    public int first(int e) {
        return first[e];
    }

    /**
     * {@return the side at an index of the list of sides}
     *
     * @param place index, from 0
     */
    public int side(int place) {
        return side[place];
    }

    /**
     * {@return the sides on an edge}
     *
     * @param e number of the edge
     */
    public IntStream sides(int e) {
        return IntStream.range(first[e], first[e + 1]).map(i -> side[i]);
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
     * {@return the next side of the same facet}
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
