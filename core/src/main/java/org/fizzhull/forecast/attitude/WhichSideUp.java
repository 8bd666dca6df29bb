package org.fizzhull.forecast.attitude;

import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.shape.Shape;

/**
 * Whether the life of a floating piece hangs on which side it keeps up. Still water keeps the side up that is nearest
 * to the centre, gas under the piece can turn it over: a dome floats with a third of its surface dry or with a tenth.
 * Only what is wet fizzes away, so that its time goes as one over the wet share. A notice for the reader, no part of
 * the voyage, which keeps the nearest side up ({@link org.fizzhull.voyage.VoyageForm}). Stateless.
 */
public final class WhichSideUp {
    /** Share of the hull under water of a piece that floats by its gas (judgement). */
    private static final double DEEP = 0.95;

    /** Difference of the two times below which nothing is told, a share (judgement). */
    private static final double TOLD = 0.1;

    private WhichSideUp() {}

    /**
     * {@return what a maker must know; empty where it makes no difference or the hull is not known}
     *
     * @param shape form of the floating piece
     */
    public static Optional<Notice> notice(Shape shape) {
        Optional<Hull> hull = shape.hull();
        if (hull.isEmpty()) {
            return Optional.empty();
        }
        Vec3 up = shape.restingAttitude().nearest();
        // time with the other side up over that with the nearest, less 1: the inverse ratio of the wet shares
        double other = wet(hull.get(), up) / wet(hull.get(), up.times(-1)) - 1;
        if (Math.abs(other) < TOLD) {
            return Optional.empty();
        }
        return Optional.of(new Notice(
                "side-up",
                "How long it fizzes afloat hangs on which side stays up: times are for its nearest side up, which still water"
                        + " keeps there; the other way up it lasts about " + Math.round(100 * Math.abs(other)) + " % "
                        + (other < 0 ? "shorter" : "longer")
                        + ". It is taken to keep its shape as it shrinks; in truth its underside goes first."));
    }

    /** Wet share of the surface, 0 to 1, of a hull nearly awash with its {@code up} upward. */
    private static double wet(Hull hull, Vec3 up) {
        double level = Draft.level(hull, up.x(), up.y(), up.z(), DEEP * hull.volume(), Double.NaN, new PlaneCut());
        double whole = hull.wettedArea(up.x(), up.y(), up.z(), Double.POSITIVE_INFINITY);
        return hull.wettedArea(up.x(), up.y(), up.z(), level) / whole;
    }
}
