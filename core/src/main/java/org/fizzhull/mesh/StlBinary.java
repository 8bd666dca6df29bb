package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.fizzhull.quantity.Refusal;

/**
 * Facets of a binary STL: 80 bytes of header, a count, then 50 bytes a facet (normal, three corners, two spare bytes),
 * little-endian. The normal is not looked at.
 */
final class StlBinary {
    static final int HEADER = 84;
    static final int FACET = 50;

    private StlBinary() {}

    /** Number of facets that fit into a file of this size. */
    static long room(long size) {
        return Math.max(0, (size - HEADER) / FACET);
    }

    /** Reads {@code facets} facets, all of which lie inside the file. */
    static StlFacets read(ByteSource bytes, int facets, String fileName, double metresPerUnit, Errands errands) {
        VertexWeld weld = new VertexWeld(facets);
        FacetSurvey survey = new FacetSurvey(weld, facets, metresPerUnit, errands);
        FacetBlocks blocks = new FacetBlocks(facets, errands);
        int done = 0;
        while (done < facets) {
            int now = Math.min(blocks.facets(), facets - done);
            ByteBuffer window =
                    bytes.window(HEADER + (long) FACET * done, FACET * now).order(ByteOrder.LITTLE_ENDIAN);
            if (window.limit() < FACET * now) {
                throw StlRefusals.truncated(
                        "a file that ended while it was read", "84 bytes and 50 for every facet", fileName, 0);
            }
            FacetBits bits = blocks.next();
            bits.copy(window, now);
            if (!weld.add(bits, now)) {
                throw unusable(window, weld.added() - done, weld.added(), fileName);
            }
            done += now;
            survey.advance(bits, now);
        }
        return new StlFacets(weld, survey, false, true);
    }

    private static Refusal unusable(ByteBuffer window, int inWindow, int facet, String fileName) {
        for (int i = 0; i < 9; i++) {
            float value = window.getFloat(FACET * inWindow + 12 + 4 * i);
            if (!(Math.abs(value) <= VertexWeld.LARGEST)) {
                return StlRefusals.number(
                        "facet " + (facet + 1) + ", corner " + (i / 3 + 1) + ", " + "xyz".charAt(i % 3) + " = " + value,
                        fileName,
                        0);
            }
        }
        throw new IllegalStateException("facet " + facet + " was refused but is usable");
    }
}
