package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.repair.MeshCheck;
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
        ByteBuffer bytes = file.slice().order(ByteOrder.LITTLE_ENDIAN);
        FileRefusals refusals = new FileRefusals(fileName);
        boolean packed = FileKind.of(bytes) == FileKind.ZIP;
        if (!packed && unit == null) {
            throw refusals.noUnit();
        }
        FacetFile found = packed ? ThreeMfReader.read(bytes, refusals) : StlReader.read(bytes, refusals);
        List<Notice> notices = new ArrayList<>(found.notices());
        Optional<Unit> own = found.ownUnit();
        if (unit != null && own.isPresent() && own.get() != unit) {
            notices.add(new Notice(
                    "3mf-unit",
                    "The file says its numbers are " + own.get().symbol() + ", the question " + unit.symbol()
                            + ": the question counts. Leave out unit= to take the file at its word."));
        }
        VertexWeld facets = found.facets();
        if (facets.collapsed() > 0) {
            notices.add(new Notice(
                    "mesh-collapsed",
                    facets.collapsed() + " of " + facets.read()
                            + " facets have two corners in one place and were left out."));
        }
        double metresPerUnit = (unit == null ? own.orElseThrow() : unit).toSi(1);
        MeshCheck body = MeshCheck.of(
                facets.welded().coordinates(metresPerUnit),
                facets.welded().corners(),
                fileName,
                found.doubt(),
                notices);
        SizeHints.add(body, metresPerUnit, notices);
        return new Reading(body.mesh(), body.surfaces(), found.ascii(), own, facets.read(), notices);
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
    }
}
