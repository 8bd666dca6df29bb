package org.fizzhull.cli.text;

import java.util.List;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.evidence.Notice;

/** What a command has to say: as text, short, whole and with what stands behind it, or as keys and values. */
public interface Answer {
    /** The sentence and the cautions. */
    String brief();

    /** The whole answer, as a page and an explanation show it. */
    String whole();

    /** As much of the whole answer as fits a small window. */
    default String shown() {
        return whole();
    }

    /** What stands behind it: figures, priors and sources. */
    String behind();

    /** As much of that as a page has room for. */
    default String behindOnPage() {
        return behind();
    }

    /** The same as keys and values, which become JSON. */
    AnswerBody body();

    /** What is said on standard error beside the JSON. */
    default List<Notice> aside() {
        return body().notices();
    }
}
