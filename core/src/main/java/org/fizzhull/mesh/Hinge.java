package org.fizzhull.mesh;

/**
 * How a facet hangs on the facet before it in the file, in six bits: for each of its corners, from the lowest bits up,
 * which corner of the facet before it is, from 1; 0 for none. Which edges the two share follows from that alone.
 */
final class Hinge {
    private static final int CODES = 64;

    /** For each code the edges of the facet that the one before runs the other way, one bit an edge. */
    private static final byte[] OWN = new byte[CODES];

    /** The same edges as the facet before counts them. */
    private static final byte[] BEFORE = new byte[CODES];

    static {
        for (int code = 0; code < CODES; code++) {
            for (int edge = 0; edge < 3; edge++) {
                int from = (code >> (2 * edge)) & 3;
                int to = (code >> (2 * ((edge + 1) % 3))) & 3;
                if (from > 0 && to > 0 && from == to % 3 + 1) {
                    OWN[code] |= (byte) (1 << edge);
                    BEFORE[code] |= (byte) (1 << (to - 1));
                }
            }
        }
    }

    private Hinge() {}

    /** The code of three corners. */
    static byte code(int twinOfA, int twinOfB, int twinOfC) {
        return (byte) (twinOfA | twinOfB << 2 | twinOfC << 4);
    }

    /** Bit 0 where the first edge, from corner 0 to 1, is shared with the facet before; bits 1 and 2 for the others. */
    static int own(byte code) {
        return OWN[code];
    }

    /** The edges of the facet before that it shares with this one, likewise. */
    static int before(byte code) {
        return BEFORE[code];
    }
}
