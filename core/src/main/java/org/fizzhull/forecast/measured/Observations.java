package org.fizzhull.forecast.measured;

import java.util.Optional;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.quantity.Refusal;

/**
 * What a person has measured on pieces of the same mix, in the same bath: a forecast that knows it is narrower.
 * Immutable; each method returns a changed copy.
 *
 * @param fizz time until a piece was gone
 * @param rise time until a piece that had sunk came up
 * @param weighed one pressed piece on the scale
 */
public record Observations(Optional<TimedPiece> fizz, Optional<TimedPiece> rise, Optional<WeighedPiece> weighed) {
    /** Refuses a piece that came up after it was gone. */
    public Observations {
        if (fizz.isPresent()
                && rise.isPresent()
                && fizz.get().mass().equals(rise.get().mass())) {
            double gone = fizz.get().time();
            double up = rise.get().time();
            if (!(up < gone)) {
                throw new Refusal(
                        "conflict",
                        "measured rise",
                        up + " s, and gone after " + gone + " s",
                        "a rise before the piece is gone",
                        "Both times run from the drop; say at which weight where they are of two pieces.");
            }
        }
    }

    /** Nothing was measured. */
    public static Observations none() {
        return new Observations(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** And a fizz time. */
    public Observations fizzed(TimedPiece piece) {
        return new Observations(Optional.of(piece), rise, weighed);
    }

    /** And a rise time. */
    public Observations rose(TimedPiece piece) {
        return new Observations(fizz, Optional.of(piece), weighed);
    }

    /** And a weighed piece. */
    public Observations weighed(WeighedPiece piece) {
        return new Observations(fizz, rise, Optional.of(piece));
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return fizz.isEmpty() && rise.isEmpty() && weighed.isEmpty();
    }

    /** Whether a time was taken in the bath. */
    boolean timed() {
        return fizz.isPresent() || rise.isPresent();
    }
}
