package org.fizzhull.answer.tree;

/**
 * Takes an answer token by token, in the order in which it is written: a generator of JSON, YAML or CBOR, a builder of
 * some other tree. An embedder implements it to write answers with a library of its own. The names are those of RFC 8259.
 *
 * <p>An object is a row of {@link #key keys}, each followed by exactly one value; an array a row of values. Whoever
 * calls keeps to that, and calls {@link #number} with finite numbers only. Not safe for use by several threads.
 */
public interface AnswerSink {
    /** An object begins. */
    void startObject();

    /** The innermost object ends. */
    void endObject();

    /** An array begins. */
    void startArray();

    /** The innermost array ends. */
    void endArray();

    /**
     * Announces the key of the next value.
     *
     * @param key name and, where the value has one, its unit: {@code mass_g}
     */
    void key(String key);

    /**
     * A text.
     *
     * @param value any text, the empty one included
     */
    void text(String value);

    /**
     * A count.
     *
     * @param value whole number
     */
    void whole(long value);

    /**
     * A number in the unit of its key.
     *
     * @param value finite; all digits of the double (the command line writes six)
     */
    void number(double value);

    /**
     * A boolean.
     *
     * @param value true or false
     */
    void flag(boolean value);

    /** Null: not known, or without meaning for this question. */
    void nothing();
}
