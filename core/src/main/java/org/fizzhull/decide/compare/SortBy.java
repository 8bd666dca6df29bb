package org.fizzhull.decide.compare;

/** What matters to the person who chooses. */
public enum SortBy {
    /** The chance to float to the end, the surest first. */
    FLOAT("float"),
    /** How long it fizzes, the longest first. */
    FIZZ("fizz"),
    /** When it is dry, the soonest first. */
    DRY("dry"),
    /** What goes into a piece costs, the cheapest first. */
    COST("cost");

    private final String word;

    SortBy(String word) {
        this.word = word;
    }

    /** {@return the word of the option} */
    public String word() {
        return word;
    }
}
