package org.fizzhull.shape.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.mesh.hollow.OpenHollows;
import org.jspecify.annotations.Nullable;

/**
 * The open hollow of a mesh as it lies: a boat where it holds at least a tenth of the closed hull, as for outlines;
 * less is a dimple that fills (the limits are assumed).
 *
 * <p>Turns what {@link OpenHollows} found into the {@link Hollow} that hydrostatics uses, the depth profile of a boat
 * that fizzes from outside alone, and the notices about hollows that are not counted. Error: exact for the facets.
 * Immutable, safe for use by several threads. Used by {@link MeshShape}.
 */
public final class MeshHollow {
    /** Share of the closed hull from which a hollow makes a boat (assumed). */
    private static final double BOAT = 0.1;

    /** Share below which a hollow is not worth a notice (assumed). */
    private static final double DIMPLE = 0.01;

    /** The hollow of a boat; null for any other body. */
    private final @Nullable Hollow hollow;
    /** What the boat's hollow was made of; null for any other body. */
    private final @Nullable OpenHollows found;

    /** All open hollows, small ones too. */
    private final OpenHollows open;

    /** Notices about hollows that do not count. */
    private final List<Notice> notices;

    private MeshHollow(@Nullable Hollow hollow, @Nullable OpenHollows found, OpenHollows open, List<Notice> notices) {
        this.open = open;
        this.hollow = hollow;
        this.found = found;
        this.notices = notices;
    }

    /** Of a mesh in the body frame, and its open hollows. */
    public static MeshHollow of(PolyhedronHull hull, OpenHollows found) {
        double volume = hull.volume();
        if (found.none()) {
            return new MeshHollow(null, null, found, List.of());
        }
        // of the closed hull, material and air
        double share = found.air() / (volume + found.air());
        if (share < BOAT) {
            return new MeshHollow(null, null, found, share < DIMPLE ? List.of() : List.of(dimple(share)));
        }
        // what displaces water below the rim: less than the whole closed hull where material stands higher
        PolyhedronHull closed = new PolyhedronHull(found.closed(), hull.relativeError());
        PlaneCut below = new PlaneCut();
        closed.cut(0, 0, 1, found.rim() * (1 - 1e-9), below);
        Hollow hollow = new Hollow(
                closed,
                found.rim(),
                new Hollow.Rim.Corners(found.crest()),
                found.air(),
                below.volume,
                found.wall(hull.tree()));
        List<Notice> notices = new ArrayList<>(1);
        if (found.lowerAir() >= DIMPLE * volume) {
            notices.add(new Notice(
                    "mesh-lower-hollow",
                    "Other hollows on top, with room for " + Math.round(1e7 * found.lowerAir()) / 10.0
                            + " cm3, have a lower rim than the largest and are taken as full of water."));
        }
        return new MeshHollow(hollow, found, found, notices);
    }

    /**
     * {@return that a hollow of a share of the closed hull is too small for a boat}
     *
     * @param share volume of the hollow over that of the closed hull, 0 to 1
     */
    public static Notice dimple(double share) {
        return new Notice(
                "dimple",
                "The hollow on top is " + Math.round(100 * share)
                        + " % of the closed hull, too little for a boat: it is taken as full of water.");
    }

    /** The hollow of a boat; empty for any other body. */
    public Optional<Hollow> hollow() {
        return Optional.ofNullable(hollow);
    }

    /**
     * What is left of a boat from outside, rim and hollow dry: the loss of the closed hull below the rim. True till the
     * front comes through the thinnest wall, where the boat ends; the rest of the table only leads to 0. Empty where it
     * is no boat.
     *
     * <p>The table is that of the closed body below the rim, air included. The air is inert: it is taken off as a core,
     * less the material above the rim, which stays; where there is more of that than air, the surplus is added instead.
     */
    public Optional<DepthProfile> outside() {
        if (hollow == null || found == null) {
            return Optional.empty();
        }
        DepthProfile below = found.depthFromOutside();
        // material above the rim, m3, which does not get wet
        double above = hollow.closed().volume() - hollow.carried();
        double core = hollow.volume() - above;
        return Optional.of(core >= 0 ? below.without(core) : below.with(-core));
    }

    /** All open hollows of the mesh as it lies. */
    public OpenHollows open() {
        return open;
    }

    /** What the reader of an answer must know of hollows that do not count. */
    public List<Notice> notices() {
        return notices;
    }
}
