package org.fizzhull.mesh;

/**
 * Pairs edges as facets arrive, and joins the facets: an edge waits until a facet runs it the other way, then both are
 * forgotten. Most facets hang on the facet before, which needs no search; the others' edges wait in a table. Files mostly
 * list neighbours near each other, so that few edges wait at a time and all of it stays in the processor's cache; where
 * too many wait, or something does not pair, {@link EdgePairing} takes over.
 */
final class EdgeFront {
    private static final int FEW = 4096;
    private static final int ALL = 7;

    private final WaitingEdges waiting = new WaitingEdges();
    private final RunJoin runs = new RunJoin();
    private final int mostWaiting;
    private int done;

    /** Edges of the last facet that no facet was met for, one bit an edge, and its run. */
    private int unmet;

    private int run;

    /** @param facets facets that will come, about */
    EdgeFront(int facets) {
        mostWaiting = facets / 8 + FEW;
    }

    /**
     * Takes facets.
     *
     * @param corners three vertices a facet, of all facets so far
     * @param block how each of these hangs on the one before
     * @param from first facet in the block
     * @param to the facet after the last one
     * @return false where it is better left to {@link EdgePairing}
     */
    boolean advance(int[] corners, FacetBits block, int from, int to) {
        int f = done;
        for (int i = from; i < to; i++) {
            byte hinge = block.hinge(i);
            int left = unmet & ~Hinge.before(hinge);
            if (left != 0) {
                settle(corners, 3 * f - 3, left);
            }
            int shared = Hinge.own(hinge);
            if (shared == 0) {
                run = runs.add();
            }
            unmet = ALL & ~shared;
            f++;
        }
        done = f;
        return waiting.count() <= mostWaiting && waiting.looks() <= 24L * done + FEW;
    }

    /** Sends the edges of a facet that its neighbour in the file did not meet to those that wait. */
    private void settle(int[] corners, int h, int left) {
        if ((left & 1) != 0) {
            meet(corners[h], corners[h + 1]);
        }
        if ((left & 2) != 0) {
            meet(corners[h + 1], corners[h + 2]);
        }
        if ((left & 4) != 0) {
            meet(corners[h + 2], corners[h]);
        }
    }

    private void meet(int from, int to) {
        int other = waiting.meet(from, to, run);
        if (other != WaitingEdges.NONE && other != run) {
            runs.join(run, other);
        }
    }

    /** Whether every edge was met the other way round, by facets that all hang together; after the last facet. */
    boolean closedAndOne(int[] corners) {
        settle(corners, 3 * done - 3, unmet);
        unmet = 0;
        return waiting.count() == 0 && runs.surfaces() == 1;
    }
}
