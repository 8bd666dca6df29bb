package org.fizzhull.shape.listing;

/**
 * One parameter of a kind of shape, for lists and messages.
 *
 * @param key name in shape text
 * @param takes what its value is
 * @param meaning what it measures, for people
 * @param required whether shape text must name it
 * @param standard what holds when it is left out, for people; empty where it is required
 * @param example a usual value, as text
 */
public record ShapeParameter(
        String key, Takes takes, String meaning, boolean required, String standard, String example) {
    /** What a value is. */
    public enum Takes {
        /** A length with its unit. */
        LENGTH,
        /** A mass with its unit. */
        MASS,
        /** A whole number. */
        COUNT,
        /** One of a few words, or the name of a file. */
        WORD
    }

    /** A length that must be written. */
    static ShapeParameter length(String key, String meaning, String example) {
        return new ShapeParameter(key, Takes.LENGTH, meaning, true, "", example);
    }

    /** A mass that must be written. */
    static ShapeParameter mass(String key, String meaning, String example) {
        return new ShapeParameter(key, Takes.MASS, meaning, true, "", example);
    }

    /** A word or name of a file that must be written. */
    static ShapeParameter word(String key, String meaning, String example) {
        return new ShapeParameter(key, Takes.WORD, meaning, true, "", example);
    }

    /** A length that may be left out, and what holds then. */
    static ShapeParameter maybe(String key, String meaning, String standard, String example) {
        return new ShapeParameter(key, Takes.LENGTH, meaning, false, standard, example);
    }

    /** {@return key and usual value as in shape text: {@code diameter=65 mm}} */
    String withExample() {
        return key + '=' + example;
    }
}
