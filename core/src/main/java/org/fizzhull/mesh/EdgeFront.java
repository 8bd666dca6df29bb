package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Pairs edges as facets arrive, and joins the facets: an edge waits until a facet runs it the other way, then both are
 * forgotten. Most facets meet the facet before, which needs no list; the others' edges wait at their lower vertex. Files mostly list neighbours near each other, so that few edges wait at a time and all of it stays in the
 * processor's cache; where too many wait, or something does not pair, {@link EdgePairing} takes over.
 */
final class EdgeFront {
    private static final int FEW = 4096;
    private static final long NONE = -1;

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
    private long looks;
    private int done;

    /** The edges of the facet before that were not met, as the facet beyond would run them. */
    private long partnerA = NONE;

    private long partnerB = NONE;
    private long partnerC = NONE;

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
        for (int f = done; f < toFacet; f++) {
            take(corners[3 * f], corners[3 * f + 1], corners[3 * f + 2], f);
        }
        done = toFacet;
        return waiting <= mostWaiting && looks <= 24L * done + FEW;
    }

    /** Pairs the edges of a facet with those of the facet before; what is left of that one has to wait. */
    private void take(int a, int b, int c, int f) {
        int ab = met(edge(a, b), partnerA, partnerB, partnerC);
        int bc = met(edge(b, c), partnerA, partnerB, partnerC);
        int ca = met(edge(c, a), partnerA, partnerB, partnerC);
        int met = ab | bc | ca;
        if (met != 0) {
            join.join(f, f - 1, 0);
        }
        settle(met, f - 1);
        partnerA = ab == 0 ? edge(b, a) : NONE;
        partnerB = bc == 0 ? edge(c, b) : NONE;
        partnerC = ca == 0 ? edge(a, c) : NONE;
    }

    /** Which of three edges this one is, as a bit; 0 for none. */
    private static int met(long own, long a, long b, long c) {
        return own == a ? 1 : own == b ? 2 : own == c ? 4 : 0;
    }

    /** Sends what was not met of the facet before to those that wait. */
    private void settle(int met, int f) {
        if ((met & 1) == 0 && partnerA != NONE) {
            meet(partnerA, f);
        }
        if ((met & 2) == 0 && partnerB != NONE) {
            meet(partnerB, f);
        }
        if ((met & 4) == 0 && partnerC != NONE) {
            meet(partnerC, f);
        }
    }

    private static long edge(int from, int to) {
        return (long) from << 32 | to;
    }

    /** Looks for the partner of an edge, or lets the edge wait. */
    private void meet(long partner, int f) {
        int from = (int) (partner >>> 32);
        int to = (int) partner;
        if (from < to) {
            meet(from, to << 1, f);
        } else {
            meet(to, from << 1 | 1, f);
        }
    }

    private void meet(int low, int wanted, int f) {
        int before = 0;
        int at = head[low];
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
        add(low, wanted ^ 1, f);
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
        settle(0, done - 1);
        partnerA = NONE;
        partnerB = NONE;
        partnerC = NONE;
        return waiting == 0 && join.bodies() == join.facets() - done + 1;
    }
}
