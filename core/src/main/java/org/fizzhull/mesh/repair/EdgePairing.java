package org.fizzhull.mesh.repair;

import java.util.HashMap;
import java.util.Map;
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
    final FacetComponents joined;

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

    /** Pairs the edges of a facet list over {@code vertices} vertices. */
    EdgePairing(int[] corners, int vertices) {
        this.corners = corners;
        FacetEdges edges = new FacetEdges(corners, vertices);
        joined = new FacetComponents(corners.length / 3);
        boolean sameWay = false;
        IntStream.Builder single = IntStream.builder();
        IntStream.Builder unequal = IntStream.builder();
        IntStream.Builder several = IntStream.builder();
        IntStream.Builder unpaired = IntStream.builder();
        IntStream.Builder surplus = IntStream.builder();
        for (int e = 0; e < edges.count(); e++) {
            int from = edges.first(e);
            int sides = edges.first(e + 1) - from;
            if (sides == 2) {
                int one = edges.side(from);
                int other = edges.side(from + 1);
                boolean same = edges.rises(one) == edges.rises(other);
                sameWay |= same;
                joined.join(one / 3, other / 3, same);
                continue;
            }
            // how many more sides run from the lower corner of the edge to the upper one than back
            int balance = edges.sides(e).map(h -> edges.rises(h) ? 1 : -1).sum();
            edges.sides(e).forEach(unpaired);
            edges.sides(e)
                    .filter(h -> edges.rises(h) == balance > 0)
                    .limit(Math.abs(balance))
                    .forEach(surplus);
            if (balance == 0) {
                several.add(e);
            } else {
                (sides == 1 ? single : unequal).add(edges.side(from));
            }
        }
        mixed = sameWay;
        open = single.build().toArray();
        crowded = unequal.build().toArray();
        doubtful = unpaired.build().toArray();
        unbalanced = surplus.build().toArray();
        int[] balanced = several.build().toArray();
        shared = balanced.length;
        for (int e : balanced) {
            joinShared(joined, edges, e);
        }
    }

    /**
     * Bodies that merely touch along an edge stay apart: an edge of four facets joins them only where a body by itself
     * would be open there.
     */
    private static void joinShared(FacetComponents joined, FacetEdges edges, int e) {
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
