package org.fizzhull.decide;

/** What is special about a piece, and worth knowing before its mould is bought; {@link MadePiece#special}. */
public enum Special {
    /** An open hollow that floats only while its rim is dry. */
    BOAT("boat"),
    /** A shell with crystals, which count in its weight and stay to the last. */
    GEODE("geode"),
    /** A small disturbance may tip it as it floats: its metacentric height is small. */
    TIPPY("tippy"),
    /** Pressed in two halves that are closed on one another. */
    TWO_HALVES("two halves");

    /** Its name in results. */
    private final String words;

    Special(String words) {
        this.words = words;
    }

    /** {@return the name in results} */
    public String words() {
        return words;
    }
}
