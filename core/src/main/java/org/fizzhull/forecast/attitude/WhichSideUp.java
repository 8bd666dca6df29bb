package org.fizzhull.forecast.attitude;

import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.numeric.BracketedRoot;
import org.fizzhull.shape.Shape;

/**
 * Whether the life of a floating piece hangs on which side it keeps up. Still water keeps the side up that is nearest
 * to the centre; gas under the piece may turn it over, which nobody has watched. A notice for the reader, no part of the
 * voyage ({@link org.fizzhull.voyage.VoyageForm}). Stateless.
 *
 * <ol>
 *   <li>A flat face that keeps up stays dry ({@link Shape#depthProfileAfloat}): told is how much sooner the piece is
 *       gone where it rolls about and every face gets wet.
 *   <li>Of another piece only what is wet fizzes away, so that its time goes as one over the wet share: told is the time
 *       with the other side up.
 * </ol>
 */
public final class WhichSideUp {
    /** Share of the hull under water of a piece that floats by its gas (judgement). */
    private static final double DEEP = 0.95;

    /** Share of the volume that counts as the end. */
    private static final double END = 0.01;

    /** Difference of the two times below which there is no notice, a share (judgement). */
    private static final double TOLD = 0.1;

    /** A depth is found to this, m. */
    private static final double ACCURACY = 1e-9;

    private WhichSideUp() {}

    /**
     * {@return what a maker must know; empty where it makes no difference or the hull is not known}
     *
     * @param shape form of the floating piece
     */
    public static Optional<Notice> notice(Shape shape) {
        RestingAttitude rest = shape.restingAttitude();
        Optional<DepthProfile> kept = shape.depthProfileAfloat(rest);
        if (kept.isPresent()) {
            double rolling = ending(shape.depthProfile(DepthProfile.Exposure.ALL)) / ending(kept.get()) - 1;
            return told(
                    rolling,
                    "How long it fizzes afloat hangs on its flat side: times are for that side up and dry, which still water"
                            + " keeps there; rolled about by its gas until every side is wet, it lasts about ",
                    ".");
        }
        Optional<Hull> hull = shape.hull();
        if (hull.isEmpty()) {
            return Optional.empty();
        }
        Vec3 up = rest.nearest();
        // time with the other side up over that with the nearest, less 1: the inverse ratio of the wet shares
        double other = wet(hull.get(), up) / wet(hull.get(), up.times(-1)) - 1;
        return told(
                other,
                "How long it fizzes afloat hangs on which side stays up: times are for its nearest side up, which still water"
                        + " keeps there; the other way up it lasts about ",
                ". It is taken to turn about and keep its shape as it shrinks.");
    }

    /** The notice of a time that is longer by a share, negative for shorter, between its words. */
    private static Optional<Notice> told(double longer, String before, String after) {
        return Math.abs(longer) < TOLD
                ? Optional.empty()
                : Optional.of(new Notice(
                        "side-up",
                        before + Math.round(100 * Math.abs(longer)) + " % " + (longer < 0 ? "shorter" : "longer")
                                + after));
    }

    /** Depth at which a hundredth of the volume is left, m. */
    private static double ending(DepthProfile profile) {
        double end = END * profile.volume(0);
        return BracketedRoot.find(depth -> profile.volume(depth) - end, 0, profile.deepest(), ACCURACY);
    }

    /** Wet share of the surface, 0 to 1, of a hull nearly awash with its {@code up} upward. */
    private static double wet(Hull hull, Vec3 up) {
        double level = Draft.level(hull, up.x(), up.y(), up.z(), DEEP * hull.volume(), Double.NaN, new PlaneCut());
        double whole = hull.wettedArea(up.x(), up.y(), up.z(), Double.POSITIVE_INFINITY);
        return hull.wettedArea(up.x(), up.y(), up.z(), level) / whole;
    }
}
