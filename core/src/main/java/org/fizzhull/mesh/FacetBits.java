package org.fizzhull.mesh;

import java.nio.ByteBuffer;

/**
 * The corners of some facets as the bits of their float32 numbers, nine a facet, copied out of a file in one go. A binary
 * facet takes 50 bytes, so that every second one starts between two ints: the bytes are copied twice, the second time two
 * bytes on, and each facet is whole in one of the copies. That costs a quarter of putting the numbers together by shifts
 * (measured).
 */
final class FacetBits {
    /** Ints in two facets of a file. */
    private static final int PAIR = 25;

    private final int[] even;
    private final int[] odd;

    private final byte[] hinges;
    private int borrower;

    /** Room for so many facets. */
    FacetBits(int facets) {
        hinges = new byte[facets];
        even = new int[PAIR * ((facets + 1) / 2)];
        odd = new int[PAIR * ((facets + 1) / 2)];
    }

    /** Takes facets of a binary file from position 0 on; the byte order of the window counts. */
    void copy(ByteBuffer window, int facets) {
        window.position(0).asIntBuffer().get(even, 0, StlBinary.FACET * facets / 4);
        window.position(2).asIntBuffer().get(odd, 0, (StlBinary.FACET * facets - 2) / 4);
    }

    /** The array that facet f is in. */
    int[] array(int f) {
        return (f & 1) == 0 ? even : odd;
    }

    /** Index in that array of the facet's first number. */
    int at(int f) {
        return PAIR * (f >> 1) + ((f & 1) == 0 ? 3 : 15);
    }

    /** Notes which corner of the facet before, from 1, each of the corners of facet f is; 0 for none. */
    void hinge(int f, int twinOfA, int twinOfB, int twinOfC) {
        hinges[f] = Hinge.code(twinOfA, twinOfB, twinOfC);
    }

    /** What was noted, as a {@link Hinge} counts it. */
    byte hinge(int f) {
        return hinges[f];
    }

    /** Leaves the block to an errand; until that is done it must not be filled again. */
    void lend(int errand) {
        borrower = errand;
    }

    /** The errand that was the last to get it; 0 for none. */
    int borrower() {
        return borrower;
    }
}
