package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;

/**
 * Binary STL: 80 bytes of header, a count, then 50 bytes a facet (normal, three corners, two spare bytes), little-endian.
 * The normal is not looked at. Where the count and the size of the file disagree, a size that holds whole facets to the
 * last byte is believed, or else the smaller number of facets.
 */
final class StlBinary {
    static final int HEADER = 84;
    static final int FACET = 50;
    private static final int COUNT = 80;
    private static final int NORMAL = 12;

    private StlBinary() {}

    /** Number of facets that the header names; -1 where the file is shorter than a header. */
    static long count(ByteBuffer bytes) {
        return bytes.limit() < HEADER ? -1 : bytes.getInt(COUNT) & 0xffffffffL;
    }

    /** Number of facets that fit into a file of this size, bytes. */
    static long room(long size) {
        return Math.max(0, (size - HEADER) / FACET);
    }

    /** Reads a file that is no shorter than a header; the buffer is in little-endian order. */
    static FacetFile read(ByteBuffer bytes, FileRefusals refusals) {
        long size = bytes.limit();
        long count = count(bytes);
        long room = room(size);
        boolean whole = room > 0 && size == HEADER + FACET * room;
        if (count > room && !whole) {
            throw refusals.truncated(
                    "a count of " + count + " facets in " + size + " bytes, which end inside facet " + (room + 1),
                    "84 bytes and 50 for every facet",
                    0);
        }
        if (count == 0 && !whole) {
            throw refusals.empty("a count of 0 facets");
        }
        long facets = whole ? room : count;
        if (facets > VertexWeld.MOST_FACETS) {
            throw refusals.tooLarge(facets);
        }
        VertexWeld weld = facets(bytes, (int) facets, refusals);
        if (facets != count) {
            String differ = "header counts " + count + " facets, the file holds " + facets;
            Notice notice =
                    new Notice("stl-count", "The " + differ + "; the size was believed and the surface is closed.");
            return new FacetFile(weld, false, Optional.empty(), "the " + differ, List.of(notice));
        }
        long extra = size - HEADER - FACET * count;
        List<Notice> notices = extra == 0
                ? List.of()
                : List.of(new Notice("stl-trailing", extra + " bytes after the last facet were left unread."));
        return new FacetFile(weld, false, Optional.empty(), "", notices);
    }

    private static VertexWeld facets(ByteBuffer bytes, int facets, FileRefusals refusals) {
        VertexWeld weld = new VertexWeld();
        float[] corners = new float[9];
        for (int f = 0; f < facets; f++) {
            int at = HEADER + FACET * f + NORMAL;
            for (int i = 0; i < 9; i++) {
                corners[i] = bytes.getFloat(at + 4 * i);
                if (!(Math.abs(corners[i]) <= VertexWeld.LARGEST)) {
                    String where = "facet " + (f + 1) + ", corner " + (i / 3 + 1) + ", " + "xyz".charAt(i % 3);
                    throw refusals.number(where + " = " + corners[i], 0);
                }
            }
            weld.add(corners);
        }
        return weld;
    }
}
