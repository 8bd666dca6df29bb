package org.fizzhull.cli.text;

import java.util.List;
import org.fizzhull.evidence.Notice;

/** Notices as paragraphs of a text, each opened by how urgent it is, and as lines for standard error. */
public final class NoticeText {
    private NoticeText() {}

    /** The line for standard error, without its end. */
    public static String line(Notice notice) {
        return "fizzhull: " + notice.text();
    }

    /** {@code Caution: ...} where someone can come to harm, else {@code Note: ...}. */
    public static String paragraph(Notice notice) {
        return Table.paragraph((isCaution(notice) ? "Caution: " : "Note: ") + NumberText.joined(notice.text()));
    }

    /** All in their order. */
    public static String paragraphs(List<Notice> notices) {
        StringBuilder out = new StringBuilder();
        for (Notice notice : notices) {
            out.append(paragraph(notice));
        }
        return out.toString();
    }

    /** Those of one kind in their order. */
    public static String paragraphs(List<Notice> notices, Notice.Kind kind) {
        return paragraphs(
                notices.stream().filter(notice -> notice.kind() == kind).toList());
    }

    /** Whether a notice is a caution, which stands last and is shown even when quiet. */
    public static boolean isCaution(Notice notice) {
        return notice.kind() == Notice.Kind.CAUTION;
    }
}
