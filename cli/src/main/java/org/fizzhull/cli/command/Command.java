package org.fizzhull.cli.command;

import java.io.PrintStream;
import picocli.CommandLine.Model.CommandSpec;

/** A command of the program. */
public interface Command {
    /** One line: what it answers. */
    String purpose();

    /** Command lines to try, each whole. */
    String[] examples();

    /** Its options, the common ones included. */
    CommandSpec spec();

    /** Answers; throws a refusal where the input cannot be used. */
    void run(Arguments arguments, PrintStream out, PrintStream err);
}
