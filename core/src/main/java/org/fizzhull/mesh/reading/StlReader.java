package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Distinguishes binary from ASCII STL. The kind is decided by the size first (84 bytes and 50 a facet are binary,
 * whatever the header says); memory follows the size of the file, never the count in it.
 *
 * <p>Rules: docs/physics/hydrostatics.md, 6. Layout of the format: seen, in public descriptions of it.
 */
final class StlReader {
    /** How far to look for the word that tells an ASCII file, bytes: names are of any length. */
    private static final int LOOK = 1 << 16;

    private StlReader() {}

    /** Reads the facets of a file from byte 0 on; the buffer is in little-endian order. */
    static FacetFile read(ByteBuffer bytes, FileRefusals refusals) {
        if (bytes.limit() == 0) {
            throw refusals.empty("a file of 0 bytes");
        }
        long count = StlBinary.count(bytes);
        if (count > 0 && count <= StlBinary.room(bytes.limit())) {
            return StlBinary.read(bytes, refusals);
        }
        FileKind kind = FileKind.of(bytes);
        if (kind != FileKind.UNKNOWN) {
            throw refusals.otherKind(kind);
        }
        String look = StandardCharsets.ISO_8859_1
                .decode(bytes.slice(0, Math.min(LOOK, bytes.limit())))
                .toString()
                .toLowerCase(Locale.ROOT);
        int from = textStart(look);
        if (from >= 0 && (look.contains("facet") || look.startsWith("solid", from)) && look.indexOf(0) < 0) {
            return StlText.read(bytes.position(from), refusals);
        }
        if (bytes.limit() > 1 && (bytes.getShort(0) == (short) 0xfeff || bytes.getShort(0) == (short) 0xfffe)) {
            throw refusals.notStl("a text of two-byte characters", "Save it as plain text (UTF-8).");
        }
        if (count < 0) {
            throw refusals.notStl(
                    bytes.limit() + " bytes that are no text", "Is this the right file? Export the body as STL.");
        }
        return StlBinary.read(bytes, refusals);
    }

    /** First byte of text after a byte order mark and blanks; -1 where there is none. */
    private static int textStart(String look) {
        int i = look.startsWith("\u00ef\u00bb\u00bf") ? 3 : 0;
        while (i < look.length() && look.charAt(i) <= ' ' && look.charAt(i) > 0) {
            i++;
        }
        return i < look.length() && look.charAt(i) > 0 && look.charAt(i) < 0x80 ? i : -1;
    }
}
