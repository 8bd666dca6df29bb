package org.fizzhull.forecast.question;

/** How a piece goes into the bath. */
public enum IntoBath {
    /** Set down gently, open side up: a hollow stays dry while its rim is above the water. */
    PLACED("placed"),
    /** Let go: a hollow floods. */
    DROPPED("dropped");

    private final String word;

    IntoBath(String word) {
        this.word = word;
    }

    /** {@return the word of the option} */
    public String word() {
        return word;
    }
}
