package org.fizzhull.decide.compare;

/** What matters to the person who chooses, and so what a {@link Comparison} is sorted by. */
public enum SortBy {
    /** The chance to float to the end, the surest first. */
    FLOAT("float"),
    /** How long it fizzes, the longest first. */
    FIZZ("fizz"),
    /** When it is dry, the soonest first. */
    DRY("dry"),
    /** Cost of what goes into a piece, the cheapest first. */
    COST("cost");

    /** The word of the option and of the key {@code sort}. */
    private final String word;

    SortBy(String word) {
        this.word = word;
    }

    /** {@return the word of the option and of the key {@code sort}} */
    public String word() {
        return word;
    }
}
