package org.fizzhull.mesh.repair;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.quantity.Refusal;

/**
 * Makes a closed, outward facing mesh of a facet list, or refuses it: edges are paired, small faults mended and said,
 * bodies and cavities told apart, overlaps looked for, and the volume held against its three fluxes.
 */
public final class MeshCheck {
    private final String fileName;
    private final String doubt;
    private final List<Notice> notices;
    private double[] xyz;
    private int[] corners;
    private List<MeshBody> bodies = List.of();

    /**
     * @param xyz vertices, m; handed over
     * @param corners three vertices a facet; handed over
     * @param fileName name used in refusals
     * @param doubt what was already suspicious about the file, or empty
     * @param notices takes what was found
     */
    public MeshCheck(double[] xyz, int[] corners, String fileName, String doubt, List<Notice> notices) {
        this.xyz = xyz;
        this.corners = corners;
        this.fileName = fileName;
        this.doubt = doubt;
        this.notices = notices;
    }

    /**
     * {@return the mesh}
     *
     * @param strayVertices whether some vertices may belong to no facet
     */
    public TriangleMesh closedMesh(boolean strayVertices) {
        MeshRefusals refusals = new MeshRefusals(fileName, doubt);
        if (corners.length == 0) {
            throw refusals.flat("facets that all shrink to a line or a point");
        }
        EdgePairing pairing = EdgePairing.of(corners, xyz.length / 3);
        boolean mended = false;
        if (!pairing.closed() || pairing.shared() > 0) {
            MeshMending mending = new MeshMending(xyz, corners, pairing, notices);
            pairing = mending.mend();
            corners = mending.corners();
            xyz = mending.xyz();
            mended = true;
            refuseUnclosed(pairing, refusals);
        }
        if (pairing.joined().contradictions() > 0) {
            int facet = pairing.joined().firstContradiction();
            throw refusals.oneSided(PlaceWords.vertex(xyz, corners[3 * facet]));
        }
        MeshBodies arranged = new MeshBodies(xyz, corners, refusals, notices);
        arranged.arrange(pairing);
        xyz = arranged.xyz();
        corners = arranged.corners();
        bodies = arranged.list();
        boolean stray = strayVertices || mended || arranged.droppedFacets();
        arranged.checkOverlaps();
        return stray ? TriangleMesh.compact(xyz, corners) : new TriangleMesh(xyz, corners);
    }

    private void refuseUnclosed(EdgePairing pairing, MeshRefusals refusals) {
        if (corners.length == 0) {
            throw refusals.flat("facets that lie back to back");
        }
        Refusal refusal = null;
        if (pairing.open() > 0) {
            refusal = refusals.open(pairing.open(), PlaceWords.edge(xyz, corners, pairing.openEdges()[0]));
        } else if (pairing.crowded() > 0) {
            refusal = refusals.crowded(pairing.crowded(), PlaceWords.edge(xyz, corners, pairing.firstCrowded()));
        }
        if (refusal != null) {
            throw refusal;
        }
    }

    /** {@return the surfaces found; only after the check} */
    public List<MeshBody> bodies() {
        return bodies;
    }
}
