package org.fizzhull.cli.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.quantity.Refusal;

/**
 * Sorts the words behind a command's name into options with their values and free words. Words behind a value belong to
 * it until the next option: {@code --mass 138 g +- 4 g} is one value. Behind {@code --} all words are free.
 */
final class WordReader {
    private static final String NO_MORE_OPTIONS = "--";

    /** The values of each option given; an empty list for one that takes none. */
    final Map<String, List<String>> given = new HashMap<>();

    /** The texts free of any option. */
    final List<String> free = new ArrayList<>();

    private final List<String> twice = new ArrayList<>();
    private final String command;
    private final Options spec;
    private final String[] words;
    private int next = 1;

    WordReader(Command command, String[] words) {
        this.command = words[0];
        this.words = words;
        spec = command.spec();
        while (next < words.length) {
            String word = words[next++];
            if (word.equals(NO_MORE_OPTIONS)) {
                while (next < words.length) {
                    free.add(words[next++]);
                }
            } else if (isOption(word)) {
                option(word);
            } else {
                free.add(joined(word));
            }
        }
        for (String name : twice) {
            if (!command.repeatable().contains(name)) {
                throw new Refusal("repeated", name, "it twice", "once", "Leave one of the two away.");
            }
        }
        if (command.free().isEmpty() && !free.isEmpty()) {
            throw UnknownOption.word(this.command, spec, free.get(0));
        }
    }

    /** Takes an option with its value. */
    private void option(String word) {
        int equals = word.indexOf('=');
        Options.Option option = spec.named(equals > 0 ? word.substring(0, equals) : word);
        if (option == null || (equals > 0 && !option.takesValue())) {
            throw UnknownOption.refusal(command, spec, word);
        }
        List<String> values = given.get(option.name());
        if (values == null) {
            values = new ArrayList<>();
            given.put(option.name(), values);
        } else {
            twice.add(option.name());
        }
        if (equals > 0) {
            values.add(joined(word.substring(equals + 1)));
        } else if (option.takesValue() && next < words.length && !isOption(words[next])) {
            values.add(joined(words[next++]));
        } else if (option.takesValue()) {
            throw new Refusal(
                    "missing-value",
                    option.name(),
                    "",
                    "a value after " + option.name(),
                    UnknownOption.helpHint(command));
        }
    }

    /** A text with the words behind it, up to the next option. */
    private String joined(String first) {
        StringBuilder text = new StringBuilder(first);
        while (next < words.length && !isOption(words[next])) {
            text.append(' ').append(words[next++]);
        }
        return text.toString();
    }

    /** Two dashes, or a dash and a letter; {@code -5} is a number. */
    private static boolean isOption(String word) {
        return word.startsWith("--")
                || (word.length() > 1 && word.charAt(0) == '-' && Character.isLetter(word.charAt(1)));
    }
}
