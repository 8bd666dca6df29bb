package org.fizzhull.cli.option;

import java.io.PrintStream;
import java.util.List;
import org.apache.commons.cli.Options;

/** A command of the program. */
public interface Command {
    /** One line: what it answers. */
    String purpose();

    /** Command lines to try, each whole. */
    String[] examples();

    /** Its options, the common ones included. */
    Options spec();

    /** Lines of a drawing below the options of the help page; none as a rule. */
    default List<String> drawing() {
        return List.of();
    }

    /** What words free of any option mean, for the help page; empty where the command takes none. */
    default String free() {
        return "";
    }

    /** Options that may be given more than once, beside those that may in every command. */
    default List<String> repeatable() {
        return List.of();
    }

    /** Whether what it writes goes out while it runs, since it has no end that could be waited for. */
    default boolean answersAtOnce() {
        return false;
    }

    /** Answers; throws a refusal where the input cannot be used. */
    void run(Arguments arguments, PrintStream out, PrintStream err);
}
