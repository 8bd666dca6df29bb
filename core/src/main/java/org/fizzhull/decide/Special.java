package org.fizzhull.decide;

/** What is special about a piece, and worth knowing before its mould is bought. */
public enum Special {
    /** An open hollow that floats like a boat while its rim is dry. */
    BOAT("boat"),
    /** A shell with crystals, which count in its weight and stay to the last. */
    GEODE("geode"),
    /** A ripple may tip it as it floats. */
    TIPPY("tippy"),
    /** Pressed in two halves that are closed on one another. */
    TWO_HALVES("two halves");

    private final String words;

    Special(String words) {
        this.words = words;
    }

    /** {@return the name in results} */
    public String words() {
        return words;
    }
}
