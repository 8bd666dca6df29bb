package org.fizzhull.shape.meshed;

import java.io.Serializable;
import java.util.BitSet;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.measure.Shells;
import org.fizzhull.shape.body.PolyhedronHull;
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
 * @param afloat from every facet but the flat ones that it keeps up and dry while it floats; the same as {@code all}
 *     without such
 */
record MeshProfiles(DepthProfile all, DepthProfile tray, DepthProfile outside, DepthProfile afloat)
        implements Serializable {
    /**
     * Profiles of a body of which no flat face keeps up while it floats.
     *
     * @param all from every facet
     * @param tray from every facet but the flat ones in the lowest horizontal plane
     * @param outside from every facet but those of closed hollows
     */
    MeshProfiles(DepthProfile all, DepthProfile tray, DepthProfile outside) {
        this(all, tray, outside, all);
    }

    /**
     * Measures a closed mesh that faces outward.
     *
     * @param mesh closed mesh that faces outward, m
     * @return the profiles of its three exposures
     */
    public static MeshProfiles of(TriangleMesh mesh) {
        PolyhedronHull hull = new PolyhedronHull(mesh, 0);
        return of(hull, RestingAttitude.of(hull, Silhouette.area(mesh)), Workers.CALLER);
    }

    /** The same of a hull that lies in an attitude, measured by some workers. */
    static MeshProfiles of(PolyhedronHull hull, RestingAttitude rest, Workers workers) {
        TriangleMesh mesh = hull.mesh();
        MeshDepth depth = new MeshDepth(hull.tree(), hull.properties(), workers);
        BitSet resting = FaceSets.resting(mesh);
        BitSet hollows = new Shells(mesh).hollows();
        DepthProfile all = depth.from(new BitSet());
        DepthProfile tray = resting.isEmpty() ? all : depth.from(resting);
        DepthProfile outside = hollows.isEmpty() ? all : depth.from(hollows);
        return new MeshProfiles(all, tray, outside, afloat(hull, rest, resting, depth, all, tray));
    }

    /**
     * What is left with the flat facets that keep up afloat shut. Measured anew only where they are not those it rests
     * on: of two flats as near as each other the lower one is taken.
     */
    private static DepthProfile afloat(
            PolyhedronHull hull,
            RestingAttitude rest,
            BitSet resting,
            MeshDepth depth,
            DepthProfile all,
            DepthProfile tray) {
        Vec3 n = rest.nearest();
        Vec3 c = hull.centroid();
        double nearest = hull.reach(n.x(), n.y(), n.z()) - n.dot(c);
        double base = hull.reach(0, 0, -1) + c.z();
        if (base <= nearest + RestingAttitude.LEVEL * rest.height()
                && rest.keepsUp(FaceSets.area(hull.mesh(), resting))) {
            return tray;
        }
        BitSet flat = FaceSets.level(hull.mesh(), n, RestingAttitude.LEVEL * rest.height());
        return rest.keepsUp(FaceSets.area(hull.mesh(), flat)) ? depth.from(flat) : all;
    }

    /** The same for a boat, with what is left of it from outside; its rim is no flat face that counts. */
    MeshProfiles boat(DepthProfile dry) {
        return new MeshProfiles(all, tray, dry, all);
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
