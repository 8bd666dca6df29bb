package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.fizzhull.quantity.Refusal;

/**
 * Facets of a binary STL: 80 bytes of header, a count, then 50 bytes a facet (normal, three corners, two spare bytes),
 * little-endian. The normal is not looked at.
 *
 * <p>Windows of facets are copied into an int array in one go. Every second facet starts between two ints and is put
 * together by shifting: a bulk copy and shifts cost a third of nine getFloat calls a facet.
 */
final class StlBinary {
    static final int HEADER = 84;
    static final int FACET = 50;

    /** Ints in two facets. */
    private static final int PAIR = 25;

    private static final int PAIRS_AT_ONCE = 512;

    private StlBinary() {}

    /** Number of facets that fit into a file of this size. */
    static long room(long size) {
        return Math.max(0, (size - HEADER) / FACET);
    }

    /** Reads {@code facets} facets, all of which lie inside the file. */
    static StlFacets read(ByteSource bytes, int facets, String fileName) {
        VertexWeld weld = new VertexWeld(facets);
        FacetSurvey survey = new FacetSurvey(weld, facets);
        int[] words = new int[PAIR * PAIRS_AT_ONCE];
        int done = 0;
        while (done < facets) {
            int now = Math.min(2 * PAIRS_AT_ONCE, facets - done);
            ByteBuffer window = bytes.window(HEADER + (long) FACET * done, FACET * now);
            window.order(ByteOrder.LITTLE_ENDIAN).asIntBuffer().get(words, 0, FACET * now / 4);
            if (!addAll(weld, words, now)) {
                throw unusable(window, weld.added() - done, weld.added(), fileName);
            }
            done += now;
            survey.advance();
        }
        return new StlFacets(weld, survey, false, true);
    }

    private static boolean addAll(VertexWeld weld, int[] words, int facets) {
        boolean usable = true;
        int at = 0;
        for (int i = 0; i + 1 < facets && usable; i += 2) {
            usable = addEven(weld, words, at) && addOdd(weld, words, at);
            at += PAIR;
        }
        if ((facets & 1) != 0 && usable) {
            usable = addEven(weld, words, at);
        }
        return usable;
    }

    private static boolean addEven(VertexWeld weld, int[] w, int at) {
        return weld.add(
                w[at + 3], w[at + 4], w[at + 5], w[at + 6], w[at + 7], w[at + 8], w[at + 9], w[at + 10], w[at + 11]);
    }

    private static boolean addOdd(VertexWeld weld, int[] w, int at) {
        return weld.add(
                w[at + 15] >>> 16 | w[at + 16] << 16,
                w[at + 16] >>> 16 | w[at + 17] << 16,
                w[at + 17] >>> 16 | w[at + 18] << 16,
                w[at + 18] >>> 16 | w[at + 19] << 16,
                w[at + 19] >>> 16 | w[at + 20] << 16,
                w[at + 20] >>> 16 | w[at + 21] << 16,
                w[at + 21] >>> 16 | w[at + 22] << 16,
                w[at + 22] >>> 16 | w[at + 23] << 16,
                w[at + 23] >>> 16 | w[at + 24] << 16);
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
