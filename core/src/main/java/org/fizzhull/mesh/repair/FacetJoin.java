package org.fizzhull.mesh.repair;

/**
 * Which facets hang together, and which of them run the other way round than the first of their body: a union-find
 * forest whose links carry a parity.
 */
final class FacetJoin {
    /**
     * Parent facet, shifted by one; the lowest bit says that the facet runs against its parent. Kept as the difference
     * (exclusive or) to the facet itself, so that a fresh array means facets on their own.
     */
    private final int[] link;

    private int bodies;
    private int contradictions;
    private int firstContradiction = -1;

    FacetJoin(int facets) {
        link = new int[facets];
        bodies = facets;
    }

    private int parent(int facet) {
        return link[facet] ^ facet << 1;
    }

    private void setParent(int facet, int parent) {
        link[facet] = parent ^ facet << 1;
    }

    /** Joins two facets that run alike (0) or against each other (1). */
    void join(int a, int b, int against) {
        if (parent(a) == parent(b) && against == 0) {
            return;
        }
        int rootA = find(a);
        int rootB = find(b);
        int parity = (rootA ^ rootB ^ against) & 1;
        int low = rootA >>> 1;
        int high = rootB >>> 1;
        if (low == high) {
            contradict(parity, a);
        } else if (low < high) {
            setParent(high, low << 1 | parity);
            bodies--;
        } else {
            setParent(low, high << 1 | parity);
            bodies--;
        }
    }

    private void contradict(int parity, int facet) {
        if (parity != 0) {
            contradictions++;
            firstContradiction = firstContradiction < 0 ? facet : firstContradiction;
        }
    }

    /** Root of a facet, shifted by one, with the facet's parity against the root in the lowest bit. */
    private int find(int facet) {
        int node = facet;
        int parity = 0;
        while (true) {
            int up = parent(node);
            if (up >>> 1 == node) {
                return up | parity;
            }
            int upper = parent(up >>> 1) ^ (up & 1);
            setParent(node, upper);
            parity ^= upper & 1;
            node = upper >>> 1;
        }
    }

    /** First facet of the body a facet belongs to. */
    int root(int facet) {
        return find(facet) >>> 1;
    }

    /** Whether a facet runs the other way round than the first of its body. */
    boolean against(int facet) {
        return (find(facet) & 1) != 0;
    }

    /** Number of the body of each facet, from 0 in the order in which bodies begin. */
    int[] labels() {
        int[] labels = new int[link.length];
        int[] nameOfRoot = new int[link.length];
        int names = 0;
        for (int f = 0; f < labels.length; f++) {
            int root = root(f);
            if (nameOfRoot[root] == 0) {
                nameOfRoot[root] = ++names;
            }
            labels[f] = nameOfRoot[root] - 1;
        }
        return labels;
    }

    /** Number of facets. */
    int facets() {
        return link.length;
    }

    /** Number of bodies. */
    int bodies() {
        return bodies;
    }

    /** Joins that no turning of facets can satisfy: not 0 on a one-sided surface. */
    int contradictions() {
        return contradictions;
    }

    /** A facet at the first of them; -1 where there is none. */
    int firstContradiction() {
        return firstContradiction;
    }
}
