package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.shape.Shape;

/**
 * A dunk: the reading of a tared scale under a bowl of bath-warm water while a piece is held wholly under by a hoop
 * that does not touch the bowl; see {@link org.fizzhull.voyage.HeldUnder}. It is compared with the weight of the piece
 * before: above it the piece floats. A proposal of this library, checked by simulation only.
 *
 * <p>Tare the scale with the bowl of water on it, weigh the piece, push it under with the hoop and read 2 to 5 s later.
 * What one dunk leaves of the width of the interval: a third to a half (docs/physics/uncertainty.md). Immutable.
 *
 * @param reading kg
 * @param deviation one standard deviation of the reading, kg
 * @param seconds from when it went under
 * @param mass of that piece before, kg; empty where it is the piece that is asked about
 */
public record HeldPiece(double reading, double deviation, double seconds, OptionalDouble mass) implements Serializable {
    /** The hoop, drops, and a display that still moves, kg (assumed; a bias of 1 g would cost coverage at 1.5 g). */
    public static final double DEVIATION = 2e-3;

    /**
     * Chance that the scale feels the plume of the bath (assumed): in a steady flow the scale carries whatever changes
     * the force on the piece (balance of momentum of all that is in the bowl); in a narrow bowl the flow may be another
     * one.
     */
    public static final double PLUME_FELT = 0.9;

    /**
     * Two pieces of one mould differ in every size across by this, m, one standard deviation: how far its halves close,
     * how full it is, how rough the face comes out (assumed). The lift of a ball of 65 mm differs by 1 g for it.
     */
    public static final double PIECE_SIZE = 0.15e-3;

    /** Before that the layer of gas is not full and the display runs, s (assumed). */
    static final double EARLIEST = 2;

    /** After that the piece is another one, s (assumed). */
    static final double LATEST = 5;

    /** Longest time under that is taken, s: nobody holds it for longer. */
    private static final double LONGEST = 30;

    /**
     * Refuses what no scale shows of a piece, and a time outside 0 to 30 s.
     *
     * @param reading kg
     * @param deviation one standard deviation of the reading, kg
     * @param seconds from when it went under
     * @param mass of that piece before, kg; empty where it is the piece that is asked about
     * @throws Refusal {@code out-of-range}
     */
    public HeldPiece {
        if (!(reading > 0 && Double.isFinite(reading))) {
            throw refusal(1e3 * reading + " g", "more than 0 g", "Tare the scale with the bowl of water on it.");
        }
        if (!(deviation > 0 && Double.isFinite(deviation))) {
            throw refusal("a spread of " + 1e3 * deviation + " g", "more than 0 g", "Leave the spread away.");
        }
        if (!(seconds > 0 && seconds <= LONGEST)) {
            throw refusal(seconds + " s", "0 to 30 s under water", "Read it 2 to 5 s after it went under.");
        }
        if (mass.isPresent() && !(mass.getAsDouble() > 0)) {
            throw refusal(1e3 * mass.getAsDouble() + " g before", "more than 0 g", "Weigh it before it gets wet.");
        }
    }

    /**
     * {@return by how much the lifts of two pieces of one mould differ, kg, one standard deviation: each face is off
     * by half of {@link #PIECE_SIZE}, rho S e/2}
     *
     * @param shape of the pieces
     * @param bath its water
     */
    public static double ownLift(Shape shape, Bath bath) {
        return 0.5 * bath.density() * shape.surface() * PIECE_SIZE;
    }

    /** A refusal of the field that holds dunks. */
    private static Refusal refusal(String read, String allowed, String hint) {
        return new Refusal("out-of-range", "measured lift", read, allowed, hint);
    }

    /**
     * {@return a reading, kg, after so many seconds, of the piece that is asked about; true to 2 g}
     *
     * @param reading kg
     * @param seconds from when it went under
     */
    public static HeldPiece of(double reading, double seconds) {
        return new HeldPiece(reading, DEVIATION, seconds, OptionalDouble.empty());
    }

    /**
     * {@return this reading as that of a piece of another weight before}
     *
     * @param kilograms weight of that piece before it got wet, kg
     */
    public HeldPiece weighing(double kilograms) {
        return new HeldPiece(reading, deviation, seconds, OptionalDouble.of(kilograms));
    }

    /**
     * {@return this reading with a spread that was entered}
     *
     * @param kilograms one standard deviation of the reading, kg
     */
    public HeldPiece within(double kilograms) {
        return new HeldPiece(reading, kilograms, seconds, mass);
    }

    /** Whether it was read when it says most: the layer full, little of the piece gone. */
    public boolean timely() {
        return seconds >= EARLIEST && seconds <= LATEST;
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
