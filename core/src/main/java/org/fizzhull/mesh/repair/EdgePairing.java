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

    private final FacetEdges edges;

    private EdgePairing(int[] corners, int vertices) {
        this.corners = corners;
        edges = new FacetEdges(corners, vertices);
        joined = new FacetJoin(corners.length / 3);
        boolean sameWay = false;
        IntStream.Builder alone = IntStream.builder();
        IntStream.Builder doubt = IntStream.builder();
        IntStream.Builder over = IntStream.builder();
        IntStream.Builder many = IntStream.builder();
        IntStream.Builder excess = IntStream.builder();
        for (int e = 0; e < edges.count(); e++) {
            int from = edges.first(e);
            int to = edges.first(e + 1);
            int side = edges.side(from);
            if (to - from == 2) {
                boolean same = edges.rises(side) == edges.rises(edges.side(from + 1));
                sameWay |= same;
                joined.join(side / 3, edges.side(from + 1) / 3, same);
                continue;
            }
            int balance = 0;
            for (int i = from; i < to; i++) {
                doubt.add(edges.side(i));
                balance += edges.rises(edges.side(i)) ? 1 : -1;
            }
            int surplus = Math.abs(balance);
            for (int i = from; i < to && surplus > 0; i++) {
                if (edges.rises(edges.side(i)) == balance > 0) {
                    over.add(edges.side(i));
                    surplus--;
                }
            }
            if (to - from == 1) {
                alone.add(side);
            } else if (balance == 0) {
                many.add(e);
            } else {
                excess.add(side);
            }
        }
        open = alone.build().toArray();
        doubtful = doubt.build().toArray();
        unbalanced = over.build().toArray();
        crowded = excess.build().toArray();
        mixed = sameWay;
        int[] several = many.build().toArray();
        shared = several.length;
        for (int e : several) {
            joinShared(edges.first(e), edges.first(e + 1));
        }
    }

    /** Pairs the edges of a facet list over {@code vertices} vertices. */
    static EdgePairing of(int[] corners, int vertices) {
        return new EdgePairing(corners, vertices);
    }

    /**
     * Bodies that merely touch along an edge stay apart: an edge of four facets joins them only where a body by itself
     * would be open there.
     */
    private void joinShared(int from, int to) {
        Map<Integer, Integer> balance = new HashMap<>();
        for (int i = from; i < to; i++) {
            int h = edges.side(i);
            balance.merge(joined.root(h / 3), edges.rises(h) ? 1 : -1, Integer::sum);
        }
        if (balance.values().stream().anyMatch(sum -> sum != 0)) {
            for (int i = from + 1; i < to; i++) {
                joined.join(edges.side(from) / 3, edges.side(i) / 3, false);
            }
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
