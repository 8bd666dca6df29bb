package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Pairs edges as facets arrive, and joins the facets: an edge waits until a facet runs it the other way, then both are
 * forgotten. Files mostly list neighbours near each other, so that few edges wait at a time and all of it stays in the
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
    private int looks;
    private int done;

    /** The edges of the facet before that wait, as the facet beyond would run them. */
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
        looks = 0;
        int from = done;
        for (int f = from; f < toFacet; f++) {
            take(corners[3 * f], corners[3 * f + 1], corners[3 * f + 2], f);
        }
        done = toFacet;
        return waiting <= mostWaiting && looks <= 24L * (toFacet - from) + FEW;
    }

    /** Pairs the edges of a facet with those of the facet before; what is left of that one has to wait. */
    private void take(int a, int b, int c, int f) {
        long x = partnerA;
        long y = partnerB;
        long z = partnerC;
        partnerA = NONE;
        partnerB = NONE;
        partnerC = NONE;
        long own = edge(a, b);
        if (own == x) {
            x = NONE;
        } else if (own == y) {
            y = NONE;
        } else if (own == z) {
            z = NONE;
        } else {
            partnerA = edge(b, a);
        }
        own = edge(b, c);
        if (own == x) {
            x = NONE;
        } else if (own == y) {
            y = NONE;
        } else if (own == z) {
            z = NONE;
        } else {
            partnerB = edge(c, b);
        }
        own = edge(c, a);
        if (own == x) {
            x = NONE;
        } else if (own == y) {
            y = NONE;
        } else if (own == z) {
            z = NONE;
        } else {
            partnerC = edge(a, c);
        }
        if (partnerA == NONE || partnerB == NONE || partnerC == NONE) {
            join.join(f, f - 1, 0);
        }
        settle(x, y, z, f - 1);
    }

    private void settle(long x, long y, long z, int f) {
        if (x != NONE) {
            meet(x, f);
        }
        if (y != NONE) {
            meet(y, f);
        }
        if (z != NONE) {
            meet(z, f);
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
        settle(partnerA, partnerB, partnerC, done - 1);
        partnerA = NONE;
        partnerB = NONE;
        partnerC = NONE;
        return waiting == 0 && join.bodies() == join.facets() - done + 1;
    }
}
