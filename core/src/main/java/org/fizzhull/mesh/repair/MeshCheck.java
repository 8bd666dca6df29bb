package org.fizzhull.mesh.repair;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Makes a closed, outward facing mesh of a facet list, or refuses it: edges are paired, small faults repaired and
 * reported as notices, bodies and cavities distinguished, overlaps united or refused, and the fluxes through each
 * surface along x, y and z, which all equal the enclosed volume of a closed one, compared.
 *
 * @param mesh the closed mesh, without vertices that belong to no facet
 * @param surfaces number of closed surfaces that it is made of
 * @param volume volume enclosed, m3
 */
public record MeshCheck(TriangleMesh mesh, int surfaces, double volume) {
    /**
     * {@return the mesh of a facet list}
     *
     * @param xyz vertices, m; handed over
     * @param corners three vertices a facet; handed over
     * @param fileName name used in refusals
     * @param doubt what was suspicious about the file already, part of a sentence; empty for nothing
     * @param notices list to which what was repaired or found is added
     * @throws org.fizzhull.quantity.Refusal for facets that enclose no body
     */
    public static MeshCheck of(double[] xyz, int[] corners, String fileName, String doubt, List<Notice> notices) {
        MeshRefusals refusals = new MeshRefusals(fileName, doubt);
        if (corners.length == 0) {
            throw refusals.flat("facets that all shrink to a line or a point");
        }
        double[] vertices = xyz;
        EdgePairing pairing = new EdgePairing(corners, xyz.length / 3);
        if (!pairing.plain()) {
            MeshMending mending = new MeshMending(xyz, pairing, notices);
            pairing = mending.mend();
            vertices = mending.xyz();
            refuseUnclosed(vertices, pairing, refusals);
        }
        int oneSided = pairing.joined.contradiction();
        if (oneSided >= 0) {
            throw refusals.oneSided(PlaceWords.vertex(vertices, pairing.corners[3 * oneSided]));
        }
        Surfaces found = new MeshBodies(vertices, pairing, refusals, notices).arranged();
        return new MeshCheck(TriangleMesh.compact(found.xyz(), found.corners()), found.count(), found.volume());
    }

    private static void refuseUnclosed(double[] xyz, EdgePairing pairing, MeshRefusals refusals) {
        if (pairing.corners.length == 0) {
            throw refusals.flat("facets that lie back to back");
        }
        if (pairing.open.length > 0) {
            throw refusals.open(pairing.open.length, PlaceWords.edge(xyz, pairing.corners, pairing.open[0]));
        }
        if (pairing.crowded.length > 0) {
            throw refusals.crowded(pairing.crowded.length, PlaceWords.edge(xyz, pairing.corners, pairing.crowded[0]));
        }
    }
}
