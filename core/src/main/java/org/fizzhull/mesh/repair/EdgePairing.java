package org.fizzhull.mesh.repair;

import java.util.Arrays;

/**
 * Pairs the edges of a facet list and joins facets that share an edge into bodies. A surface is closed where every edge
 * is run as often one way as the other; a facet whose neighbours disagree with it about the way round is found by
 * carrying a parity along the joins.
 *
 * <p>Edges are gathered in buckets by their lower vertex index (one counting pass, one scattering pass) and sorted
 * inside the bucket, so that the work stays n log n for any file and the memory accesses stay near each other for files
 * that list neighbours near each other, as most do.
 */
final class EdgePairing {
    private final int[] corners;
    private final FacetJoin join;
    private long[] entries;
    private int[] start;
    private int open;
    private int firstOpen = -1;
    private int crowded;
    private int firstCrowded = -1;
    private int shared;
    private int firstShared = -1;
    private int sameWay;
    private int[] doubtful = new int[16];
    private int doubtfulUsed;
    private int[] openEdges = new int[16];
    private int[] sharedGroups = new int[16];
    private int sharedUsed;

    private EdgePairing(int[] corners, int vertices) {
        this.corners = corners;
        this.entries = new long[corners.length];
        this.start = new int[vertices + 1];
        this.join = new FacetJoin(corners.length / 3);
    }

    /** Pairs the edges of a facet list over {@code vertices} vertices. */
    static EdgePairing of(int[] corners, int vertices) {
        EdgePairing pairing = new EdgePairing(corners, vertices);
        pairing.scatter(vertices);
        pairing.pairAll(vertices);
        pairing.entries = new long[0];
        pairing.start = new int[0];
        pairing.joinShared();
        return pairing;
    }

    /** End of edge h: the corner after it, round the facet. */
    static int next(int h) {
        return h % 3 == 2 ? h - 2 : h + 1;
    }

    private void scatter(int vertices) {
        count(corners, start);
        int sum = 0;
        for (int v = 0; v <= vertices; v++) {
            int n = start[v];
            start[v] = sum;
            sum += n;
        }
        for (int f = 0; f < corners.length; f += 3) {
            int a = corners[f];
            int b = corners[f + 1];
            int c = corners[f + 2];
            put(a, b, f);
            put(b, c, f + 1);
            put(c, a, f + 2);
        }
    }

    private static void count(int[] corners, int[] counts) {
        for (int f = 0; f < corners.length; f += 3) {
            int a = corners[f];
            int b = corners[f + 1];
            int c = corners[f + 2];
            counts[Math.min(a, b)]++;
            counts[Math.min(b, c)]++;
            counts[Math.min(c, a)]++;
        }
    }

    /** Files edge h from a to b under its lower vertex: upper vertex, edge, and whether it runs upward. */
    private void put(int a, int b, int h) {
        if (a < b) {
            entries[start[a]++] = (long) b << 32 | (long) h << 1 | 1;
        } else {
            entries[start[b]++] = (long) a << 32 | (long) h << 1;
        }
    }

    private void pairAll(int vertices) {
        int from = 0;
        for (int v = 0; v < vertices; v++) {
            int to = start[v];
            sort(entries, from, to);
            pairBucket(from, to);
            from = to;
        }
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

    private void pairBucket(int from, int to) {
        int i = from;
        while (i < to) {
            long first = entries[i];
            int end = i + 1;
            while (end < to && entries[end] >>> 32 == first >>> 32) {
                end++;
            }
            if (end == i + 2) {
                pair((int) first, (int) entries[i + 1]);
            } else {
                odd(i, end);
            }
            i = end;
        }
    }

    private void pair(int first, int second) {
        int same = ~(first ^ second) & 1;
        sameWay += same;
        join.join((first >>> 1) / 3, (second >>> 1) / 3, same);
    }

    /** Takes an edge that one facet has, or more than two have. */
    private void odd(int from, int to) {
        int balance = 0;
        for (int i = from; i < to; i++) {
            balance += (entries[i] & 1) == 0 ? -1 : 1;
        }
        int h = (int) entries[from] >>> 1;
        doubt(from, to);
        if (to - from == 1) {
            if (open == openEdges.length) {
                openEdges = Arrays.copyOf(openEdges, 2 * open);
            }
            openEdges[open++] = h;
            firstOpen = firstOpen < 0 ? h : firstOpen;
        } else if (balance != 0) {
            crowded++;
            firstCrowded = firstCrowded < 0 ? h : firstCrowded;
        } else {
            shared++;
            firstShared = firstShared < 0 ? h : firstShared;
            keep(from, to);
        }
    }

    private void doubt(int from, int to) {
        if (doubtfulUsed + to - from > doubtful.length) {
            doubtful = Arrays.copyOf(doubtful, 2 * (doubtfulUsed + to - from));
        }
        for (int i = from; i < to; i++) {
            doubtful[doubtfulUsed++] = (int) entries[i] >>> 1;
        }
    }

    private void keep(int from, int to) {
        int need = sharedUsed + to - from + 1;
        if (need > sharedGroups.length) {
            sharedGroups = Arrays.copyOf(sharedGroups, 2 * need);
        }
        sharedGroups[sharedUsed++] = to - from;
        for (int i = from; i < to; i++) {
            sharedGroups[sharedUsed++] = (int) entries[i];
        }
    }

    /**
     * Bodies that merely touch along an edge stay apart: an edge of four facets joins them only where a body by itself
     * would be open there.
     */
    private void joinShared() {
        int at = 0;
        while (at < sharedUsed) {
            int size = sharedGroups[at++];
            if (!balancedBodies(at, at + size)) {
                int facet = (sharedGroups[at] >>> 1) / 3;
                for (int i = at + 1; i < at + size; i++) {
                    join.join(facet, (sharedGroups[i] >>> 1) / 3, 0);
                }
            }
            at += size;
        }
    }

    private boolean balancedBodies(int from, int to) {
        int[] roots = new int[to - from];
        for (int i = from; i < to; i++) {
            roots[i - from] = join.root((sharedGroups[i] >>> 1) / 3) << 1 | (sharedGroups[i] & 1);
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
        return open == 0 && crowded == 0;
    }

    /** Edges of one facet only. */
    int open() {
        return open;
    }

    /** All of them, as three times the facet plus the corner. */
    int[] openEdges() {
        return Arrays.copyOf(openEdges, open);
    }

    /** The first of them, as three times the facet plus the corner; -1 where there is none. */
    int firstOpen() {
        return firstOpen;
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
        return shared;
    }

    /** The first of them; -1 where there is none. */
    int firstShared() {
        return firstShared;
    }

    /** Every edge that does not belong to exactly two facets, as three times the facet plus the corner. */
    int[] doubtful() {
        return Arrays.copyOf(doubtful, doubtfulUsed);
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
