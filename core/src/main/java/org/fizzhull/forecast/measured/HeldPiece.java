package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.SerialForm;
import org.fizzhull.shape.Shape;

/**
 * A dunk: what a tared scale under a bowl of bath-warm water shows while a piece is held wholly under by a hoop
 * that does not touch the bowl; see {@link org.fizzhull.voyage.HeldUnder}. It is compared with the weight of the piece
 * before: above it the piece floats. A proposal of this library, checked by simulation only.
 *
 * <pre>{@code
 * HeldPiece held = HeldPiece.of(Units.grams(151), 5);                      // one reading after 5 s
 * HeldPiece read = HeldPiece.of(Units.grams(150), 2)                       // several of one piece, as from a film of the display
 *         .then(Units.grams(151), 4).then(Units.grams(151), 6).weighing(Units.grams(142));
 * }</pre>
 *
 * <p>Tare the scale with the bowl of water on it, weigh the piece, push it under with the hoop and read 2 to 5 s later.
 * Several readings of one piece share what does not change while it is held: half of the variance of each
 * ({@link #covariance}). What one dunk leaves of the width of the interval: a third to six tenths
 * (docs/physics/uncertainty.md). Immutable.
 *
 * @param readings of this piece, in their order in time; one at least
 * @param mass of that piece before, kg; empty where it is the piece that is asked about
 */
public record HeldPiece(List<LiftReading> readings, OptionalDouble mass) implements Serializable {
    /** Field of dunks in refusals. */
    private static final String FIELD = "measured lift";

    /**
     * The hoop, drops, and a display that still moves, kg, one standard deviation of one reading (assumed; a bias of 1 g
     * would cost coverage at 1.5 g).
     */
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

    /**
     * Share of the variance of a reading that is the same in every reading of one dunk (assumed): the zero of the scale,
     * what the hoop and wet sides of the bowl displace. The rest is new each time: the hand, waves, the step of the display.
     */
    public static final double STAYS = 0.5;

    /** The display follows, and waves and hand change, within this time, s (assumed). */
    public static final double SETTLING = 1;

    /** Readings nearer to one another than this are one and the same number on the display, s (assumed). */
    private static final double APART = 0.5;

    /** Before that the layer of gas is not full and the display runs, s (assumed). */
    private static final double EARLIEST = 2;

    /** After that a single reading is of another piece, s (assumed). */
    private static final double LATEST = 5;

    /**
     * Refuses a dunk without a reading, and readings that do not follow one another by half a second or more.
     *
     * @param readings of this piece, in their order in time; one at least
     * @param mass of that piece before, kg; empty where it is the piece that is asked about
     * @throws Refusal {@code missing-value}, {@code out-of-range}
     */
    public HeldPiece {
        Given.all("readings, mass", readings, mass);
        readings = List.copyOf(readings);
        if (readings.isEmpty()) {
            throw new Refusal(
                    "missing-value",
                    FIELD,
                    "no reading",
                    "one reading at least",
                    "Read it 2 to 5 s after it went under.");
        }
        for (int i = 1; i < readings.size(); i++) {
            double before = readings.get(i - 1).seconds();
            double seconds = readings.get(i).seconds();
            if (!(seconds - before >= APART)) {
                throw refusal(
                        Decimals.text(before, 8) + " s, then " + Decimals.text(seconds, 8) + " s",
                        "readings of one piece in their order, half a second apart or more",
                        "Write them as the clock ran, such as 150 g after 2 s then 151 g after 4 s; give another piece"
                                + " as a dunk of its own.");
            }
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
    static Refusal refusal(String read, String allowed, String hint) {
        return new Refusal("out-of-range", FIELD, read, allowed, hint);
    }

    /**
     * {@return a reading, kg, after so many seconds, of the piece that is asked about; true to 2 g}
     *
     * @param reading kg
     * @param seconds from when it went under
     */
    public static HeldPiece of(double reading, double seconds) {
        return new HeldPiece(List.of(new LiftReading(reading, DEVIATION, seconds)), OptionalDouble.empty());
    }

    /**
     * {@return this piece with one more reading, true to 2 g, while it is still held under}
     *
     * @param reading kg
     * @param seconds from when it went under, half a second or more after the reading before
     */
    public HeldPiece then(double reading, double seconds) {
        List<LiftReading> more = new ArrayList<>(readings);
        more.add(new LiftReading(reading, DEVIATION, seconds));
        return new HeldPiece(more, mass);
    }

    /**
     * {@return these readings as those of a piece of another weight before}
     *
     * @param kilograms weight of that piece before it got wet, kg
     */
    public HeldPiece weighing(double kilograms) {
        return new HeldPiece(readings, OptionalDouble.of(kilograms));
    }

    /**
     * {@return this piece, its last reading with a spread that was entered}
     *
     * @param kilograms one standard deviation of the reading, kg
     */
    public HeldPiece within(double kilograms) {
        List<LiftReading> all = new ArrayList<>(readings);
        int last = all.size() - 1;
        all.set(
                last,
                new LiftReading(
                        all.get(last).reading(), kilograms, all.get(last).seconds()));
        return new HeldPiece(all, mass);
    }

    /** {@return the first reading} */
    public LiftReading first() {
        return readings.get(0);
    }

    /**
     * {@return covariance of the errors of two readings of this dunk, kg2:
     * s_i s_j (h + (1 - h) exp(-|t_i - t_j|/tau)), with h = {@link #STAYS} and tau = {@link #SETTLING}}
     *
     * @param i place of one of the readings
     * @param j place of the other, or the same
     */
    public double covariance(int i, int j) {
        LiftReading one = readings.get(i);
        LiftReading other = readings.get(j);
        double alike = STAYS + (1 - STAYS) * Math.exp(-Math.abs(one.seconds() - other.seconds()) / SETTLING);
        return one.deviation() * other.deviation() * alike;
    }

    /** Whether it was read when a reading says most: the layer full, little of the piece gone; later ones may follow. */
    public boolean timely() {
        return first().seconds() >= EARLIEST && first().seconds() <= LATEST;
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
