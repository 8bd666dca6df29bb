package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;

/**
 * Facets of a binary STL: 80 bytes of header, a count, then 50 bytes a facet (normal, three corners, two spare bytes),
 * little-endian. The normal is not looked at.
 */
final class StlBinary {
    static final int HEADER = 84;
    static final int FACET = 50;
    private static final int NORMAL = 12;

    private StlBinary() {}

    /** Number of facets that fit into a file of this size. */
    static long room(long size) {
        return Math.max(0, (size - HEADER) / FACET);
    }

    /** Reads so many facets, all of which lie inside the file; the buffer is in little-endian order. */
    static void read(ByteBuffer bytes, int facets, VertexWeld weld, String fileName) {
        float[] corners = new float[9];
        for (int f = 0; f < facets; f++) {
            int at = HEADER + FACET * f + NORMAL;
            for (int i = 0; i < 9; i++) {
                corners[i] = bytes.getFloat(at + 4 * i);
                if (!(Math.abs(corners[i]) <= VertexWeld.LARGEST)) {
                    throw StlRefusals.number(
                            "facet " + (f + 1) + ", corner " + (i / 3 + 1) + ", " + "xyz".charAt(i % 3) + " = "
                                    + corners[i],
                            fileName,
                            0);
                }
            }
            weld.add(corners);
        }
    }
}
