package org.fizzhull.evidence;

/**
 * Something the reader of a result must know: an assumption made, a range left, a part not yet computed.
 *
 * @param code stable word in kebab case, for programs
 * @param text one sentence, for people
 */
public record Notice(String code, String text) {
    /** Refuses null and an empty code or text. */
    public Notice {
        if (code.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException(
                    "a notice has a code and a sentence: \"" + code + "\", \"" + text + "\"");
        }
    }
}
