package org.fizzhull.mesh.reading;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.MassProperties;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.repair.MeshBody;

/**
 * What an STL file held, once it was found to be, or mended to be, a closed body.
 *
 * @param mesh the closed mesh, m, in the axes of the file
 * @param properties volume (cavities taken away), area, centroid and second moments of the body
 * @param bodies the surfaces the mesh is made of, largest first; one for a plain body
 * @param ascii true for an ASCII file, false for a binary one
 * @param facetsRead facets in the file, those left out included
 * @param notices what was mended, left out or looks unlikely
 */
public record StlReading(
        TriangleMesh mesh,
        MassProperties properties,
        List<MeshBody> bodies,
        boolean ascii,
        int facetsRead,
        List<Notice> notices) {
    /** Copies the lists. */
    public StlReading {
        bodies = List.copyOf(bodies);
        notices = List.copyOf(notices);
    }
}
