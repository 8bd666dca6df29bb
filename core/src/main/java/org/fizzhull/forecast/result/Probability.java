package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.OptionalDouble;
import org.fizzhull.quantity.check.SerialForm;

/**
 * What becomes of a piece, as probabilities. Floats at once, rises later and stays down sum to 1; what is not computed
 * is empty. Each stands for a piece taken at random: what is not known of the whole batch is in it too
 * ({@link CriticalWeights.BatchShare} keeps the two apart).
 *
 * @param floatsToTheEnd it floats at once and stays up until a tenth of its dissolving mass is left, toppings and
 *     crystals not counted; never above floatsAtOnce
 * @param floatsAtOnce it is at the surface 20 s after it was let go
 * @param error one standard error of floatsAtOnce, from the draws
 * @param risesLater it comes up after that with at least 10 % of its mass left
 * @param staysDown neither
 * @param sinksLater part of floatsAtOnce that goes under again before 1 % of it is left
 */
public record Probability(
        double floatsToTheEnd,
        double floatsAtOnce,
        double error,
        OptionalDouble risesLater,
        OptionalDouble staysDown,
        OptionalDouble sinksLater)
        implements Serializable {

    /**
     * Refuses what is no probability, NaN included.
     *
     * @param floatsToTheEnd it floats at once and stays up until a tenth of its dissolving mass is left, toppings and
     *     crystals not counted; never above floatsAtOnce
     * @param floatsAtOnce it is at the surface 20 s after it was let go
     * @param error one standard error of floatsAtOnce, from the draws
     * @param risesLater it comes up after that with at least 10 % of its mass left
     * @param staysDown neither
     * @param sinksLater part of floatsAtOnce that goes under again before 1 % of it is left
     */
    public Probability {
        check("floats to the end", floatsToTheEnd);
        check("floats at once", floatsAtOnce);
        check("rises later", risesLater.orElse(0));
        check("stays down", staysDown.orElse(0));
        check("sinks later", sinksLater.orElse(0));
        if (!(error >= 0)) {
            throw new IllegalArgumentException("a standard error is 0 or more, not " + error);
        }
        if (floatsToTheEnd > floatsAtOnce) {
            throw new IllegalArgumentException(
                    "floats to the end, " + floatsToTheEnd + ", is a part of floats at once, " + floatsAtOnce);
        }
    }

    private static void check(String what, double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException(what + ": a probability lies between 0 and 1, not " + probability);
        }
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }

    /**
     * Calibrated words for a probability: Mastrandrea et al. (2010), Guidance Note for Lead Authors of the IPCC Fifth
     * Assessment Report on Consistent Treatment of Uncertainties, table 1 (from memory); the narrowest class that holds.
     *
     * <p>The guidance nests its classes (what is very likely is likely too); here each probability has one word.
     */
    public enum Likelihood {
        /** Above 0.99. */
        VIRTUALLY_CERTAIN("virtually certain"),
        /** Above 0.9. */
        VERY_LIKELY("very likely"),
        /** Above 0.66. */
        LIKELY("likely"),
        /** From 0.33 to 0.66. */
        ABOUT_AS_LIKELY_AS_NOT("about as likely as not"),
        /** Below 0.33. */
        UNLIKELY("unlikely"),
        /** Below 0.1. */
        VERY_UNLIKELY("very unlikely"),
        /** Below 0.01. */
        EXCEPTIONALLY_UNLIKELY("exceptionally unlikely");

        /** What people read. */
        private final String words;

        Likelihood(String words) {
            this.words = words;
        }

        /** {@return the words themselves} */
        public String words() {
            return words;
        }

        /**
         * {@return the narrowest class of a probability from 0 to 1}
         *
         * @param probability probability, 0 to 1; NaN is refused
         * @throws IllegalArgumentException for what is no probability
         */
        public static Likelihood of(double probability) {
            if (!(probability >= 0 && probability <= 1)) {
                throw new IllegalArgumentException("a probability lies between 0 and 1, not " + probability);
            }
            if (probability > 0.99) {
                return VIRTUALLY_CERTAIN;
            }
            if (probability > 0.9) {
                return VERY_LIKELY;
            }
            if (probability > 0.66) {
                return LIKELY;
            }
            if (probability >= 0.33) {
                return ABOUT_AS_LIKELY_AS_NOT;
            }
            if (probability >= 0.1) {
                return UNLIKELY;
            }
            return probability >= 0.01 ? VERY_UNLIKELY : EXCEPTIONALLY_UNLIKELY;
        }
    }
}
