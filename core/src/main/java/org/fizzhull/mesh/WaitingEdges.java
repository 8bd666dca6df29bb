package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Edges that one facet has and a second is still to come for. A chain for each lower vertex modulo the number of chains:
 * those that wait at a time mostly lie at vertices numbered one after another, and so in chains of their own and near each
 * other in memory. There are about as many chains as edges wait, never as many as there are vertices.
 */
final class WaitingEdges {
    private static final int FEW = 1024;

    /** What {@link #meet} returns where the edge has to wait. */
    static final int NONE = -1;

    /** First edge of each chain; 0 for none. */
    private int[] head = new int[2 * FEW];

    /** Of each edge: lower vertex in the upper half; upper vertex, doubled, plus 1 where it runs upward. */
    private long[] key = new long[FEW];

    private int[] run = new int[FEW];
    private int[] next = new int[FEW];
    private int used = 1;
    private int free;
    private int waiting;
    private long looks;

    /**
     * Forgets the edge's partner and returns the run it is of; {@link #NONE} where there is none, and the edge waits. All in
     * one method, since for the fast compiler every call from here would be a real one.
     */
    int meet(int from, int to, int ofRun) {
        long own = from < to ? ((long) from << 32) | (to << 1) | 1 : ((long) to << 32) | (from << 1);
        int chain = Math.min(from, to) & (head.length - 1);
        int before = 0;
        int at = head[chain];
        while (at != 0) {
            if ((key[at] ^ own) == 1) {
                if (before == 0) {
                    head[chain] = next[at];
                } else {
                    next[before] = next[at];
                }
                next[at] = free;
                free = at;
                waiting--;
                return run[at];
            }
            looks++;
            before = at;
            at = next[at];
        }
        at = free;
        if (at != 0) {
            free = next[at];
        } else {
            at = used++;
        }
        key[at] = own;
        run[at] = ofRun;
        next[at] = head[chain];
        head[chain] = at;
        waiting++;
        if (used == key.length) {
            grow();
        }
        return NONE;
    }

    /** Twice the room and twice the chains; every place is taken when it is called. */
    private void grow() {
        key = Arrays.copyOf(key, 2 * used);
        run = Arrays.copyOf(run, 2 * used);
        next = Arrays.copyOf(next, 2 * used);
        head = new int[2 * head.length];
        for (int at = 1; at < used; at++) {
            int chain = (int) (key[at] >>> 32) & (head.length - 1);
            next[at] = head[chain];
            head[chain] = at;
        }
    }

    /** Number of edges that wait. */
    int count() {
        return waiting;
    }

    /** Edges looked at in vain so far. */
    long looks() {
        return looks;
    }
}
