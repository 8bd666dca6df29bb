package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Which runs of facets hang together: a union-find forest. A run is a row of facets each of which hangs on the one before;
 * most files have a thousand times fewer of them than facets, so that all of it stays in the processor's cache.
 */
final class RunJoin {
    private int[] parent = new int[64];
    private int runs;
    private int joins;

    /** A run more; returns its number. */
    int add() {
        if (runs == parent.length) {
            parent = Arrays.copyOf(parent, 2 * runs);
        }
        parent[runs] = runs;
        return runs++;
    }

    /** Joins two runs. */
    void join(int a, int b) {
        if (parent[a] == parent[b]) {
            return;
        }
        int rootA = root(a);
        int rootB = root(b);
        if (rootA != rootB) {
            parent[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
            joins++;
        }
    }

    private int root(int run) {
        int node = run;
        while (parent[node] != node) {
            parent[node] = parent[parent[node]];
            node = parent[node];
        }
        return node;
    }

    /** Number of surfaces that the runs make. */
    int surfaces() {
        return runs - joins;
    }
}
