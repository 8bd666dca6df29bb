package org.fizzhull.cli.program;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.Surroundings;
import org.fizzhull.cli.option.UnknownOption;
import org.fizzhull.cli.stream.AnswerStream;
import org.fizzhull.cli.stream.Request;
import org.fizzhull.quantity.Refusal;

/**
 * {@code stream}: many questions in one process. A request is answered as the command line of the same options would be,
 * except that it opens only the files that {@code --files} allows and draws on one thread, since other requests have the
 * others.
 */
final class StreamCommand implements Command {
    private static final String NAME = "stream";
    private static final String FILES = "--files";

    /** They say how a person would see the answer. */
    private static final List<String> FOR_PEOPLE =
            List.of(CommonOptions.HELP, CommonOptions.VERSION, CommonOptions.EXPLAIN, CommonOptions.QUIET);

    @Override
    public String purpose() {
        return "answers questions for a program: one JSON object a line in, one a line out.";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull stream < questions.jsonl > answers.jsonl",
            "fizzhull stream --files workshop < questions.jsonl",
            "echo '{\"id\": 1, \"command\": \"float\", \"shape\": \"sphere(diameter=65 mm)\", \"mass\": \"138 g\"}'"
                    + " | fizzhull stream",
        };
    }

    @Override
    public Options spec() {
        Options spec = new Options();
        CommonOptions.value(spec, FILES, "FOLDER", "the questions may name files in this folder (default: none)");
        CommonOptions.value(spec, CommonOptions.THREADS, "N", "questions answered at a time (one for each processor)");
        CommonOptions.flag(spec, CommonOptions.VERSION, "the version");
        spec.addOption(Option.builder("h")
                .longOpt(CommonOptions.bare(CommonOptions.HELP))
                .desc("this page")
                .get());
        return spec;
    }

    @Override
    public boolean answersAtOnce() {
        return true;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        FileAccess files = arguments
                .text(FILES)
                .map(folder -> FileAccess.inside(FILES, folder))
                .orElse(FileAccess.NONE);
        Surroundings around = new Surroundings(InputStream.nullInputStream(), files, Commands::taking);
        new AnswerStream(request -> answer(request, around), DrawOptions.threads(arguments)).run(arguments.in(), out);
    }

    private static byte[] answer(Request request, Surroundings around) {
        try {
            String name = request.command();
            if (name.equals(NAME)) {
                throw new Refusal("unknown-command", "command", name, "a command that answers", "This is a stream.");
            }
            Command command = Commands.named(name);
            String[] words = words(request, command);
            return BufferedAnswer.of(command, Arguments.read(command, words, around))
                    .out();
        } catch (Refusal refusal) {
            throw refusal;
        } catch (Throwable failure) { // whatever it is, the next line is to be answered
            throw InternalFailure.of(failure);
        }
    }

    /** The command line that asks the same. Each value is in one word with its option, so that none is read as an option. */
    private static String[] words(Request request, Command command) {
        Options spec = command.spec();
        List<String> words = new ArrayList<>(List.of(request.command()));
        boolean threads = spec.hasLongOption(CommonOptions.bare(CommonOptions.THREADS));
        for (Request.Field field : request.fields()) {
            String key = field.key();
            if (free(command, key)) {
                for (String value : field.values()) {
                    words.add(1, plain(key, value));
                }
                continue;
            }
            String name = name(request.command(), spec, key);
            boolean flag = !spec.getOption(name).hasArg();
            if (flag != field.values().isEmpty()) {
                String read = field.values().isEmpty() ? "true" : field.values().get(0);
                String allowed = flag ? "true or false" : "a text";
                throw new Refusal("not-a-value", key, read, allowed, UnknownOption.helpHint(request.command()));
            }
            threads &= !name.equals(CommonOptions.THREADS);
            for (String value : field.values()) {
                words.add(name + "=" + value);
            }
            if (flag && !name.equals(CommonOptions.JSON)) {
                words.add(name);
            }
        }
        if (threads) {
            words.add(CommonOptions.THREADS + "=1");
        }
        if (spec.hasLongOption(CommonOptions.bare(CommonOptions.JSON))) {
            words.add(CommonOptions.JSON);
            words.add(CommonOptions.QUIET);
        }
        return words.toArray(new String[0]);
    }

    /** Whether a key is the word that the command takes free of any option: {@code shape} of {@code shapes}. */
    private static boolean free(Command command, String key) {
        return command.free().equalsIgnoreCase(key);
    }

    /** A word that would be read as an option is none of a shape or a name. */
    private static String plain(String key, String value) {
        if (value.startsWith("-")) {
            throw new Refusal("unreadable", key, value, "a text that does not start with a dash", "Check the value.");
        }
        return value;
    }

    private static String name(String command, Options spec, String key) {
        String name = "--" + key.replace('_', '-');
        boolean written = !key.isEmpty() && key.chars().allMatch(c -> c == '_' || (c >= 'a' && c <= 'z'));
        if (!written || !spec.hasLongOption(CommonOptions.bare(name)) || FOR_PEOPLE.contains(name)) {
            if (FOR_PEOPLE.contains(name)) {
                throw new Refusal(
                        "unknown-option", key, "true", "what bears on the answer", "Leave it out: it is for people.");
            }
            throw written
                    ? UnknownOption.refusal(command, spec, name, Commands::taking)
                            .of(key)
                    : new Refusal(
                            "unknown-option",
                            key,
                            key,
                            "names of options in small letters, with _ for -",
                            UnknownOption.helpHint(command));
        }
        return name;
    }
}
