package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.AnswerWriter;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.evidence.Notice;

/**
 * An answer with one thing more to be said, whatever the command: what of the bench file counts.
 *
 * @param answer the answer itself
 * @param notice what is said beside it
 */
record ToldAnswer(Answer answer, Notice notice) implements Answer {
    private static final String CAUTION = "\nCaution: ";

    @Override
    public String brief() {
        return answer.brief();
    }

    @Override
    public String whole() {
        return with(answer.whole());
    }

    @Override
    public String shown() {
        return with(answer.shown());
    }

    /** A text with the notice in front of its cautions, which stand last. */
    private String with(String text) {
        int caution = text.indexOf(CAUTION);
        int at = caution < 0 ? text.length() : caution + 1;
        return text.substring(0, at) + NoticeText.paragraph(notice) + text.substring(at);
    }

    @Override
    public String behind() {
        return answer.behind();
    }

    @Override
    public String behindOnPage() {
        return answer.behindOnPage();
    }

    @Override
    public AnswerBody body() {
        AnswerBody body = answer.body();
        return new AnswerBody() {
            @Override
            public String command() {
                return body.command();
            }

            @Override
            public void keys(AnswerWriter to) {
                body.keys(to);
            }

            @Override
            public List<Notice> notices() {
                return and(body.notices());
            }
        };
    }

    @Override
    public List<Notice> aside() {
        return and(answer.aside());
    }

    private List<Notice> and(List<Notice> notices) {
        List<Notice> all = new ArrayList<>(notices);
        all.add(notice);
        return all;
    }
}
