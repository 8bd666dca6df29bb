package org.fizzhull.shape.meshed;

import java.io.Serializable;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.uncertainty.Workers;

/**
 * Depth profiles of a mesh, one per exposure: expensive to make (some tenths of a second), so made once and passed on.
 * A caller that makes many shapes of one mesh, moved or renamed, measures once and passes the result to {@link
 * MeshShape#of(String, String, TriangleMesh, MeshProfiles)}: depths do not depend on where the mesh stands.
 *
 * <p>Error: 0.5 % in volume and 1 % in area over the first 90 % of the volume, unless {@link
 * DepthProfile#relativeError} says otherwise. Immutable.
 *
 * @param all from every facet, closed hollows included
 * @param tray from every facet but the flat ones in the lowest horizontal plane; the same as {@code all} without such
 * @param outside from every facet but those of closed hollows; the same as {@code all} without such. The open hollow of
 *     a bowl is one surface with its outside: {@link MeshShape} tells it apart
 */
record MeshProfiles(DepthProfile all, DepthProfile tray, DepthProfile outside) implements Serializable {
    /**
     * Measures a closed mesh that faces outward.
     *
     * @param mesh closed mesh that faces outward, m
     * @return the profiles of its three exposures
     */
    public static MeshProfiles of(TriangleMesh mesh) {
        return of(new FacetTree(mesh), MassProperties.of(mesh), Workers.CALLER);
    }

    /** The same of a mesh whose facets stand in a tree, measured by some workers. */
    static MeshProfiles of(FacetTree tree, MassProperties body, Workers workers) {
        MeshDepth depth = new MeshDepth(tree, body, workers);
        boolean[] resting = FaceSets.resting(tree.mesh());
        boolean[] hollows = FaceSets.hollows(tree.mesh());
        DepthProfile all = depth.from(new boolean[resting.length]);
        return new MeshProfiles(
                all,
                FaceSets.any(resting) ? depth.from(resting) : all,
                FaceSets.any(hollows) ? depth.from(hollows) : all);
    }

    /** The same for a boat, with what is left of it from outside. */
    MeshProfiles boat(DepthProfile dry) {
        return new MeshProfiles(all, tray, dry);
    }

    /**
     * {@return the profile of an exposure}
     *
     * @param exposure which faces are open
     */
    public DepthProfile of(Exposure exposure) {
        return switch (exposure) {
            case ALL -> all;
            case TRAY -> tray;
            case OUTSIDE -> outside;
        };
    }
}
