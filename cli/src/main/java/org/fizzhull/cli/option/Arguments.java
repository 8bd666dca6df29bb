package org.fizzhull.cli.option;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.quantity.Refusal;

/**
 * The words of a command line, read against a command's options. It knows which values a command has looked at, so that
 * one that nobody reads is refused and not passed over.
 */
public final class Arguments {
    /** Options that may be given more than once in every command. */
    private static final List<String> REPEATABLE =
            List.of(MakingOptions.CHANGE, LoadOptions.INSIDE, LoadOptions.ON_TOP);

    /** Options about how an answer is computed and shown, not about what: they may go unused. */
    private static final List<String> OF_THE_RUN =
            List.of(CommonOptions.SEED, CommonOptions.SAMPLES, CommonOptions.THREADS, CommonOptions.UNITS);

    private final CommandLine line;
    private final Options known;

    /** Name of an option that is taken to be absent; empty for none. */
    private final String hidden;

    /** Names of the options whose values were looked at; shared with {@link #without}. */
    private final Set<String> used;

    private final Surroundings around;

    /** What the command answers, in one line. */
    private final String question;

    /** The bench file, read once for all that ask for it; shared with {@link #without}. */
    private final BenchFile[] bench;

    /** What was taken of it; shared with {@link #without}. */
    private final BenchUse benchUse;

    private Arguments(
            String question,
            CommandLine line,
            Options known,
            String hidden,
            Set<String> used,
            Surroundings around,
            BenchFile[] bench,
            BenchUse benchUse) {
        this.question = question;
        this.line = line;
        this.known = known;
        this.hidden = hidden;
        this.used = used;
        this.around = around;
        this.bench = bench;
        this.benchUse = benchUse;
    }

    /** Reads the words behind the command's name. */
    public static Arguments read(Command command, String[] words, Surroundings around) {
        return read(
                command.purpose(),
                command.spec(),
                command.repeatable(),
                command.free().isEmpty(),
                words,
                around);
    }

    /** A line of options that stands in a file which a line names: the same files may be opened. */
    static Arguments of(Options spec, String[] words, Arguments line) {
        return read(line.question, spec, List.of(), true, words, line.around);
    }

    private static Arguments read(
            String question,
            Options spec,
            List<String> repeatable,
            boolean noFree,
            String[] words,
            Surroundings around) {
        String name = words[0];
        String[] joined = joined(spec, words);
        try {
            CommandLine line = DefaultParser.builder()
                    .setAllowPartialMatching(false)
                    .setStripLeadingAndTrailingQuotes(false)
                    .get()
                    .parse(spec, joined);
            once(line, repeatable);
            if (noFree && !line.getArgList().isEmpty()) {
                throw UnknownOption.word(name, spec, line.getArgList().get(0));
            }
            return new Arguments(question, line, spec, "", new HashSet<>(), around, new BenchFile[1], new BenchUse());
        } catch (UnrecognizedOptionException e) {
            throw UnknownOption.refusal(name, spec, e.getOption(), around.takers());
        } catch (MissingArgumentException e) {
            String option = "--" + e.getOption().getLongOpt();
            throw new Refusal("missing-value", option, "", "a value after " + option, UnknownOption.helpHint(name));
        } catch (ParseException e) {
            throw new Refusal(
                    "unreadable",
                    "command line",
                    String.join(" ", joined),
                    "options and values",
                    e.getMessage() + ". " + UnknownOption.helpHint(name));
        }
    }

    /** The same line as if it did not have an option. */
    public Arguments without(String name) {
        return new Arguments(question, line, known, name, used, around, bench, benchUse);
    }

    /** The command as it would be typed, without what only says how to answer. */
    public String typed(String command) {
        return typed().text(command);
    }

    /** The options as they would be typed, without those that only say how to answer. */
    public TypedLine typed() {
        List<TypedLine.Typed> typed = new ArrayList<>();
        for (Option option : line.getOptions()) {
            String name = "--" + option.getLongOpt();
            if (!CommonOptions.ofAnswer(name)) {
                typed.add(new TypedLine.Typed(name, option.hasArg() ? option.getValue() : ""));
            }
        }
        return new TypedLine(typed);
    }

    /** The files that may be opened and written. */
    public FileAccess files() {
        return around.files();
    }

    /** Standard input. */
    public InputStream in() {
        return around.in();
    }

    /** What the command answers, in one line. */
    String question() {
        return question;
    }

    /** What was asked: name and value of each option in its order, without those that say how to answer. */
    List<List<String>> asked() {
        List<List<String>> asked = new ArrayList<>();
        free().ifPresent(text -> asked.add(List.of("about", text)));
        for (Option option : line.getOptions()) {
            String name = option.getLongOpt();
            if (!CommonOptions.ofAnswer("--" + name)) {
                asked.add(List.of(name.replace('-', ' '), option.hasArg() ? option.getValue() : "yes"));
            }
        }
        return asked;
    }

    /** Whether an option was given. */
    public boolean has(String name) {
        return !name.equals(hidden) && line.hasOption(CommonOptions.bare(name));
    }

