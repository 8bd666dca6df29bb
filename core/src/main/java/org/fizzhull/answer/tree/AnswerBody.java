package org.fizzhull.answer.tree;

import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * What one question is answered with: keys and values in their order, and what the reader must know. Every object of an
 * answer is this: the head ({@code schema}, {@code fizzhull}, {@code command}), the keys, the notices.
 */
public interface AnswerBody {
    /** {@return the question that is answered, the value of the key {@code command}: {@code float}} */
    String command();

    /**
     * Writes the keys between head and notices. The same keys every time, whatever the result: what is not known is null.
     *
     * @param to where to, in an open object
     */
    void keys(AnswerWriter to);

    /**
     * {@return what the reader must know, each null explained; last in the object}
     */
    List<Notice> notices();

    /**
     * Walks the whole object through a sink.
     *
     * @param sink takes the tokens, first to last
     */
    default void write(AnswerSink sink) {
        AnswerWriter to = AnswerWriter.open(sink, command());
        keys(to);
        to.notices(notices()).end();
    }

    /** {@return the whole object as a value} */
    default AnswerTree tree() {
        return AnswerTree.of(this);
    }
}
