package org.fizzhull.evidence;

import java.io.Serializable;
import java.util.List;
import org.fizzhull.quantity.check.Given;

/**
 * Something the reader of a result must know: an assumption made, a range left, a part not yet computed.
 *
 * @param code stable word in kebab case, for programs to show or to look up, not to decide by
 * @param text one sentence, for people
 * @param kind how urgent it is
 */
public record Notice(String code, String text, Kind kind) implements Serializable {
    /**
     * Refuses an empty code or text.
     *
     * @param code stable word in kebab case, for programs to show or to look up, not to decide by
     * @param text one sentence, for people
     * @param kind how urgent it is
     * @throws IllegalArgumentException for such
     */
    public Notice {
        Given.all("code, text, kind", code, text, kind);
        if (code.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException(
                    "a notice has a code and a sentence: \"" + code + "\", \"" + text + "\"");
        }
    }

    /**
     * A note, which belongs to the answer.
     *
     * @param code stable word in kebab case, for programs to show or to look up, not to decide by
     * @param text one sentence, for people
     */
    public Notice(String code, String text) {
        this(code, text, Kind.NOTE);
    }

    /**
     * {@return a warning of harm}
     *
     * @param code stable word in kebab case, for programs to show or to look up, not to decide by
     * @param text one sentence, for people
     */
    public static Notice caution(String code, String text) {
        return new Notice(code, text, Kind.CAUTION);
    }

    /**
     * {@return a remark for the details: shown in JSON and behind the answer, not in it}
     *
     * @param code stable word in kebab case, for programs to show or to look up, not to decide by
     * @param text one sentence, for people
     */
    public static Notice remark(String code, String text) {
        return new Notice(code, text, Kind.REMARK);
    }

    /**
     * Adds notices that are not told yet, in their order.
     *
     * @param told notices so far, to which it adds
     * @param more notices to be told
     */
    public static void addNew(List<Notice> told, List<Notice> more) {
        for (Notice notice : more) {
            if (!told.contains(notice)) {
                told.add(notice);
            }
        }
    }

    /** How urgent a notice is. */
    public enum Kind {
        /** Someone can come to harm. */
        CAUTION,
        /** Belongs to the answer. */
        NOTE,
        /** Belongs to the details. */
        REMARK
    }
}
