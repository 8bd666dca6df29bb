package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Pairs edges as facets arrive, and joins the facets: an edge waits until a facet runs it the other way, then both are
 * forgotten. Files mostly list neighbours near each other, so that few edges wait at a time and all of it stays in the
 * processor's cache; where too many wait, or something does not pair, {@link EdgePairing} takes over.
 */
final class EdgeFront {
    private static final int FEW = 4096;

    private final FacetJoin join;
    private final int mostWaiting;

    /** First waiting edge of each lower vertex; 0 for none. */
    private int[] head;

    /** Waiting edge: upper vertex and direction, facet, and the next one that waits at the same lower vertex. */
    private int[] key = new int[FEW];

    private int[] facet = new int[FEW];
    private int[] next = new int[FEW];
    private int used = 1;
    private int free;
    private int waiting;
    private int looks;
    private int done;

    /** @param facets facets that will come */
    EdgeFront(int facets) {
        join = new FacetJoin(facets);
        mostWaiting = facets / 8 + FEW;
        head = new int[facets / 2 + 16];
    }

    /** Takes the facets up to one index; false where it is better left to {@link EdgePairing}. */
    boolean advance(int[] corners, int vertices, int toFacet) {
        if (vertices > head.length) {
            head = Arrays.copyOf(head, Math.max(vertices, head.length + head.length / 2));
        }
        looks = 0;
        for (int f = done; f < toFacet; f++) {
            int a = corners[3 * f];
            int b = corners[3 * f + 1];
            int c = corners[3 * f + 2];
            edge(a, b, f);
            edge(b, c, f);
            edge(c, a, f);
        }
        boolean easy = waiting <= mostWaiting && looks <= 24L * (toFacet - done) + FEW;
        done = toFacet;
        return easy;
    }

    private void edge(int from, int to, int f) {
        if (from < to) {
            meet(from, to << 1, f);
        } else {
            meet(to, from << 1 | 1, f);
        }
    }

    /** Looks for the same edge run the other way, or lets this one wait. */
    private void meet(int low, int own, int f) {
        int before = 0;
        int at = head[low];
        int wanted = own ^ 1;
        while (at != 0) {
            if (key[at] == wanted) {
                remove(low, before, at);
                join.join(f, facet[at], 0);
                return;
            }
            looks++;
            before = at;
            at = next[at];
        }
        add(low, own, f);
    }

    private void remove(int low, int before, int at) {
        if (before == 0) {
            head[low] = next[at];
        } else {
            next[before] = next[at];
        }
        next[at] = free;
        free = at;
        waiting--;
    }

    private void add(int low, int own, int f) {
        int at = free;
        if (at != 0) {
            free = next[at];
        } else {
            at = used++;
            if (at == key.length) {
                key = Arrays.copyOf(key, 2 * at);
                facet = Arrays.copyOf(facet, 2 * at);
                next = Arrays.copyOf(next, 2 * at);
            }
        }
        key[at] = own;
        facet[at] = f;
        next[at] = head[low];
        head[low] = at;
        waiting++;
    }

    /** Whether every edge was met the other way round, by facets that all hang together. */
    boolean closedAndOne() {
        return waiting == 0 && join.bodies() == join.facets() - done + 1;
    }
}
