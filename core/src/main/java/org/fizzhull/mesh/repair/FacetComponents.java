package org.fizzhull.mesh.repair;

import java.util.Arrays;

/**
 * Connected components of facets, called bodies here, and which facets run the other way round than the first of theirs: a
 * union-find forest whose links carry a parity. The first facet of a body is its root. Nearly O(1) a call.
 */
final class FacetComponents {
    private final int[] parent;

    /** Whether a facet runs against its parent; false for a root. */
    private final boolean[] against;

    private int bodies;
    private int contradiction = -1;

    FacetComponents(int facets) {
        parent = new int[facets];
        Arrays.setAll(parent, f -> f);
        against = new boolean[facets];
        bodies = facets;
    }

    /** Joins two facets; {@code opposed} where they are wound in opposite senses. */
    void join(int a, int b, boolean opposed) {
        int rootA = root(a);
        int rootB = root(b);
        boolean parity = against(a) ^ against(b) ^ opposed;
        if (rootA != rootB) {
            int later = Math.max(rootA, rootB);
            parent[later] = Math.min(rootA, rootB);
            against[later] = parity;
            bodies--;
        } else if (parity && contradiction < 0) {
            contradiction = a;
        }
    }

    /** First facet of the body a facet belongs to; halves the path to it. */
    int root(int facet) {
        int at = facet;
        while (parent[at] != at) {
            int up = parent[at];
            against[at] ^= against[up];
            parent[at] = parent[up];
            at = parent[at];
        }
        return at;
    }

    /** Whether a facet runs the other way round than the first of its body. */
    boolean against(int facet) {
        boolean sum = false;
        for (int at = facet; parent[at] != at; at = parent[at]) {
            sum ^= against[at];
        }
        return sum;
    }

    /** Number of the body of each facet, from 0 in the order of the first facets of the bodies. */
    int[] labels() {
        int[] labels = new int[parent.length];
        int names = 0;
        for (int f = 0; f < labels.length; f++) {
            int root = root(f);
            labels[f] = root == f ? names++ : labels[root];
        }
        return labels;
    }

    /** Number of bodies. */
    int bodies() {
        return bodies;
    }

    /** A facet that no turning makes agree with all its neighbours, as on a one-sided surface; -1 where there is none. */
    int contradiction() {
        return contradiction;
    }
}
