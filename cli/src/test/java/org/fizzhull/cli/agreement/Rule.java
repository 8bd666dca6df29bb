package org.fizzhull.cli.agreement;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * What must hold among the answers of one question. One contradiction once found is one rule.
 *
 * @param says what must hold, as a sentence
 * @param check hands every breach to a listener, in words
 */
record Rule(String says, BiConsumer<Replies, Consumer<String>> check) {
    /** Of every answer for itself. */
    static Rule each(String says, BiConsumer<Reply, Consumer<String>> check) {
        return new Rule(
                says,
                (replies, breach) -> replies.all().values().stream()
                        .filter(Reply::answered)
                        .forEach(reply -> check.accept(reply, what -> breach.accept(reply.command() + ": " + what))));
    }

    /** Of one command. */
    static Rule of(String command, String says, BiConsumer<Reply, Consumer<String>> check) {
        return new Rule(
                says, (replies, breach) -> replies.answer(command).ifPresent(reply -> check.accept(reply, breach)));
    }

    /** Of two commands that answer the same question. */
    static Rule both(String one, String other, String says, Siblings check) {
        return new Rule(
                says,
                (replies, breach) -> replies.answer(one)
                        .ifPresent(first ->
                                replies.answer(other).ifPresent(second -> check.accept(first, second, breach))));
    }

    /** Holds two answers against each other. */
    interface Siblings {
        void accept(Reply one, Reply other, Consumer<String> breach);
    }
}
