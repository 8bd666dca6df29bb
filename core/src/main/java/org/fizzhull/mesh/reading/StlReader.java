package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.repair.MeshCheck;

/**
 * Reads STL, binary or ASCII, into a closed mesh, or says what is wrong with the file and where. The kind is told by the
 * size first (84 bytes and 50 a facet are binary, whatever the header says); memory follows the size of the file, never
 * the count in it. The format carries no unit: the caller names one.
 *
 * <p>Rules: docs/physics/hydrostatics.md, 6. Layout of the format: seen, in public descriptions of it.
 */
public final class StlReader {
    /** Most facets that are read. */
    public static final int MOST_FACETS = 4_000_000;

    /** How far to look for the word that tells an ASCII file: names are of any length. */
    private static final int LOOK = 1 << 16;

    private StlReader() {}

    /**
     * {@return what the bytes say between a buffer's position and its limit}
     *
     * @param file the bytes; may be a mapped file
     * @param fileName name used in messages
     * @param metresPerUnit length of one unit of the file, m: 0.001 for millimetres
     */
    public static MeshReading read(ByteBuffer file, String fileName, double metresPerUnit) {
        if (!(metresPerUnit > 0 && metresPerUnit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a unit of " + metresPerUnit + " m is none");
        }
        ByteBuffer bytes = file.slice().order(ByteOrder.LITTLE_ENDIAN);
        int size = bytes.limit();
        if (size == 0) {
            throw StlRefusals.empty("a file of 0 bytes", fileName);
        }
        List<Notice> notices = new ArrayList<>();
        VertexWeld weld = new VertexWeld();
        long count = size < StlBinary.HEADER ? -1 : bytes.getInt(80) & 0xffffffffL;
        if (count > 0 && count <= StlBinary.room(size)) {
            String doubt = binary(bytes, count, weld, fileName, notices);
            return finish(weld, false, fileName, metresPerUnit, notices, doubt);
        }
        FileKind kind = FileKind.of(bytes);
        if (kind != FileKind.UNKNOWN) {
            throw StlRefusals.otherKind(kind, fileName);
        }
        String look = StandardCharsets.ISO_8859_1
                .decode(bytes.slice(0, Math.min(LOOK, size)))
                .toString()
                .toLowerCase(Locale.ROOT);
        int from = textStart(look);
        if (from >= 0 && (look.contains("facet") || look.startsWith("solid", from)) && look.indexOf(0) < 0) {
            text(bytes, from, weld, fileName, notices);
            return finish(weld, true, fileName, metresPerUnit, notices, "");
        }
        if (size > 1 && (bytes.getShort(0) == (short) 0xfeff || bytes.getShort(0) == (short) 0xfffe)) {
            throw StlRefusals.notStl("a text of two-byte characters", "Save it as plain text (UTF-8).", fileName);
        }
        if (size < StlBinary.HEADER) {
            throw StlRefusals.notStl(
                    size + " bytes that are no text", "Is this the right file? Export the body as STL.", fileName);
        }
        String doubt = binary(bytes, count, weld, fileName, notices);
        return finish(weld, false, fileName, metresPerUnit, notices, doubt);
    }

    private static void text(ByteBuffer bytes, int from, VertexWeld weld, String fileName, List<Notice> notices) {
        StlText text = StlText.read(bytes, from, weld, fileName);
        if (weld.read() == 0) {
            throw StlRefusals.empty("an ASCII STL without a facet", fileName);
        }
        if (!text.ended()) {
            notices.add(new Notice("stl-no-end", "The file has no endsolid; every facet in it is whole."));
        }
        if (text.trailingWords() > 0) {
            notices.add(new Notice(
                    "stl-trailing-words",
                    "Other words stand behind endfacet " + text.trailingWords() + " times and were skipped."));
        }
    }

    /** Reads binary facets; returns what is suspicious about their number, or an empty text. */
    private static String binary(ByteBuffer bytes, long count, VertexWeld weld, String fileName, List<Notice> notices) {
        long size = bytes.limit();
        long room = StlBinary.room(size);
        long rest = size - StlBinary.HEADER - StlBinary.FACET * room;
        boolean whole = rest == 0 && room > 0;
        if ((count > room && !whole) || (room == 0 && count > 0)) {
            throw StlRefusals.truncated(
                    "a count of " + count + " facets in " + size + " bytes, which end inside facet " + (room + 1),
                    "84 bytes and 50 for every facet",
                    fileName,
                    0);
        }
        if (room == 0 || (count == 0 && !whole)) {
            throw StlRefusals.empty("a count of 0 facets", fileName);
        }
        long facets = whole ? room : count;
        if (facets > MOST_FACETS) {
            throw StlRefusals.tooLarge(facets, fileName);
        }
        String doubt = "";
        if (facets != count) {
            doubt = "the header counts " + count + " facets, the file holds " + facets;
            notices.add(
                    new Notice("stl-count", sentence(doubt) + "; the size was believed and the surface is closed."));
        } else if (rest != 0 || room > count) {
            long extra = size - StlBinary.HEADER - StlBinary.FACET * count;
            notices.add(new Notice("stl-trailing", extra + " bytes after the last facet were left unread."));
        }
        StlBinary.read(bytes, (int) facets, weld, fileName);
        return doubt;
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static MeshReading finish(
            VertexWeld weld, boolean ascii, String fileName, double metresPerUnit, List<Notice> notices, String doubt) {
        if (weld.collapsed() > 0) {
            notices.add(new Notice(
                    "mesh-collapsed",
                    weld.collapsed() + " of " + weld.read()
                            + " facets have two corners in one place and were left out."));
        }
        MeshCheck body = MeshCheck.of(weld.welded().coordinates(metresPerUnit), weld.welded().corners(), fileName, doubt, notices);
        SizeHints.add(body, metresPerUnit, notices);
        return new MeshReading(body.mesh(), body.surfaces(), ascii, Optional.empty(), weld.read(), notices);
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
