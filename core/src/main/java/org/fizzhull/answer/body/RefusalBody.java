package org.fizzhull.answer.body;

import java.util.List;
import java.util.OptionalInt;
import org.fizzhull.answer.tree.AnswerSink;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;

/**
 * A refusal as an object: the key {@code error} in place of an answer, with {@code code}, {@code field}, {@code read},
 * {@code allowed}, {@code hint}, {@code file}, {@code line}, and {@code others} for what else was wrong in the same input.
 *
 * @param command the question that was refused
 * @param refusal the refusal
 */
public record RefusalBody(String command, Refusal refusal) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param command the question that was refused
     * @param refusal the refusal
     */
    public RefusalBody {
        Given.all("command, refusal", command, refusal);
    }

    @Override
    public void write(AnswerSink sink) {
        AnswerWriter to = AnswerWriter.open(sink, command);
        keys(to);
        to.end();
    }

    @Override
    public void keys(AnswerWriter to) {
        one(to.object("error"), refusal);
        to.objects("others", refusal.others(), other -> one(to, other)).end();
    }

    /** {@return none: a refusal has nothing beside itself} */
    @Override
    public List<Notice> notices() {
        return List.of();
    }

    /** Writes the keys of one refusal; the line is null where it came from no file. */
    private static void one(AnswerWriter to, Refusal refusal) {
        to.text("code", refusal.code())
                .text("field", refusal.field())
                .text("read", refusal.read())
                .text("allowed", refusal.allowed())
                .text("hint", refusal.hint())
                .text("file", refusal.file())
                .whole("line", refusal.line() > 0 ? OptionalInt.of(refusal.line()) : OptionalInt.empty());
    }
}
