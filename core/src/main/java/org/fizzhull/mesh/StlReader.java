package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import org.fizzhull.evidence.Notice;

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
     * Reads the bytes between a buffer's position and its limit.
     *
     * @param bytes the file; may be a mapped one
     * @param fileName name used in messages
     * @param metresPerUnit length of one unit of the file, m: 0.001 for millimetres
     */
    public static StlReading read(ByteBuffer bytes, String fileName, double metresPerUnit) {
        return read(ByteSource.of(bytes), fileName, metresPerUnit, new SameThread());
    }

    /**
     * Reads a file piece by piece, with a helper: while the vertices of one block of facets are sought, the helper reads
     * the next block and surveys the one before. The answer is the same to the last digit, whoever runs it.
     *
     * @param bytes the file
     * @param fileName name used in messages
     * @param metresPerUnit length of one unit of the file, m
     * @param helper runs tasks, on another thread where there is one to spare
     */
    public static StlReading read(ByteSource bytes, String fileName, double metresPerUnit, Executor helper) {
        if (!(metresPerUnit > 0 && metresPerUnit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a unit of " + metresPerUnit + " m is none");
        }
        if (bytes.size() == 0) {
            throw StlRefusals.empty("a file of 0 bytes", fileName);
        }
        Errands errands = new Errands(helper);
        List<Notice> notices = new ArrayList<>();
        long count = bytes.size() < StlBinary.HEADER
                ? -1
                : bytes.window(80, 4).order(ByteOrder.LITTLE_ENDIAN).getInt(0) & 0xffffffffL;
        long room = StlBinary.room(bytes.size());
        if (count > 0 && count <= room) {
            return binary(bytes, count, fileName, metresPerUnit, errands, notices);
        }
        ByteBuffer look = bytes.window(0, LOOK);
        int from = textStart(look);
        if (from >= 0 && (holds(look, "facet") || startsWith(look, from, "solid")) && !holdsZero(look)) {
            return text(bytes, from, fileName, metresPerUnit, errands, notices);
        }
        if (look.limit() > 1
                && ((look.get(0) == -1 && look.get(1) == -2) || (look.get(0) == -2 && look.get(1) == -1))) {
            throw StlRefusals.notStl("a text of two-byte characters", "Save it as plain text (UTF-8).", fileName);
        }
        if (bytes.size() < StlBinary.HEADER) {
            throw StlRefusals.notStl(
                    bytes.size() + " bytes that are no text",
                    "Is this the right file? Export the body as STL.",
                    fileName);
        }
        return binary(bytes, count, fileName, metresPerUnit, errands, notices);
    }

    /** Runs a task at once; a class and not a method reference, whose first use costs tens of milliseconds. */
    private static final class SameThread implements Executor {
        @Override
        public void execute(Runnable task) {
            task.run();
        }
    }

    private static StlReading text(
            ByteSource bytes, int from, String fileName, double metresPerUnit, Errands errands, List<Notice> notices) {
        StlFacets text = StlText.read(bytes, from, fileName, metresPerUnit, errands);
        if (text.weld().added() == 0) {
            throw StlRefusals.empty("an ASCII STL without a facet", fileName);
        }
        if (!text.ended()) {
            notices.add(new Notice("stl-no-end", "The file has no endsolid; every facet in it is whole."));
        }
        return finish(text, fileName, metresPerUnit, errands, notices, "");
    }

    /** Reads binary facets; the count of the header is believed only where the size allows it. */
    private static StlReading binary(
            ByteSource bytes,
            long count,
            String fileName,
            double metresPerUnit,
            Errands errands,
            List<Notice> notices) {
        long room = StlBinary.room(bytes.size());
        long rest = (bytes.size() - StlBinary.HEADER) % StlBinary.FACET;
        boolean whole = rest == 0 && room > 0;
        if ((count > room && !whole) || (room == 0 && count > 0)) {
            throw StlRefusals.truncated(
                    "a count of " + count + " facets in " + bytes.size() + " bytes, which end inside facet "
                            + (room + 1),
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
            long extra = bytes.size() - StlBinary.HEADER - StlBinary.FACET * count;
            notices.add(new Notice("stl-trailing", extra + " bytes after the last facet were left unread."));
        }
        return finish(
                StlBinary.read(bytes, (int) facets, fileName, metresPerUnit, errands),
                fileName,
                metresPerUnit,
                errands,
                notices,
                doubt);
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static StlReading finish(
            StlFacets facets,
            String fileName,
            double metresPerUnit,
            Errands errands,
            List<Notice> notices,
            String doubt) {
        VertexWeld weld = facets.weld();
        if (weld.collapsed() > 0) {
            notices.add(new Notice(
                    "mesh-collapsed",
                    weld.collapsed() + " of " + weld.added()
                            + " facets have two corners in one place and were left out."));
        }
        FacetSurvey survey = facets.survey();
        TriangleMesh mesh;
        MassProperties properties;
        List<MeshBody> bodies;
        if (weld.collapsed() == 0 && survey.sound()) {
            mesh = survey.mesh();
            properties = survey.properties();
            bodies = List.of(survey.body());
        } else {
            MeshCheck check =
                    new MeshCheck(weld.coordinates(metresPerUnit), weld.corners(), fileName, doubt, notices, errands);
            mesh = check.closedMesh(weld.collapsed() > 0);
            properties = MassProperties.of(mesh);
            bodies = check.bodies();
        }
        SizeHints.add(bodies, metresPerUnit, notices);
        return new StlReading(mesh, properties, bodies, facets.ascii(), weld.added(), notices);
    }

    /** First byte of text after a byte order mark and blanks; -1 where there is none. */
    private static int textStart(ByteBuffer look) {
        int i = startsWith(look, 0, "\u00ef\u00bb\u00bf") ? 3 : 0;
        while (i < look.limit() && look.get(i) <= ' ' && look.get(i) > 0) {
            i++;
        }
        return i < look.limit() && look.get(i) > 0 ? i : -1;
    }

    private static boolean startsWith(ByteBuffer look, int from, String small) {
        if (from + small.length() > look.limit()) {
            return false;
        }
        for (int i = 0; i < small.length(); i++) {
            int b = look.get(from + i) & 0xff;
            if ((b >= 'A' && b <= 'Z' ? b + 32 : b) != small.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean holds(ByteBuffer look, String small) {
        for (int i = 0; i < look.limit(); i++) {
            if (startsWith(look, i, small)) {
                return true;
            }
        }
        return false;
    }

    private static boolean holdsZero(ByteBuffer look) {
        for (int i = 0; i < look.limit(); i++) {
            if (look.get(i) == 0) {
                return true;
            }
        }
        return false;
    }
}