    /** The text of an option. */
    public Optional<String> text(String name) {
        used.add(name);
        return name.equals(hidden)
                ? Optional.empty()
                : Optional.ofNullable(line.getOptionValue(CommonOptions.bare(name)));
    }

    /** The value of an option, read from its name and its text. */
    public <T> Optional<T> value(String name, BiFunction<String, String, T> reader) {
        return text(name).map(text -> reader.apply(name, text));
    }

    /** The value that an option names by its word; any other word is refused. */
    public <T> Optional<T> word(String name, T[] values, Function<T, String> word, String allowed) {
        return text(name)
                .map(text -> Arrays.stream(values)
                        .filter(value -> word.apply(value).equals(text))
                        .findFirst()
                        .orElseThrow(
                                () -> new Refusal("unknown-word", name, text, allowed, "Write one of these words.")));
    }

    /** The bench file that an option names; that of an unknown bench where it was not given. */
    BenchFile bench(String option) {
        BenchFile read = bench[0];
        if (read == null) {
            read = text(option)
                    .map(file -> BenchFile.read(files(), option, file))
                    .orElse(BenchFile.NONE);
            bench[0] = read;
        }
        return read;
    }

    /** What the command took of its bench file, so far. */
    public BenchUse benchUse() {
        return benchUse;
    }

    /** The refusal of what was typed for an option. */
    public Refusal refusal(String code, String name, String allowed, String hint) {
        return new Refusal(code, name, text(name).orElse(""), allowed, hint);
    }

    /** The texts of an option that may be given more than once, in order. */
    public List<String> texts(String name) {
        used.add(name);
        String[] values = line.getOptionValues(CommonOptions.bare(name));
        return values == null ? List.of() : List.of(values);
    }

    /** Whether the command has an option at all. */
    boolean knows(String name) {
        return known.hasLongOption(CommonOptions.bare(name));
    }

    /** All values on the line, whichever option they belong to, and the free words. */
    List<String> values() {
        List<String> values = new ArrayList<>(line.getArgList());
        for (Option option : line.getOptions()) {
            values.addAll(option.getValuesList());
        }
        return values;
    }

    /** Refuses a value that the command, which has answered by now, did not look at. */
    public void refuseUnused() {
        for (Option option : line.getOptions()) {
            String name = "--" + option.getLongOpt();
            if (option.hasArg() && !used.contains(name) && !OF_THE_RUN.contains(name)) {
                throw new Refusal(
                        "unused-option",
                        name,
                        line.getOptionValue(option),
                        "options that bear on the answer",
                        name + " changes nothing beside these options: leave it out, or give what it belongs to.");
            }
        }
    }

    /** The text of an option that must be there. */
    public String required(String name, String allowed, String hint) {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            throw new Refusal("missing-option", name, "", allowed, hint);
        }
        return text.get();
    }

    /** The words that stand free of any option, in one text; empty where there are none. */
    public Optional<String> free() {
        List<String> free = line.getArgList();
        return free.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", free));
    }

    /** A whole number within limits, in the digits 0 to 9. */
    public long whole(String name, long standard, long low, long high) {
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
        throw new Refusal(
                "out-of-range", name, text.get(), allowed, "Write a number of that range, such as " + standard + ".");
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

    private static void once(CommandLine line, List<String> repeatable) {
        List<String> met = new ArrayList<>();
        for (Option option : line.getOptions()) {
            String name = "--" + option.getLongOpt();
            if (met.contains(name)
                    && !REPEATABLE.contains(name)
                    && !MeasuredOptions.REPEATABLE.contains(name)
                    && !repeatable.contains(name)) {
                throw new Refusal("repeated", name, "it twice", "once", "Leave out one of the two.");
            }
            met.add(name);
        }
    }

    /**
     * Words behind a value belong to it until the next option: {@code --mass 138 g +- 4 g} is one value. The words
     * before the first option make one free text.
     */
    private static String[] joined(Options spec, String[] words) {
        List<String> joined = new ArrayList<>(words.length);
        boolean open = false;
        for (int i = 1; i < words.length; i++) {
            String word = words[i];
            if (isOption(word)) {
                joined.add(word);
                open = word.indexOf('=') > 0;
                boolean awaits = spec.hasOption(word) && spec.getOption(word).hasArg();
                if (awaits && i + 1 < words.length && !isOption(words[i + 1])) {
                    joined.add(words[++i]);
                    open = true;
                }
            } else if (open) {
                int last = joined.size() - 1;
                joined.set(last, joined.get(last) + ' ' + word);
            } else {
                joined.add(word);
                open = true;
            }
        }
        return joined.toArray(new String[0]);
    }

    /**
     * The words of a line that may be options: behind the word {@code --} none is, whatever it looks like (guideline 10
     * of the utility conventions, POSIX.1-2017, XBD 12.2).
     */
    public static List<String> options(String... words) {
        List<String> all = List.of(words);
        int end = all.indexOf("--");
        return end < 0 ? all : all.subList(0, end);
    }

    /** Two dashes, or a dash and a letter; {@code -5} is a number. */
    private static boolean isOption(String word) {
        return word.startsWith("--")
                || (word.length() > 1 && word.charAt(0) == '-' && Character.isLetter(word.charAt(1)));
    }
}
