package org.fizzhull.cli.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.fizzhull.cli.text.RefusalText;
import org.fizzhull.cli.text.Version;
import org.fizzhull.quantity.Echo;
import org.fizzhull.quantity.Refusal;

/**
 * The whole program without its process: reads the name of a command, runs it, and turns a refusal or a failure into an
 * answer. What a command writes is kept back until it is whole, so that standard output holds one answer or one error
 * object, never half of one.
 */
public final class Program {
    /** The command answered. */
    public static final int ANSWERED = 0;

    /** Something inside failed. */
    public static final int FAILED = 1;

    /** The input was refused. */
    public static final int REFUSED = 2;

    private final PrintStream out;
    private final PrintStream err;

    /** A program that writes answers to one stream and everything else to another. */
    public Program(PrintStream out, PrintStream err) {
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
        Arguments arguments = Arguments.read(command, words);
        if (arguments.has(CommonOptions.HELP)) {
            out.print(Help.of(name, command));
        } else if (arguments.has(CommonOptions.VERSION)) {
            out.println("fizzhull " + Version.TEXT);
        } else {
            ByteArrayOutputStream text = new ByteArrayOutputStream(8192);
            ByteArrayOutputStream said = new ByteArrayOutputStream();
            try {
                PrintStream to = stream(text);
                PrintStream aside = stream(said);
                DrawOptions.check(arguments);
                CommonOptions.units(arguments);
                command.run(arguments, to, aside);
                arguments.refuseUnused();
                to.flush();
                aside.flush();
            } catch (Refusal refusal) {
                throw OptionNames.of(arguments, refusal);
            }
            out.writeBytes(text.toByteArray());
            err.writeBytes(said.toByteArray());
        }
        return ANSWERED;
    }

    private static PrintStream stream(ByteArrayOutputStream to) {
        return new PrintStream(to, false, StandardCharsets.UTF_8);
    }

    private void refuse(Refusal refusal, String command, String[] words) {
        err.println("fizzhull: " + refusal.getMessage());
        for (Refusal other : refusal.others()) {
            err.println("fizzhull: " + other.getMessage());
        }
        for (String word : words) {
            if (word.equals(CommonOptions.JSON)) {
                RefusalText.json(out, Echo.of(command), refusal);
                return;
            }
        }
    }
}
