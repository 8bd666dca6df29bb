package org.fizzhull.quantity.check;

import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;

/**
 * What every constructor and factory asks of its arguments, in one place: that they are there, and that a number is one.
 * Ranges with a unit are {@link Allowed}'s.
 *
 * <pre>{@code
 * public Candidate {
 *     Given.all("mould, question", mould, question);
 * }
 * }</pre>
 *
 * <p>Stateless; some nanoseconds a value.
 */
public final class Given {
    private Given() {}

    /**
     * Refuses what is missing.
     *
     * @param names names of the arguments in order, between commas
     * @param values the arguments
     * @throws NullPointerException for the first that is null, by its name
     */
    public static void all(String names, Object... values) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] == null) {
                throw new NullPointerException(names.split(", ", -1)[i] + " is null");
            }
        }
    }

    /**
     * {@return the number itself} Refuses what is none, and what is below 0.
     *
     * @param name name of the argument
     * @param value value, SI
     * @throws Refusal {@code out-of-range}
     */
    public static double notNegative(String name, double value) {
        if (finite(name, value) >= 0) {
            return value;
        }
        throw new Refusal("out-of-range", name, Double.toString(value), "0 or more", "");
    }

    /**
     * {@return the number itself} Refuses what is none.
     *
     * @param name name of the argument
     * @param value value, SI
     * @throws Refusal {@code out-of-range} for NaN and the infinite
     */
    public static double finite(String name, double value) {
        if (Double.isFinite(value)) {
            return value;
        }
        throw new Refusal(
                "out-of-range", name, Double.toString(value), "a finite number", "An amount is a number, in SI units.");
    }
}
