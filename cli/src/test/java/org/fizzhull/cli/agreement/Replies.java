package org.fizzhull.cli.agreement;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The answers of all commands to one question. */
final class Replies {
    static final List<String> COMMANDS = List.of(
            "float", "fizz", "dry", "press", "batch", "compare", "shapes", "still", "central", "ounces", "why",
            "advise");

    private final Asked asked;
    private final Map<String, Reply> replies = new LinkedHashMap<>();

    private Replies(Asked asked) {
        this.asked = asked;
    }

    static Replies of(Asked asked, Path folder) {
        Replies replies = new Replies(asked);
        for (String command : COMMANDS) {
            List<String> words = asked.words(command);
            if (!words.isEmpty()) {
                replies.replies.put(command, Reply.of(words, folder));
            }
        }
        return replies;
    }

    Asked asked() {
        return asked;
    }

    /** The answer of a command, where it was asked and did answer. */
    Optional<Reply> answer(String command) {
        return Optional.ofNullable(replies.get(command)).filter(Reply::answered);
    }

    Map<String, Reply> all() {
        return replies;
    }
}
