package org.fizzhull.shape.meshed;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.ChordError;
import org.fizzhull.mesh.measure.Shells;

/**
 * What the reader of any answer about a mesh must know of its form, as notices:
 * <ul>
 *   <li>{@code mesh-rough}: the depth profile is good to 3 % or worse, so times and chances widen;
 *   <li>{@code mesh-chords}: the facets stand for a round surface whose volume differs by 0.3 % or more;
 *   <li>{@code mesh-cavity-lift}: closed hollows of 0.1 % of the volume or more are not counted as lift.
 * </ul>
 * The thresholds are judgements, each given with its reason. Stateless. Used by {@link MeshShape}; what its open hollow
 * asks for is added by {@link MeshHollow}.
 */
final class MeshNotices {
    /** Share of the volume from which the error of the facets is reported: a gram or so of a usual piece. */
    private static final double ROUGH = 0.003;

    /** Error of the depth profile from which it is reported: then times are off by more than a few hundredths. */
    private static final double ROUGH_IN_DEPTH = 0.03;

    /** Share of the volume from which closed hollows get a notice. */
    private static final double CAVITY = 0.001;

    private MeshNotices() {}

    /**
     * The notices of a mesh, in a fixed order.
     *
     * @param mesh closed mesh that faces outward, m
     * @param volume its volume, m3
     * @param chords error of its facets against the surface they follow
     * @param inDepth bound on the relative error of its depth profile
     */
    static List<Notice> of(TriangleMesh mesh, double volume, ChordError chords, double inDepth) {
        List<Notice> notices = new ArrayList<>();
        if (inDepth >= ROUGH_IN_DEPTH) {
            notices.add(new Notice(
                    "mesh-rough",
                    "The surface is rough, or facets differ much: what is left in the course of fizzing and drying is good to"
                            + " about "
                            + (inDepth < 1 ? Math.round(100 * inDepth) + " % only" : "no digit")
                            + ", which widens the chances and the times. Volume, float limit and attitudes are not touched by"
                            + " it."));
        }
        if (Math.abs(chords.volume()) >= ROUGH * volume) {
            notices.add(new Notice(
                    "mesh-chords",
                    "The facets seem to follow a round surface that holds about "
                            + Math.round(1000 * Math.abs(chords.volume()) / volume) / 10.0 + " % "
                            + (chords.volume() > 0 ? "more" : "less")
                            + " than they do; volume and float limit are off by as much. A finer mesh mends it."));
        }
        double sealed = new Shells(mesh).sealed();
        if (sealed >= CAVITY * volume) {
            notices.add(new Notice(
                    "mesh-cavity-lift",
                    "The " + Math.round(1e7 * sealed) / 10.0
                            + " cm3 of closed hollows are not counted as lift, as if they were full of water: kept dry they"
                            + " would carry as many grams more."));
        }
        return List.copyOf(notices);
    }
}
