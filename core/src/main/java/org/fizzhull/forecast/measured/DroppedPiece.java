package org.fizzhull.forecast.measured;

import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.quantity.check.SerialForm;

/**
 * What a piece did when it was let go: it floated, or did not. With y what the inputs say it could still carry at the drop (kg)
 * and s what two pieces of one mould differ by ({@link HeldPiece#ownLift}),
 * <pre>  P(floated) = e + (1 - 2 e) Phi(y/s),   P(rose or sank) = 1 - P(floated),</pre>
 * Phi the standard normal distribution function, e = 0.01 the chance that a result was written down wrongly (assumed), so that
 * one slip of the pen decides nothing. Immutable.
 *
 * @param result what it did
 * @param mass of that piece as it went into the bath, kg; empty where it is the piece that is asked about
 */
public record DroppedPiece(Result result, OptionalDouble mass) implements Serializable {
    /** Chance that a result was written down wrongly (assumed). */
    private static final double SLIP = 0.01;

    /**
     * Refuses what is no weight.
     *
     * @param result what it did
     * @param mass of that piece as it went into the bath, kg; empty where it is the piece that is asked about
     * @throws Refusal {@code out-of-range}
     */
    public DroppedPiece {
        Given.all("result, mass", result, mass);
        if (mass.isPresent() && !(mass.getAsDouble() > 0)) {
            throw new Refusal(
                    "out-of-range",
                    "measured result",
                    1e3 * mass.getAsDouble() + " g",
                    "more than 0 g",
                    "Weigh the piece just before it goes into the bath.");
        }
    }

    /**
     * {@return what a piece of a weight did}
     *
     * @param result what it did
     * @param kilograms weight as it went into the bath, kg
     */
    public static DroppedPiece of(Result result, double kilograms) {
        return new DroppedPiece(result, OptionalDouble.of(kilograms));
    }

    /**
     * {@return the chance that a piece floats, or does not, by what it could still carry}
     *
     * @param floated whether it floats
     * @param spare what the inputs say it could carry at the drop, kg; below 0 for one that goes down
     * @param deviation one standard deviation of that from piece to piece, kg
     */
    public static double chance(boolean floated, double spare, double deviation) {
        return SLIP + (1 - 2 * SLIP) * Normal.cumulative((floated ? spare : -spare) / deviation);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }

    /** What a piece did in its bath, in the words of a trials sheet. */
    public enum Result {
        /** It was up within 20 s and counts as floating at once. */
        FLOATED("floated"),
        /** It sank first and came up later. */
        ROSE("rose"),
        /** It sank. */
        SANK("sank");

        /** The word on the sheet. */
        private final String word;

        Result(String word) {
            this.word = word;
        }

        /** {@return the word on the sheet} */
        public String word() {
            return word;
        }

        /**
         * {@return the result of a word; empty for any other}
         *
         * @param word small letters: floated, rose or sank
         */
        public static Optional<Result> named(String word) {
            Given.all("word", word);
            for (Result result : values()) {
                if (result.word.equals(word)) {
                    return Optional.of(result);
                }
            }
            return Optional.empty();
        }
    }
}
