package org.fizzhull.mesh;

/** Blocks of facets in a ring: each is filled and welded, lent to the survey, and filled again when that is done. */
final class FacetBlocks {
    /** A block of a binary file and its vertices fit into the second cache of a processor. */
    static final int FACETS = 16384;

    private static final int BLOCKS = 3;

    private final int facets;
    private final FacetBits[] ring = new FacetBits[BLOCKS];
    private int given;

    /** @param most facets that will come at most */
    FacetBlocks(long most) {
        facets = (int) Math.min(FACETS, most);
    }

    /** A block that nobody uses; waits for the survey where it is behind. */
    FacetBits next() {
        int at = given++ % BLOCKS;
        if (ring[at] == null) {
            ring[at] = new FacetBits(facets);
        }
        ring[at].await();
        return ring[at];
    }

    /** Facets in a block. */
    int facets() {
        return facets;
    }
}
