package org.fizzhull.cli.program;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.ReportFile;
import org.fizzhull.quantity.Refusal;

/**
 * The answer of one command, kept back until it is whole: a refusal or a failure half way leaves nothing of it behind.
 *
 * @param out what goes to standard output, UTF-8
 * @param err what goes to standard error, UTF-8
 */
record BufferedAnswer(byte[] out, byte[] err) {
    /** Runs the command; a refusal names the option that was typed. */
    static BufferedAnswer of(Command command, Arguments arguments) {
        ByteArrayOutputStream text = new ByteArrayOutputStream(8192);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            PrintStream to = stream(text);
            PrintStream aside = stream(said);
            DrawOptions.check(arguments);
            CommonOptions.units(arguments);
            ReportFile.of(arguments);
            command.run(arguments, to, aside);
            arguments.refuseUnused();
            to.flush();
            aside.flush();
        } catch (Refusal refusal) {
            throw OptionNames.of(arguments, refusal);
        }
        return new BufferedAnswer(text.toByteArray(), said.toByteArray());
    }

    private static PrintStream stream(ByteArrayOutputStream to) {
        return new PrintStream(to, false, StandardCharsets.UTF_8);
    }
}
