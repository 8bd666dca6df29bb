package org.fizzhull.cli.text;

import org.fizzhull.evidence.Notice;

/** A notice as a line for standard error. */
public final class NoticeText {
    private NoticeText() {}

    /** The line, without its end. */
    public static String line(Notice notice) {
        return "fizzhull: " + notice.text();
    }
}
