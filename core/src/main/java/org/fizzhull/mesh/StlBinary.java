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

    /**
     * Reads {@code facets} facets, all of which lie inside the file. While one block is welded, the helper reads the next
     * one and surveys the one before.
     */
    static StlFacets read(ByteSource bytes, int facets, String fileName, double metresPerUnit, Errands errands) {
        VertexWeld weld = new VertexWeld(facets);
        FacetSurvey survey = new FacetSurvey(weld, facets, metresPerUnit, errands);
        FacetBlocks blocks = new FacetBlocks(facets, errands);
        Window window = new Window(bytes, 0, Math.min(blocks.facets(), facets));
        window.run();
        int done = 0;
        while (done < facets) {
            int now = window.facets;
            FacetBits bits = blocks.next();
            bits.copy(window.take(fileName), now);
            window = new Window(bytes, done + now, Math.min(blocks.facets(), facets - done - now));
            int reading = window.facets > 0 ? errands.hand(window) : 0;
            if (!weld.add(bits, now)) {
                throw unusable(bits, weld.added() - done, weld.added(), fileName);
            }
            done += now;
            survey.advance(bits, now);
            errands.await(reading);
        }
        return new StlFacets(weld, survey, false, true);
    }

    /** Some facets of the file, read as an errand. */
    private static final class Window implements Runnable {
        private final ByteSource bytes;
        private final int from;
        private final int facets;
        private ByteBuffer read = ByteBuffer.allocate(0);

        Window(ByteSource bytes, int from, int facets) {
            this.bytes = bytes;
            this.from = from;
            this.facets = facets;
        }

        @Override
        public void run() {
            read = bytes.window(HEADER + (long) FACET * from, FACET * facets).order(ByteOrder.LITTLE_ENDIAN);
        }

        ByteBuffer take(String fileName) {
            if (read.limit() < FACET * facets) {
                throw StlRefusals.truncated(
                        "a file that ended while it was read", "84 bytes and 50 for every facet", fileName, 0);
            }
            return read;
        }
    }

    private static Refusal unusable(FacetBits bits, int inBlock, int facet, String fileName) {
        for (int i = 0; i < 9; i++) {
            float value = Float.intBitsToFloat(bits.array(inBlock)[bits.at(inBlock) + i]);
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
