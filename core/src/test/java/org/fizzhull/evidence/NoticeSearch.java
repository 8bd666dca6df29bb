package org.fizzhull.evidence;

import java.util.List;

/** Looks for a notice among those of an answer, for tests. */
public final class NoticeSearch {
    private NoticeSearch() {}

    /** The codes, in the order in which the notices stand. */
    public static List<String> codes(List<Notice> notices) {
        return notices.stream().map(Notice::code).toList();
    }

    /** The sentence of the first notice of a code, which must be there. */
    public static String text(List<Notice> notices, String code) {
        return notices.stream()
                .filter(notice -> notice.code().equals(code))
                .findFirst()
                .orElseThrow()
                .text();
    }
}
