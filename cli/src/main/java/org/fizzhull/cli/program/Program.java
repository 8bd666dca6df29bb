package org.fizzhull.cli.program;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.List;
import org.fizzhull.answer.body.RefusalBody;
import org.fizzhull.answer.body.Version;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.Surroundings;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;

/**
 * The whole program without its process: reads the name of a command, runs it, and turns a refusal or a failure into an
 * answer. What a command writes is kept back until it is whole, so that standard output holds one answer or one error
 * object, never half of one.
 */
public final class Program {
    /** Further mistakes of one file that are told on a screen: with the first, about a dozen lines. */
    private static final int OTHERS = 9;

    /** The command answered. */
    public static final int ANSWERED = 0;

    /** Something inside failed. */
    public static final int FAILED = 1;

    /** The input was refused. */
    public static final int REFUSED = 2;

    private final Surroundings around;
    private final PrintStream out;
    private final PrintStream err;

    /** A program that writes answers to one stream and everything else to another. */
    public Program(PrintStream out, PrintStream err) {
        this(InputStream.nullInputStream(), out, err);
    }

    /** The same with standard input, which {@code stream} reads. */
    public Program(InputStream in, PrintStream out, PrintStream err) {
        this(in, out, err, FileAccess.ANY);
    }

    /** The same with a rule for the files that it may open and write. */
    public Program(InputStream in, PrintStream out, PrintStream err, FileAccess files) {
        this.around = new Surroundings(in, files, Commands::taking);
        this.out = out;
        this.err = err;
    }

    /** Runs a command line and returns the exit status; throws nothing, whatever happens inside. */
    public int run(String... words) {
        String name = words.length == 0 ? "--help" : words[0];
        try {
            return answer(name, words);
        } catch (Refusal refusal) {
            refuse(refusal, name, words);
            return REFUSED;
        } catch (
                Throwable
                        failure) { // errors of the machine, such as a full stack or heap, are answered like all others
            refuse(InternalFailure.of(failure), name, words);
            return FAILED;
        }
    }

    private int answer(String name, String[] words) {
        if (name.equals("--help") || name.equals("-h") || name.equals("help")) {
            out.print(words.length > 1 ? Help.of(words[1], Commands.named(words[1])) : Help.program());
            return words.length == 0 ? REFUSED : ANSWERED;
        }
        if (name.equals("--version")) {
            if (words.length > 1) {
                throw new Refusal("unexpected-word", "command line", words[1], "--version alone", "Leave it out.");
            }
            out.println("fizzhull " + Version.TEXT);
            return ANSWERED;
        }
        Command command = Commands.named(name);
        Arguments arguments = Arguments.read(command, words, around);
        if (arguments.has(CommonOptions.HELP)) {
            out.print(Help.of(name, command));
        } else if (arguments.has(CommonOptions.VERSION)) {
            out.println("fizzhull " + Version.TEXT);
        } else if (command.answersAtOnce()) {
            command.run(arguments, out, err);
        } else {
            BufferedAnswer answer = BufferedAnswer.of(command, arguments);
            out.writeBytes(answer.out());
            err.writeBytes(answer.err());
        }
        return ANSWERED;
    }

    private void refuse(Refusal refusal, String command, String[] words) {
        List<String> typed = List.of(words);
        ShownUnits units = CommonOptions.units(typed);
        err.println("fizzhull: " + units.message(refusal, typed));
        List<Refusal> others = refusal.others();
        for (Refusal other : others.subList(0, Math.min(others.size(), OTHERS))) {
            err.println("fizzhull: " + units.message(other, typed));
        }
        if (others.size() > OTHERS) {
            err.println("fizzhull: and " + (others.size() - OTHERS) + " more; --json names them all.");
        }
        if (Arguments.options(words).contains(CommonOptions.JSON)) {
            JsonSink.write(out, new RefusalBody(PrintableText.of(command), refusal));
        }
    }
}
