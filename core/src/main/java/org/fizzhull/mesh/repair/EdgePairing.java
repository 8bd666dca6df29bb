package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Pairs the edges of a facet list and joins facets that share an edge into bodies. A surface is closed where every edge
 * is run as often one way as the other; a facet whose neighbours disagree with it about the way round is found by
 * carrying a parity along the joins. Edges are told by one of their sides: three times the facet plus the corner.
 */
final class EdgePairing {
    private final FacetEdges edges;
    private final FacetJoin join;
    private final int[] open;
    private final int[] doubtful;
    private final int[] unbalanced;
    private final int[] shared;
    private int crowded;
    private int firstCrowded = -1;
    private int sameWay;

    private EdgePairing(int[] corners, int vertices) {
        edges = new FacetEdges(corners, vertices);
        join = new FacetJoin(corners.length / 3);
        IntStream.Builder alone = IntStream.builder();
        IntStream.Builder doubt = IntStream.builder();
        IntStream.Builder over = IntStream.builder();
        IntStream.Builder many = IntStream.builder();
        for (int e = 0; e < edges.count(); e++) {
            int from = edges.first(e);
            int to = edges.first(e + 1);
            if (to - from == 2) {
                pair(edges.side(from), edges.side(from + 1));
                continue;
            }
            int balance = 0;
            for (int i = from; i < to; i++) {
                doubt.add(edges.side(i));
                balance += edges.rises(edges.side(i)) ? 1 : -1;
            }
            for (int i = from, left = balance; i < to && left != 0; i++) {
                if (edges.rises(edges.side(i)) == balance > 0) {
                    over.add(edges.side(i));
                    left -= Integer.signum(balance);
                }
            }
            if (to - from == 1) {
                alone.add(edges.side(from));
            } else if (balance == 0) {
                many.add(e);
            } else {
                crowded++;
                firstCrowded = firstCrowded < 0 ? edges.side(from) : firstCrowded;
            }
        }
        open = alone.build().toArray();
        doubtful = doubt.build().toArray();
        unbalanced = over.build().toArray();
        shared = many.build().toArray();
        joinShared();
    }

    /** Pairs the edges of a facet list over {@code vertices} vertices. */
    static EdgePairing of(int[] corners, int vertices) {
        return new EdgePairing(corners, vertices);
    }

    private void pair(int first, int second) {
        int same = edges.rises(first) == edges.rises(second) ? 1 : 0;
        sameWay += same;
        join.join(first / 3, second / 3, same);
    }

    /**
     * Bodies that merely touch along an edge stay apart: an edge of four facets joins them only where a body by itself
     * would be open there.
     */
    private void joinShared() {
        for (int e : shared) {
            if (!balancedBodies(edges.first(e), edges.first(e + 1))) {
                int facet = edges.side(edges.first(e)) / 3;
                for (int i = edges.first(e) + 1; i < edges.first(e + 1); i++) {
                    join.join(facet, edges.side(i) / 3, 0);
                }
            }
        }
    }

    private boolean balancedBodies(int from, int to) {
        int[] roots = new int[to - from];
        for (int i = from; i < to; i++) {
            int h = edges.side(i);
            roots[i - from] = join.root(h / 3) << 1 | (edges.rises(h) ? 1 : 0);
        }
        Arrays.sort(roots);
        int balance = 0;
        for (int i = 0; i < roots.length; i++) {
            if (i > 0 && roots[i] >> 1 != roots[i - 1] >> 1 && balance != 0) {
                return false;
            }
            balance += (roots[i] & 1) == 0 ? -1 : 1;
        }
        return balance == 0;
    }

    /** Whether every edge is run as often one way as the other, once facets are turned as {@link #joined} says. */
    boolean closed() {
        return open.length == 0 && crowded == 0;
    }

    /** Edges of one facet only. */
    int open() {
        return open.length;
    }

    /** All of them. */
    int[] openEdges() {
        return open;
    }

    /** Edges of three or more facets that do not cancel. */
    int crowded() {
        return crowded;
    }

    /** The first of them; -1 where there is none. */
    int firstCrowded() {
        return firstCrowded;
    }

    /** Edges of four or more facets that do cancel. */
    int shared() {
        return shared.length;
    }

    /** Sides on edges that do not belong to exactly two facets. */
    int[] doubtful() {
        return doubtful;
    }

    /** Sides that no other side of their edge runs against: those of open edges and the surplus of crowded ones. */
    int[] unbalanced() {
        return unbalanced;
    }

    /** Pairs of neighbours that run their common edge the same way: the mesh's winding is mixed where it is not 0. */
    int sameWay() {
        return sameWay;
    }

    /** The joined facets. */
    FacetJoin joined() {
        return join;
    }
}
