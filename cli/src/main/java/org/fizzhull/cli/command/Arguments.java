package org.fizzhull.cli.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.quantity.Refusal;

/** The words of a command line, read against a command's options. */
public final class Arguments {
    private final Map<String, List<String>> given;
    private final List<String> free;

    /** Name of an option that is taken to be absent; empty for none. */
    private final String hidden;

    private Arguments(Map<String, List<String>> given, List<String> free, String hidden) {
        this.given = given;
        this.free = free;
        this.hidden = hidden;
    }

    /** Reads the words behind the command's name. */
    static Arguments read(Command command, String[] words) {
        WordReader reader = new WordReader(command, words);
        return new Arguments(reader.given, reader.free, "");
    }

    /** The same line as if it did not have an option. */
    Arguments without(String name) {
        return new Arguments(given, free, name);
    }

    /** Whether an option was given. */
    boolean has(String name) {
        return !name.equals(hidden) && given.containsKey(name);
    }

    /** The text of an option, the first where it was given more than once. */
    Optional<String> text(String name) {
        List<String> texts = name.equals(hidden) ? List.of() : texts(name);
        return texts.isEmpty() ? Optional.empty() : Optional.of(texts.get(0));
    }

    /** The texts of an option that may be given more than once, in order. */
    List<String> texts(String name) {
        return given.getOrDefault(name, List.of());
    }

    /** The text of an option that must be there. */
    String required(String name, String allowed, String hint) {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            throw new Refusal("missing-option", name, "", allowed, hint);
        }
        return text.get();
    }

    /** The words that stand free of any option, in one text; empty where there are none. */
    Optional<String> free() {
        return free.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", free));
    }

    /** A whole number within limits, in the digits 0 to 9. */
    long whole(String name, long standard, long low, long high) {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            return standard;
        }
        String allowed = low == Long.MIN_VALUE
                ? "a whole number of up to 18 digits"
                : "a whole number from " + low + " to " + high;
        String hint = "Write digits only, such as " + standard + ".";
        if (!digits(text.get())) {
            throw new Refusal("not-a-number", name, text.get(), allowed, hint);
        }
        try {
            long value = Long.parseLong(text.get());
            if (value >= low && value <= high) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new Refusal("out-of-range", name, text.get(), allowed, "The number has too many digits.");
        }
        throw new Refusal("out-of-range", name, text.get(), allowed, "Without " + name + " it is " + standard + ".");
    }

    private static boolean digits(String text) {
        int from = text.startsWith("-") ? 1 : 0;
        for (int i = from; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return text.length() > from;
    }
}
