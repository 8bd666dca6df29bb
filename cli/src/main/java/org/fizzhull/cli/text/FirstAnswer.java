package org.fizzhull.cli.text;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;

/**
 * A first answer that fits a small window: sentence and rows, then as many notes as there is room for, one at least, then the
 * cautions, which are never left out. With an explanation, and on a page, all rows and notes stand.
 *
 * @param head sentence and rows
 * @param wholeHead the same with the rows that a first answer does without
 * @param notes what is told below them, most needed first
 * @param below the cautions
 */
public record FirstAnswer(String head, String wholeHead, List<Notice> notes, String below) {
    /** Lines of a first answer. */
    public static final int MOST_LINES = 20;

    /** Copies the list. */
    public FirstAnswer {
        notes = List.copyOf(notes);
    }

    /**
     * Of the notices of an answer.
     *
     * @param head sentence and rows
     * @param notices all notices; remarks are left to the explanation
     * @param said what the sentence says already
     * @param more cautions beside those of the notices
     */
    public static FirstAnswer of(String head, List<Notice> notices, Optional<Notice> said, String more) {
        List<Notice> rest = notices.stream()
                .filter(notice -> said.filter(notice::equals).isEmpty())
                .toList();
        List<Notice> notes = rest.stream()
                .filter(notice -> notice.kind() == Notice.Kind.NOTE)
                .toList();
        return new FirstAnswer(head, head, notes, NoticeText.paragraphs(rest, Notice.Kind.CAUTION) + more);
    }

    /** The same with sentence and rows that the whole of it has in place of those of the first answer. */
    public FirstAnswer whole(String rows) {
        return new FirstAnswer(head, rows, notes, below);
    }

    /** The whole of it. */
    public String whole() {
        return text(wholeHead, notes.size());
    }

    /** What there is room for; the notes that are left out are counted. */
    public String text() {
        return text(head, told());
    }

    private String text(String rows, int told) {
        String last = told < notes.size() ? "Note: and " + (notes.size() - told) + " more: --explain\n" : "";
        String foot = NoticeText.paragraphs(notes.subList(0, told)) + last + below;
        return rows + (foot.isEmpty() ? "" : "\n") + foot;
    }

    private int told() {
        int room = MOST_LINES - lines(head) - 1 - lines(below);
        for (int i = 0; i < notes.size(); i++) {
            room -= lines(NoticeText.paragraph(notes.get(i)));
            if (i > 0 && room < (i + 1 < notes.size() ? 1 : 0)) {
                return i;
            }
        }
        return notes.size();
    }

    private static int lines(String text) {
        return Table.lines(text).size();
    }
}
