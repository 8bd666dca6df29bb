package org.fizzhull.mesh.measure;

/**
 * The numbers from 0 up in sets that only grow together, each named by one of its numbers (union-find with path halving:
 * Tarjan and van Leeuwen 1984, from memory). Nearly O(1) a call. Not thread-safe: a look shortens ways.
 */
public final class DisjointSets {
    private final int[] above;

    /**
     * Each number in a set of its own.
     *
     * @param count how many numbers there are
     */
    public DisjointSets(int count) {
        above = new int[count];
        for (int i = 0; i < count; i++) {
            above[i] = i;
        }
    }

    /**
     * {@return the number by which the set of a number is named}
     *
     * @param number 0 up to the count less one
     */
    public int root(int number) {
        int at = number;
        while (above[at] != at) {
            above[at] = above[above[at]];
            at = above[at];
        }
        return at;
    }

    /**
     * Joins the sets of two numbers; the set is named as that of the first one was.
     *
     * @param kept number whose set keeps its name
     * @param joined number of the other set
     */
    public void join(int kept, int joined) {
        above[root(joined)] = root(kept);
    }
}
