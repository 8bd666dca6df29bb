package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.concurrent.Executor;
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
    static StlFacets read(ByteSource bytes, int facets, String fileName, double metresPerUnit, Executor helper) {
        VertexWeld weld = new VertexWeld(facets);
        FacetSurvey survey = new FacetSurvey(weld, facets, metresPerUnit, helper);
        int[] words = new int[PAIR * PAIRS_AT_ONCE];
        int[] bits = new int[18 * PAIRS_AT_ONCE];
        int done = 0;
        while (done < facets) {
            int now = Math.min(2 * PAIRS_AT_ONCE, facets - done);
            ByteBuffer window =
                    bytes.window(HEADER + (long) FACET * done, FACET * now).order(ByteOrder.LITTLE_ENDIAN);
            if (window.limit() < FACET * now) {
                throw StlRefusals.truncated(
                        "a file that ended while it was read", "84 bytes and 50 for every facet", fileName, 0);
            }
            window.asIntBuffer().get(words, 0, FACET * now / 4);
            unpack(words, bits, now);
            if (!weld.add(bits, now)) {
                throw unusable(window, weld.added() - done, weld.added(), fileName);
            }
            done += now;
            survey.advance();
        }
        return new StlFacets(weld, survey, false, true);
    }

    /** Copies the corners of facets out of the words of the file; one facet too many where their number is odd. */
    private static void unpack(int[] words, int[] bits, int facets) {
        int to = 0;
        for (int at = 0; to < 9 * facets; at += PAIR) {
            for (int k = 0; k < 9; k++) {
                bits[to + k] = words[at + 3 + k];
            }
            for (int k = 0; k < 9; k++) {
                bits[to + 9 + k] = words[at + 15 + k] >>> 16 | words[at + 16 + k] << 16;
            }
            to += 18;
        }
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
