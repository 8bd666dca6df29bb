package org.fizzhull.mesh.repair;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Pairs the edges of a facet list and joins facets that share an edge into bodies. A surface is closed where its
 * facets run along every edge as often in one direction as in the other. Facets wound against their neighbours are
 * found by the parity that {@link FacetComponents} carries along the joins.
 *
 * <p>A side (half-edge) has the number 3 f + k: facet f, from its corner k to the next. An edge is given by one of
 * its sides.
 */
final class EdgePairing {
    /** Three vertices a facet. */
    final int[] corners;

    /** The joined facets. */
    final FacetComponents joined;

    /** Edges that belong to one facet only. */
    final int[] open;

    /** Edges of three or more facets along which one direction prevails. */
    final int[] crowded;

    /** Number of edges of four or more facets, half of which run in each direction. */
    final int shared;

    /** Sides on edges that do not belong to exactly two facets. */
    final int[] doubtful;

    /**
     * Sides without an opposite side: those of open edges, and the surplus in the prevailing direction of crowded
     * ones.
     */
    final int[] unbalanced;

    /**
     * Whether two neighbours run along their common edge in the same direction, so that one of them is inside out.
     */
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
            // sides that run from the lower-numbered corner of the edge to the other, less those that run back
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

    /** Whether the surface is closed, once facets are turned as {@link #joined} says. */
    boolean closed() {
        return open.length == 0 && crowded.length == 0;
    }

    /** Whether it is closed, with two facets at every edge. */
    boolean plain() {
        return closed() && shared == 0;
    }
}
