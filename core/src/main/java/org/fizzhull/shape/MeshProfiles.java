package org.fizzhull.shape;

import org.fizzhull.mesh.DepthColumns;
import org.fizzhull.mesh.FaceSets;
import org.fizzhull.mesh.MeshDepth;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Depth profiles of a mesh, one an exposure: dear to make (0.1 to 3 s), so made once and handed on.
 *
 * @param all from every facet, closed hollows included
 * @param tray from every facet but the flat ones in the lowest horizontal plane; the same as {@code all} without such
 * @param outside from every facet but those of closed hollows and, of a boat, those that stay dry; the same as
 *     {@code all} without such
 */
public record MeshProfiles(DepthProfile all, DepthProfile tray, DepthProfile outside) {
    /** Measures a closed mesh that faces outward and is no boat. */
    public static MeshProfiles of(TriangleMesh mesh) {
        return of(mesh, new boolean[0]);
    }

    /** Measures a closed mesh that faces outward, with the facets flagged that stay dry; no flags where it is no boat. */
    static MeshProfiles of(TriangleMesh mesh, boolean[] dry) {
        DepthProfile all = profile(MeshDepth.of(mesh, false, false));
        boolean rests = FaceSets.any(FaceSets.resting(mesh));
        boolean hollow = FaceSets.any(FaceSets.hollows(mesh));
        return new MeshProfiles(
                all,
                rests ? profile(MeshDepth.of(mesh, true, false)) : all,
                dry.length > 0
                        ? profile(MeshDepth.ofBoat(mesh, dry))
                        : hollow ? profile(MeshDepth.of(mesh, false, true)) : all);
    }

    /** The profile of an exposure. */
    public DepthProfile of(Exposure exposure) {
        return switch (exposure) {
            case ALL -> all;
            case TRAY -> tray;
            case OUTSIDE -> outside;
        };
    }

    private static DepthProfile profile(DepthColumns columns) {
        return new DepthProfile(columns.depth(), columns.volume(), columns.area(), columns.relativeError());
    }
}
