package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Reads the body in a file, STL or 3MF, into a closed mesh, or says what is wrong with the file and where. The kind is
 * told by the first bytes; other formats are named and refused. Memory follows the size of the file and what is allowed to
 * come out of it. Stateless.
 */
public final class MeshReader {
    private MeshReader() {}

    /**
     * {@return what the bytes between a buffer's position and its limit hold}
     *
     * @param file the bytes; may be a mapped file
     * @param fileName name used in messages
     * @param unit unit of length of the file's numbers, which counts whatever the file says; null where none is named:
     *     then the file must name its own, as 3MF does and STL does not
     * @throws Refusal for a file that holds no body
     */
    public static Reading read(ByteBuffer file, String fileName, @Nullable Unit unit) {
        ByteBuffer bytes = file.slice();
        if (FileKind.of(bytes) == FileKind.ZIP) {
            return packed(ThreeMfReader.read(bytes, fileName), fileName, unit);
        }
        if (unit == null) {
            throw new Refusal(
                            "missing-key",
                            "shape: unit",
                            "no unit",
                            "mm, cm, m, in, ft or um",
                            "A file of this kind carries no unit: most programs write millimetres, unit=mm.")
                    .at(fileName, 0);
        }
        return StlReader.read(file, fileName, unit.toSi(1));
    }

    private static Reading packed(ThreeMfModel model, String fileName, @Nullable Unit asked) {
        List<Notice> notices = new ArrayList<>(model.notices());
        Unit own = model.unit();
        if (asked != null && asked != own) {
            notices.add(new Notice(
                    "3mf-unit",
                    "The file says its numbers are " + own.symbol() + ", the question " + asked.symbol()
                            + ": the question counts. Leave out unit= to take the file at its word."));
        }
        if (model.weld().read() == 0) {
            throw ThreeMfReader.refused(
                    "a build without a body",
                    "at least one item to be made",
                    "Export the body itself, not its supports.",
                    fileName,
                    0);
        }
        double metresPerUnit = (asked == null ? own : asked).toSi(1);
        Reading reading = StlReader.finish(model.weld(), false, fileName, metresPerUnit, notices, "");
        return reading.in(own);
    }

    /**
     * What the file of a mesh held, once it was found to be, or mended to be, a closed body.
     *
     * @param mesh the closed mesh, m, in the axes of the file
     * @param bodies closed surfaces that the mesh is made of, 1 for a plain body
     * @param ascii true for an ASCII STL, false for any other
     * @param ownUnit unit of length that the file names; empty for STL, which names none
     * @param facetsRead facets in the file, those left out included
     * @param notices what was mended, left out or looks unlikely
     */
    public record Reading(
            TriangleMesh mesh,
            int bodies,
            boolean ascii,
            Optional<Unit> ownUnit,
            int facetsRead,
            List<Notice> notices) {
        /**
         * Copies the lists.
         *
         * @param mesh the closed mesh, m, in the axes of the file
         * @param bodies closed surfaces that the mesh is made of, 1 for a plain body
         * @param ascii true for an ASCII STL, false for any other
         * @param ownUnit unit of length that the file names; empty for STL, which names none
         * @param facetsRead facets in the file, those left out included
         * @param notices what was mended, left out or looks unlikely
         */
        public Reading {
            notices = List.copyOf(notices);
        }

        /** The same from a file that names its unit. */
        Reading in(Unit own) {
            return new Reading(mesh, bodies, ascii, Optional.of(own), facetsRead, notices);
        }
    }
}
