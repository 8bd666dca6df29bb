package org.fizzhull.drying.place;

import java.util.Optional;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.shape.Shape;

/** What a piece stands on while it dries, which decides the faces that are open. */
public enum Standing {
    /** On a rack: every face. */
    RACK("rack"),
    /** On a tray: not the flat face it rests on; a ball rests on a point. */
    TRAY("tray"),
    /** On a cloth on a table: as on a tray, since a cloth passes little vapour sideways [assumed]. */
    CLOTH("cloth"),
    /** Left in its mould: the flat face only; in a mould that closes all round, nothing. */
    MOULD("mould");

    /** A mould that closes all round: vapour stays, gas finds the seam [assumed]. */
    private static final Wrap CLOSED_MOULD = new Wrap("closed mould", 1e-3, 0, false, "seam not counted [assumed]");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** The word people write. */
    public String word() {
        return word;
    }

    /** The standing of that word. */
    public static Optional<Standing> named(String word) {
        for (Standing standing : values()) {
            if (standing.word.equals(word)) {
                return Optional.of(standing);
            }
        }
        return Optional.empty();
    }

    /** The way out for vapour. May take some tenths of a second ({@link Opening#of}): keep the result. */
    public Opening opening(Shape shape) {
        if (this == TRAY || this == CLOTH) {
            return Opening.of(shape, Exposure.TRAY);
        }
        double flat = flatFace(shape);
        return this == MOULD && flat > 0 ? Opening.face(shape.volume(), flat) : Opening.of(shape, Exposure.ALL);
    }

    /**
     * An open phase on this standing.
     *
     * @param opening of {@link #opening} for the same shape
     * @param seconds how long
     */
    public DryingPhase phase(Shape shape, Opening opening, RoomAir air, double seconds) {
        DryingPhase open = DryingPhase.open(opening, air, seconds);
        return this == MOULD && flatFace(shape) == 0 ? open.in(CLOSED_MOULD, 0) : open;
    }

    /** Area of the flat face a shape rests on, m2; 0 where it has none. */
    private static double flatFace(Shape shape) {
        double all = shape.depthProfile(Exposure.ALL).area(0);
        double flat = all - shape.depthProfile(Exposure.TRAY).area(0);
        return flat > 1e-6 * all ? flat : 0;
    }
}
