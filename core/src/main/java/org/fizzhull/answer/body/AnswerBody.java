package org.fizzhull.answer.body;

import java.util.List;
import org.fizzhull.answer.tree.AnswerSink;
import org.fizzhull.answer.tree.AnswerTree;
import org.fizzhull.evidence.Notice;

/**
 * The answer to one question: keys and values in their order, and what the reader must know. Every object of an answer is
 * written so: the head ({@code schema}, {@code fizzhull}, {@code command}), the keys, the notices. The classes of package
 * {@code answer} implement it, one for each question, so that command line and embedders give the same keys; meanings and
 * units stand in cli/docs/contract.md.
 *
 * <pre>{@code
 * AnswerTree tree = FloatAnswer.of(forecast).tree();
 * OptionalDouble chance = tree.number("/probability/floats_at_once");
 * }</pre>
 */
public interface AnswerBody {
    /** {@return the question that is answered, the value of the key {@code command}: {@code float}} */
    String command();

    /**
     * Writes the keys between head and notices. The same keys every time, whatever the result: what is not known is null.
     *
     * @param to writer whose innermost open object takes the keys
     */
    void keys(AnswerWriter to);

    /**
     * {@return what the reader must know, each null explained; last in the object}
     */
    List<Notice> notices();

    /**
     * Writes the whole object to a sink, head and notices included.
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
        return AnswerTree.of(this::write);
    }
}
