package org.fizzhull.forecast.question;

/**
 * How a piece goes into the bath, as it is asked; {@link org.fizzhull.voyage.Release} is what a voyage makes of it. It
 * matters for hollow shapes alone.
 */
public enum IntoBath {
    /** Set down gently, open side up: a hollow stays dry while its rim is above the water. */
    PLACED("placed"),
    /** Let go: a hollow floods. */
    DROPPED("dropped");

    /** Word of the option and key in results, stable. */
    private final String word;

    IntoBath(String word) {
        this.word = word;
    }

    /** {@return the word of the option} */
    public String word() {
        return word;
    }
}
