package org.fizzhull.pressing;

/** How a piece feels when it comes out of the mould; {@link DampFeel} decides. */
public enum Feel {
    /** Weaker than the stress of its own weight, or not pressed at all. */
    CRUMBLES("crumbles"),
    /** Carries its own weight. */
    HOLDS("holds"),
    /** Liquid bridges merge, the mix foams in the bowl, or it reacts faster than it can dry. */
    TOO_WET("too wet");

    /** The word shown to people. */
    private final String words;

    Feel(String words) {
        this.words = words;
    }

    /** {@return the words shown to people} */
    public String words() {
        return words;
    }
}
