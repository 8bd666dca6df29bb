package org.fizzhull.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.apache.commons.cli.Options;

/** The options of a command as a person would type them, in order. Immutable. */
public record TypedLine(List<Typed> options) {
    /** An option and the quote that opens its value. */
    private static final Pattern OPTION = Pattern.compile("(--[a-z-]+) \"");

    /** Copies the list. */
    public TypedLine {
        options = List.copyOf(options);
    }

    /**
     * An option.
     *
     * @param name with its dashes
     * @param value as typed; empty for an option without one
     */
    public record Typed(String name, String value) {
        @Override
        public String toString() {
            return value.isEmpty() ? name : name + (value.startsWith("-") ? '=' : ' ') + quoted(value);
        }
    }

    /**
     * A value in double quotes; what a shell would not leave alone between them stands behind a backslash (POSIX.1-2017,
     * XCU 2.2.3).
     */
    public static String quoted(String value) {
        return '"' + value.replaceAll("[\"\\\\$`]", "\\\\$0") + '"';
    }

    /** The value of an option; empty where it was not given. */
    public Optional<String> value(String name) {
        return options.stream()
                .filter(option -> option.name().equals(name))
                .map(Typed::value)
                .findFirst();
    }

    /** Without some options. */
    public TypedLine without(String... names) {
        List<String> gone = List.of(names);
        return new TypedLine(
                options.stream().filter(option -> !gone.contains(option.name())).toList());
    }

    /** With those options alone that a command takes. */
    public TypedLine of(Options command) {
        return new TypedLine(options.stream()
                .filter(option -> command.hasLongOption(option.name()))
                .toList());
    }

    /** With an option once, in the place where it stood, or at the end. */
    public TypedLine with(String name, String value) {
        List<Typed> others = new ArrayList<>();
        Typed set = new Typed(name, value);
        boolean placed = false;
        for (Typed option : options) {
            if (!option.name().equals(name)) {
                others.add(option);
            } else if (!placed) {
                placed = others.add(set);
            }
        }
        if (!placed) {
            others.add(set);
        }
        return new TypedLine(others);
    }

    /** With another value of each option of a name. */
    public TypedLine with(String name, UnaryOperator<String> changed) {
        return new TypedLine(options.stream()
                .map(option -> option.name().equals(name) ? new Typed(name, changed.apply(option.value())) : option)
                .toList());
    }

    /** With an option more, at the end, beside those of the same name. */
    public TypedLine adding(String name, String value) {
        List<Typed> more = new ArrayList<>(options);
        more.add(new Typed(name, value));
        return new TypedLine(more);
    }

    /** The options that another line does not have, as typed. */
    public String beyond(TypedLine other) {
        List<Typed> rest = new ArrayList<>(options);
        for (Typed option : other.options) {
            rest.remove(option);
        }
        return words(rest);
    }

    /** The whole command. */
    public String text(String command) {
        return "fizzhull " + command + (options.isEmpty() ? "" : ' ' + words(options));
    }

    /** Typed words for a page, on which no value is broken or parted from its option: no-break spaces there. */
    public static String unbroken(String typed) {
        StringBuilder out = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            quoted ^= c == '"' && (i == 0 || typed.charAt(i - 1) != '\\');
            out.append(quoted && c == ' ' ? NumberText.UNIT : c);
        }
        return OPTION.matcher(out).replaceAll("$1" + NumberText.UNIT + '"');
    }

    private static String words(List<Typed> options) {
        return String.join(" ", options.stream().map(Typed::toString).toList());
    }
}
