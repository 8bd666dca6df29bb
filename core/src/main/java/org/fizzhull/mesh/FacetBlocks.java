package org.fizzhull.mesh;

/** Blocks of facets in a ring: each is filled and welded, lent to the helper, and filled again when that is done. */
final class FacetBlocks {
    /** Few enough for a processor's cache, and so many that waking the helper for them does not count. */
    private static final int FACETS = 16384;

    private static final int BLOCKS = 3;

    private final Errands errands;
    private final int facets;
    private final FacetBits[] ring = new FacetBits[BLOCKS];
    private int given;

    /** @param most facets that will come at most */
    FacetBlocks(long most, Errands errands) {
        this.errands = errands;
        facets = (int) Math.min(FACETS, most);
    }

    /** A block that nobody uses; waits for the helper where it is behind. */
    FacetBits next() {
        int at = given++ % BLOCKS;
        if (given <= BLOCKS) {
            ring[at] = new FacetBits(facets);
        }
        errands.await(ring[at].borrower());
        return ring[at];
    }

    /** Facets in a block. */
    int facets() {
        return facets;
    }
}
