package org.fizzhull.forecast.measured;

import java.util.Optional;
import org.fizzhull.quantity.Given;

/** What a piece did in its bath, in the words of a trials sheet. */
public enum BathResult {
    /** It was up within 20 s and counts as floating at once. */
    FLOATED("floated"),
    /** It sank first and came up later. */
    ROSE("rose"),
    /** It sank. */
    SANK("sank");

    /** The word on the sheet. */
    private final String word;

    BathResult(String word) {
        this.word = word;
    }

    /** {@return the word on the sheet} */
    public String word() {
        return word;
    }

    /**
     * {@return the result of a word; empty for any other}
     *
     * @param word small letters: floated, rose or sank
     */
    public static Optional<BathResult> named(String word) {
        Given.all("word", word);
        for (BathResult result : values()) {
            if (result.word.equals(word)) {
                return Optional.of(result);
            }
        }
        return Optional.empty();
    }
}
