package org.fizzhull.mesh;

/**
 * What can be known of a surface while its facets arrive: whether edges pair and the facets hang together, and the sums
 * for volume, area, centroid and inertia. A sound file, one closed surface facing outward, needs no second look; for any
 * other {@link MeshCheck} starts from the facets again.
 */
final class FacetSurvey {
    private final VertexWeld weld;
    private final EdgeFront front;
    private MassSums sums = new MassSums(0, 0, 0);
    private int done;
    private boolean easy = true;

    /** @param facets facets that will come, or more */
    FacetSurvey(VertexWeld weld, int facets) {
        this.weld = weld;
        front = new EdgeFront(facets);
    }

    /** Takes the facets that came since the last call. */
    void advance() {
        int to = weld.facets();
        if (!easy || to == done) {
            return;
        }
        float[] xyz = weld.roomyCoordinates();
        int[] corners = weld.roomyCorners();
        if (done == 0) {
            sums = new MassSums(xyz[0], xyz[1], xyz[2]);
        }
        easy = front.advance(corners, weld.vertices(), to);
        sums.add(xyz, corners, done, to);
        done = to;
    }

    /** Whether the facets are one closed surface, all facing outward. */
    boolean sound() {
        double volume = sums.volume();
        return easy
                && done > 0
                && front.closedAndOne()
                && volume > 0
                && sums.fluxSpread() <= MeshBodies.FLUX_TOLERANCE * volume;
    }

    /** The sums; only where {@link #sound}. */
    MassProperties properties(double metresPerUnit) {
        return sums.properties(metresPerUnit);
    }
}
