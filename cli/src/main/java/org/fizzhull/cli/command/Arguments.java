package org.fizzhull.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.quantity.Refusal;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The words of a command line, read against a command's options. */
public final class Arguments {
    /** Options of the plan that this version does not have. */
    private static final String LATER = " --air --dry-for --on --fan --wrap-after --wrap"
            + " --stored --stored-air --room --pieces --measured-fizz --on-top --inside --coated --bench --report ";

    private final ParseResult result;

    private Arguments(ParseResult result) {
        this.result = result;
    }

    /** Reads the words behind the command's name. */
    static Arguments read(CommandSpec spec, String[] words) {
        String[] joined = joined(spec, words);
        try {
            return new Arguments(new CommandLine(spec).parseArgs(joined));
        } catch (CommandLine.UnmatchedArgumentException e) {
            throw unmatched(spec, e);
        } catch (CommandLine.MissingParameterException e) {
            String option = joined[joined.length - 1];
            throw new Refusal("missing-value", option, "", "a value after " + option, helpHint(spec));
        } catch (CommandLine.OverwrittenOptionException e) {
            throw new Refusal("repeated", e.getOverwritten().paramLabel(), "twice", "once", "Give each option once.");
        } catch (CommandLine.ParameterException e) {
            throw new Refusal(
                    "unreadable", "command line", String.join(" ", joined), "options and values", e.getMessage());
        }
    }

    /** Whether a flag was given. */
    boolean has(String name) {
        return result.hasMatchedOption(name);
    }

    /** The text of an option. */
    Optional<String> text(String name) {
        return result.hasMatchedOption(name) ? Optional.of(result.matchedOptionValue(name, "")) : Optional.empty();
    }

    /** The texts of an option that may stand several times, in order. */
    List<String> texts(String name) {
        return result.hasMatchedOption(name) ? result.matchedOptionValue(name, List.of()) : List.of();
    }

    /** The text of an option that must be there. */
    String required(String name, String allowed, String hint) {
        return text(name).orElseThrow(() -> new Refusal("missing-option", name, "", allowed, hint));
    }

    /** The words that stand free of any option, in one text; empty where there are none. */
    Optional<String> free() {
        return result.hasMatchedPositional(0) ? Optional.of(result.matchedPositionalValue(0, "")) : Optional.empty();
    }

    /** A whole number within limits. */
    long whole(String name, long standard, long low, long high) {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            return standard;
        }
        String allowed = "a whole number from " + low + " to " + high;
        try {
            long value = Long.parseLong(text.get());
            if (value >= low && value <= high) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new Refusal("not-a-number", name, text.get(), allowed, "Write digits only, such as 4096.");
        }
        throw new Refusal("out-of-range", name, text.get(), allowed, "");
    }

    /**
     * Words behind a value belong to it until the next option: {@code --mass 138 g +- 4 g} is one value. The words
     * before the first option make one free text.
     */
    private static String[] joined(CommandSpec spec, String[] words) {
        List<String> joined = new ArrayList<>(words.length);
        boolean open = false;
        for (int i = 1; i < words.length; i++) {
            String word = words[i];
            if (word.startsWith("--") || word.equals("-h")) {
                joined.add(word);
                OptionSpec option = spec.findOption(word);
                boolean awaits = option != null && option.arity().max() > 0;
                open = false;
                if (awaits && i + 1 < words.length && !words[i + 1].startsWith("--")) {
                    joined.add(words[++i]);
                    open = true;
                } else if (word.indexOf('=') > 0) {
                    open = true;
                }
            } else if (open || (i > 1 && joined.size() == 1)) {
                int last = joined.size() - 1;
                joined.set(last, joined.get(last) + ' ' + word);
            } else {
                joined.add(word);
                open = true;
            }
        }
        return joined.toArray(new String[0]);
    }

    private static Refusal unmatched(CommandSpec spec, CommandLine.UnmatchedArgumentException e) {
        String word = e.getUnmatched().get(0);
        String name = word.indexOf('=') > 0 ? word.substring(0, word.indexOf('=')) : word;
        if (LATER.contains(' ' + name + ' ')) {
            return new Refusal(
                    "not-yet",
                    name,
                    word,
                    "the options of fizzhull " + spec.name() + " --help",
                    "This version does not have " + name + " yet.");
        }
        if (!word.startsWith("-")) {
            return new Refusal("unexpected-word", "command line", word, "options that start with --", helpHint(spec));
        }
        List<String> near = e.getSuggestions();
        String hint = near.isEmpty() ? helpHint(spec) : "Did you mean " + near.get(0) + "?";
        return new Refusal("unknown-option", name, word, "an option of fizzhull " + spec.name(), hint);
    }

    private static String helpHint(CommandSpec spec) {
        return "Type fizzhull " + spec.name() + " --help for its options.";
    }
}
