package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.voyage.result.Voyage;

/**
 * A time taken of one piece in its bath: until it was gone ({@link #fizzed}) or until it came up ({@link #rose}). The
 * spread is from piece to piece, not only of the watch: what is asked is the next piece. Immutable.
 *
 * @param time s after it was let go
 * @param deviation one standard deviation of what a second piece like it would show, s
 * @param mass of that piece as it went into the bath, kg; empty where it is the piece that is asked about
 * @param left how wide the piece was when it came up, m; empty where nobody looked
 */
public record TimedPiece(double time, double deviation, OptionalDouble mass, OptionalDouble left)
        implements Serializable {
    /** One standard deviation of a width seen through the water, m (assumed). */
    public static final double WIDTH_DEVIATION = 5e-3;

    /** From piece to piece of one batch, share of the fizz time (assumed; tablets of a works differ as much). */
    private static final double FIZZ_SHARE = 0.03;

    /** Thumb on the watch, and the eye that calls it gone, s (assumed). */
    private static final double FIZZ_THUMB = 3;

    /** The quick voyage's rise times are within 5 % of the full ones, which is taken as one standard deviation. */
    private static final double RISE_SHARE = 0.05;

    /** Thumb, and the eye that calls it up, s (assumed). */
    private static final double RISE_THUMB = 4;

    /**
     * Refuses a time or a spread that is not above 0.
     *
     * @param time s after it was let go
     * @param deviation one standard deviation of what a second piece like it would show, s
     * @param mass of that piece as it went into the bath, kg; empty where it is the piece that is asked about
     * @param left how wide the piece was when it came up, m; empty where nobody looked
     * @throws Refusal {@code out-of-range}
     */
    public TimedPiece {
        if (!(time > 0 && Double.isFinite(time))) {
            throw new Refusal("out-of-range", "time", time + " s", "more than 0 s", "Take the time from the drop on.");
        }
        if (!(deviation > 0 && Double.isFinite(deviation))) {
            throw new Refusal(
                    "out-of-range",
                    "time",
                    "a spread of " + deviation + " s",
                    "more than 0 s",
                    "Leave out the spread.");
        }
        if (left.isPresent() && !(left.getAsDouble() > 0 && left.getAsDouble() < Double.POSITIVE_INFINITY)) {
            throw new Refusal(
                    "out-of-range",
                    "rise time",
                    1e3 * left.getAsDouble() + " mm left",
                    "more than 0 mm",
                    "Say how wide the piece was when it came up, or leave it out.");
        }
        if (mass.isPresent() && !(mass.getAsDouble() > 0)) {
            throw new Refusal(
                    "out-of-range",
                    "mass",
                    mass.getAsDouble() + " kg",
                    "more than 0 kg",
                    "Weigh the piece that was timed.");
        }
    }

    /**
     * {@return until it was gone, s, of the piece that is asked about: 3 s and 3 % are its spread}
     *
     * @param time s after it was let go
     */
    public static TimedPiece fizzed(double time) {
        return new TimedPiece(
                time, spread(time, FIZZ_THUMB, FIZZ_SHARE), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * {@return until a piece that had sunk was at the surface, s, of the piece that is asked about: 4 s and 5 % are
     * its spread} What is up within 20 s counts as floating at once and is refused.
     *
     * @param time s after it was let go
     * @throws Refusal {@code out-of-range} for a time of 20 s or less
     */
    public static TimedPiece rose(double time) {
        if (time > 0 && !(time > Voyage.Outcome.AT_ONCE)) {
            throw new Refusal(
                    "out-of-range",
                    "rise time",
                    time + " s",
                    "more than " + Math.round(Voyage.Outcome.AT_ONCE) + " s",
                    "A piece that is up by then counts as floating at once: time one that sinks first.");
        }
        return new TimedPiece(
                time, spread(time, RISE_THUMB, RISE_SHARE), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * {@return this time as that of a piece of another mass}
     *
     * @param kilograms mass of that piece, kg
     */
    public TimedPiece weighing(double kilograms) {
        return new TimedPiece(time, deviation, OptionalDouble.of(kilograms), left);
    }

    /**
     * {@return this time of a piece that was so wide when it came up}
     *
     * @param metres width, m
     */
    public TimedPiece leaving(double metres) {
        return new TimedPiece(time, deviation, mass, OptionalDouble.of(metres));
    }

    /**
     * {@return this time with a spread that was entered}
     *
     * @param seconds one standard deviation, s
     */
    public TimedPiece within(double seconds) {
        return new TimedPiece(time, seconds, mass, left);
    }

    /** Logarithm of the likelihood of the width that was seen where the piece was so wide, m; 0 where nobody looked. */
    public double logWidth(double wide) {
        if (left.isEmpty()) {
            return 0;
        }
        double off = (wide - left.getAsDouble()) / WIDTH_DEVIATION;
        return -0.5 * off * off;
    }

    /** Root of the sum of squares of both parts of a spread, s. */
    private static double spread(double time, double thumb, double share) {
        return Math.sqrt(thumb * thumb + share * share * time * time);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
