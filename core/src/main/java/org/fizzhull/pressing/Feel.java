package org.fizzhull.pressing;

/** How a piece feels when it comes out of the mould. */
public enum Feel {
    /** Weaker than its own weight. */
    CRUMBLES("crumbles"),
    /** Carries itself. */
    HOLDS("holds"),
    /** The pores fill up, or it reacts faster than it can dry. */
    TOO_WET("too wet");

    private final String words;

    Feel(String words) {
        this.words = words;
    }

    /** {@return the words shown to people} */
    public String words() {
        return words;
    }
}
