package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.function.Consumer;

/** A mix that does not fizz, or hardly, is told so first, by every command alike. */
final class Fizzless {
    private static final List<String> COMMANDS =
            List.of("float", "fizz", "dry", "press", "batch", "compare", "advise", "why");

    static final List<Rule> RULES = List.of(
            new Rule("no acid is told first by every command", Fizzless::first),
            new Rule("what does not fizz has no fizz time, no gas and no hurry", Fizzless::nothing),
            new Rule("what fizzes is not told that it does not", Fizzless::fizzes));

    private Fizzless() {}

    private static boolean said(String text) {
        return text.matches(".*[Ii]t (does not fizz|hardly fizzes): .*");
    }

    private static void first(Replies replies, Consumer<String> breach) {
        if (replies.asked().mix().acid()) {
            return;
        }
        for (String command : COMMANDS) {
            replies.answer(command).ifPresent(reply -> {
                String opening = reply.opening();
                if (!said(opening) || opening.indexOf("fizz") > 90) {
                    breach.accept(command + ": " + opening);
                }
            });
        }
    }

    private static void nothing(Replies replies, Consumer<String> breach) {
        if (replies.asked().mix().acid()) {
            return;
        }
        for (Reply reply : replies.all().values()) {
            if (reply.answered()
                    && (reply.given("/fizz_time_s/median")
                            || reply.text()
                                    .matches(".*(fizzes about|runs out first|within the hour|nothing hurries).*"))) {
                breach.accept(reply.command() + ": " + reply.text());
            }
        }
    }

    private static void fizzes(Replies replies, Consumer<String> breach) {
        replies.answer("fizz").ifPresent(fizz -> {
            boolean not = said(fizz.opening());
            for (String command : List.of("float", "dry")) {
                replies.answer(command).ifPresent(reply -> {
                    if (said(reply.opening()) != not) {
                        breach.accept(command + ": " + reply.opening() + " | fizz: " + fizz.opening());
                    }
                });
            }
        });
    }
}
