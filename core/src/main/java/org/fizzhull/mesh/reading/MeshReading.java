package org.fizzhull.mesh.reading;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.quantity.Unit;

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
public record MeshReading(
        TriangleMesh mesh, int bodies, boolean ascii, Optional<Unit> ownUnit, int facetsRead, List<Notice> notices) {
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
    public MeshReading {
        notices = List.copyOf(notices);
    }

    /** The same from a file that names its unit. */
    MeshReading in(Unit own) {
        return new MeshReading(mesh, bodies, ascii, Optional.of(own), facetsRead, notices);
    }
}
