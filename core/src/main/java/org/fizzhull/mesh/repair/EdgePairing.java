package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Pairs the edges of a facet list and joins facets that share an edge into bodies. A surface is closed where every edge
 * is run as often one way as the other; a facet whose neighbours disagree with it about the way round is found by
 * carrying a parity along the joins. Edges are told by one of their sides: three times the facet plus the corner.
 */
final class EdgePairing {
    /** Three vertices a facet. */
    final int[] corners;

    /** The joined facets. */
    final FacetJoin joined;

    /** Edges of one facet only. */
    final int[] open;

    /** Edges of three or more facets that do not cancel. */
    final int[] crowded;

    /** Number of edges of four or more facets that do cancel. */
    final int shared;

    /** Sides on edges that do not belong to exactly two facets. */
    final int[] doubtful;

    /** Sides that no other side of their edge runs against: those of open edges and the surplus of crowded ones. */
    final int[] unbalanced;

    /** Whether some neighbours run their common edge the same way: then the winding is mixed. */
    final boolean mixed;

    private EdgePairing(int[] corners, int vertices) {
        this.corners = corners;
        FacetEdges edges = new FacetEdges(corners, vertices);
        joined = new FacetJoin(corners.length / 3);
        boolean sameWay = false;
        IntStream.Builder others = IntStream.builder();
        for (int e = 0; e < edges.count(); e++) {
            int from = edges.first(e);
            if (edges.first(e + 1) - from == 2) {
                int one = edges.side(from);
                int other = edges.side(from + 1);
                boolean same = edges.rises(one) == edges.rises(other);
                sameWay |= same;
                joined.join(one / 3, other / 3, same);
            } else {
                others.add(e);
            }
        }
        mixed = sameWay;
        int[] odd = others.build().toArray();
        int[] several = Arrays.stream(odd).filter(e -> balance(edges, e) == 0).toArray();
        shared = several.length;
        doubtful = Arrays.stream(odd).flatMap(edges::sides).toArray();
        unbalanced = Arrays.stream(odd).flatMap(e -> surplus(edges, e)).toArray();
        open = firstSides(edges, odd, e -> edges.sides(e).count() == 1);
        crowded = firstSides(edges, odd, e -> edges.sides(e).count() > 1 && balance(edges, e) != 0);
        for (int e : several) {
            joinShared(joined, edges, e);
        }
    }

    private static int[] firstSides(FacetEdges edges, int[] some, IntPredicate which) {
        return Arrays.stream(some)
                .filter(which)
                .map(e -> edges.side(edges.first(e)))
                .toArray();
    }

    /** How many more sides of an edge run from its lower corner to the upper one than back. */
    private static int balance(FacetEdges edges, int e) {
        return edges.sides(e).map(h -> edges.rises(h) ? 1 : -1).sum();
    }

    /** The sides of an edge that are too many in their direction. */
    private static IntStream surplus(FacetEdges edges, int e) {
        int balance = balance(edges, e);
        return edges.sides(e).filter(h -> edges.rises(h) == balance > 0).limit(Math.abs(balance));
    }

    /** Pairs the edges of a facet list over {@code vertices} vertices. */
    static EdgePairing of(int[] corners, int vertices) {
        return new EdgePairing(corners, vertices);
    }

    /**
     * Bodies that merely touch along an edge stay apart: an edge of four facets joins them only where a body by itself
     * would be open there.
     */
    private static void joinShared(FacetJoin joined, FacetEdges edges, int e) {
        Map<Integer, Integer> balance = new HashMap<>();
        edges.sides(e).forEach(h -> balance.merge(joined.root(h / 3), edges.rises(h) ? 1 : -1, Integer::sum));
        if (balance.values().stream().anyMatch(sum -> sum != 0)) {
            int first = edges.side(edges.first(e)) / 3;
            edges.sides(e).skip(1).forEach(h -> joined.join(first, h / 3, false));
        }
    }

    /** Whether every edge is run as often one way as the other, once facets are turned as {@link #joined} says. */
    boolean closed() {
        return open.length == 0 && crowded.length == 0;
    }

    /** Whether it is closed, with two facets at every edge. */
    boolean plain() {
        return closed() && shared == 0;
    }
}
