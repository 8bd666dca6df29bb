package org.fizzhull.mesh.repair;

import java.util.Arrays;

/** Facets on the same three vertices, among those that were suspected. */
final class FacetTwins {
    private final int[] corners;

    /** Facet that repeats an earlier one the same way round. */
    private final boolean[] same;

    /** Facet that is left with one the other way round: 1 for the earlier of the two, 2 for the later. */
    private final byte[] opposite;

    private int sameCount;
    private int oppositeCount;

    private FacetTwins(int[] corners) {
        this.corners = corners;
        same = new boolean[corners.length / 3];
        opposite = new byte[corners.length / 3];
    }

    /** Looks among the facets of these edges (three times the facet plus the corner). */
    static FacetTwins among(int[] corners, int[] edges) {
        FacetTwins twins = new FacetTwins(corners);
        long[] keys = new long[edges.length];
        for (int i = 0; i < edges.length; i++) {
            int facet = edges[i] / 3;
            keys[i] = (long) twins.key(facet) << 32 | facet;
        }
        Arrays.sort(keys);
        int from = 0;
        for (int to = 1; to <= keys.length; to++) {
            if (to == keys.length || keys[to] >> 32 != keys[from] >> 32) {
                twins.compare(keys, from, to);
                from = to;
            }
        }
        return twins;
    }

    /** The same for facets on the same vertices, and rarely for others. */
    private int key(int facet) {
        int a = corners[3 * facet];
        int b = corners[3 * facet + 1];
        int c = corners[3 * facet + 2];
        int low = Math.min(a, Math.min(b, c));
        int high = Math.max(a, Math.max(b, c));
        int h = low * 0x9e3779b1;
        h = ((h ^ h >>> 15) + high) * 0x85ebca77;
        return ((h ^ h >>> 13) + (a ^ b ^ c)) * 0xc2b2ae3d;
    }

    private void compare(long[] keys, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            int facet = (int) keys[i];
            if (facet == (int) keys[i - 1] || same[facet]) {
                continue;
            }
            for (int j = from; j < i && !same[facet]; j++) {
                int earlier = (int) keys[j];
                if (earlier != facet && !same[earlier]) {
                    compare(earlier, facet);
                }
            }
        }
    }

    private void compare(int earlier, int later) {
        int at = 3 * later;
        int a = corners[3 * earlier];
        int turn = corners[at] == a ? 0 : corners[at + 1] == a ? 1 : 2;
        if (corners[at + turn] != a) {
            return;
        }
        int b = corners[at + (turn + 1) % 3];
        int c = corners[at + (turn + 2) % 3];
        int b0 = corners[3 * earlier + 1];
        int c0 = corners[3 * earlier + 2];
        if (b == b0 && c == c0) {
            same[later] = true;
            sameCount++;
        } else if (b == c0 && c == b0 && opposite[earlier] == 0 && opposite[later] == 0) {
            opposite[earlier] = 1;
            opposite[later] = 2;
            oppositeCount++;
        }
    }

    /** Number of facets that repeat another the same way round. */
    int same() {
        return sameCount;
    }

    /** Number of pairs of facets back to back. */
    int opposite() {
        return oppositeCount;
    }

    /** The facets without repetitions. */
    int[] withoutSame() {
        return MeshMending.without(corners, same);
    }

    /** The facets without both of each pair back to back, or only without the later one. */
    int[] withoutOpposite(boolean both) {
        boolean[] drop = new boolean[opposite.length];
        for (int f = 0; f < drop.length; f++) {
            drop[f] = opposite[f] == 2 || (opposite[f] == 1 && both);
        }
        return MeshMending.without(corners, drop);
    }
}
