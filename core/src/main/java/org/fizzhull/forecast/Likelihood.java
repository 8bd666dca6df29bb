package org.fizzhull.forecast;

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
