package org.fizzhull.drying.place;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;

/**
 * What a piece stands on while it dries, which decides the faces that are open and so the depth that vapour has to
 * cross: a half ball dries slower on its flat face than on a rack.
 */
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

    /** Word people write, stable. */
    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** {@return the word people write} */
    public String word() {
        return word;
    }

    /**
     * {@return the standing of that word}
     *
     * @param word word as the person wrote it
     */
    public static Optional<Standing> named(String word) {
        Given.all("word", word);
        for (Standing standing : values()) {
            if (standing.word.equals(word)) {
                return Optional.of(standing);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the way out for vapour} May take some tenths of a second ({@link Opening#of}): keep the result.
     *
     * @param shape form of the piece
     */
    public Opening opening(Shape shape) {
        if (this == TRAY || this == CLOTH) {
            return Opening.of(shape, DepthProfile.Exposure.TRAY);
        }
        double flat = flatFace(shape);
        return this == MOULD && flat > 0
                ? Opening.face(shape.volume(), flat)
                : Opening.of(shape, DepthProfile.Exposure.ALL);
    }

    /**
     * {@return an open phase on this standing}
     *
     * @param shape form of the piece
     * @param opening of {@link #opening} for the same shape
     * @param air air of the room
     * @param seconds how long
     */
    public DryingPhase phase(Shape shape, Opening opening, RoomAir air, double seconds) {
        Given.all("shape", shape);
        DryingPhase open = DryingPhase.open(opening, air, seconds);
        return this == MOULD && flatFace(shape) == 0 ? open.in(CLOSED_MOULD, 0) : open;
    }

    /**
     * Area of the flat face a shape rests on, m2; 0 where it has none: the difference of the areas that both profiles
     * begin with.
     */
    private static double flatFace(Shape shape) {
        double all = shape.depthProfile(DepthProfile.Exposure.ALL).area(0);
        double flat = all - shape.depthProfile(DepthProfile.Exposure.TRAY).area(0);
        return flat > 1e-6 * all ? flat : 0;
    }

    /**
     * The ways out for vapour of one shape on one standing: as it lies there, and from all around once it is taken off.
     *
     * <p>Kept by whoever asks for many plans of one shape ({@code forecast.making.DryingConditions#plan}). Immutable.
     *
     * @param standing what the piece lies on
     * @param lying as it lies there
     * @param around taken off, wrapped or put away
     */
    public record Openings(Standing standing, Opening lying, Opening around) {
        /**
         * Refuses what is missing.
         *
         * @param standing what the piece lies on
         * @param lying as it lies there
         * @param around taken off, wrapped or put away
         */
        public Openings {
            Given.all("standing, lying, around", standing, lying, around);
        }

        /**
         * {@return the openings of a shape} May take some tenths of a second for a shape with edges: keep the result for as
         * long as shape and standing stay.
         *
         * @param shape form of the piece
         * @param standing what the piece lies on
         */
        public static Openings of(Shape shape, Standing standing) {
            Opening lying = standing.opening(shape);
            return new Openings(standing, lying, standing == Standing.RACK ? lying : Standing.RACK.opening(shape));
        }
    }
}
