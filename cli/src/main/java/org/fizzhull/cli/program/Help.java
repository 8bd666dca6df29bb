package org.fizzhull.cli.program;

import org.apache.commons.cli.Option;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.text.Table;

/** Help pages, built from the options themselves. */
final class Help {
    private Help() {}

    /** The page of the program. */
    static String program() {
        StringBuilder page = new StringBuilder();
        page.append("fizzhull COMMAND [options]\n\n")
                .append("Will a pressed, fizzing bath piece float? Answers before you mix.\n\n");
        Table table = new Table();
        for (String name : Commands.NAMES) {
            table.row(name, Commands.named(name).purpose());
        }
        page.append(table)
                .append('\n')
                .append("  fizzhull COMMAND --help   options and examples of one command\n")
                .append("  fizzhull --version        the version\n");
        return Table.plain(page.toString());
    }

    /** The page of a command. */
    static String of(String name, Command command) {
        StringBuilder page = new StringBuilder();
        String free = command.free().isEmpty() ? "" : " [" + command.free() + ']';
        page.append("fizzhull ")
                .append(name)
                .append(free)
                .append(": ")
                .append(command.purpose())
                .append("\n\n");
        Table table = new Table();
        for (Option option : command.spec().getOptions()) {
            String label = option.hasArg() ? ' ' + option.getArgName() : "";
            table.row("--" + option.getLongOpt() + label, option.getDescription());
        }
        page.append(table).append('\n');
        for (String line : command.drawing()) {
            page.append(line.isEmpty() ? "" : "  " + line).append('\n');
        }
        page.append(command.drawing().isEmpty() ? "Try\n" : "\nTry\n");
        for (String example : command.examples()) {
            page.append("  ").append(example).append('\n');
        }
        return Table.plain(page.toString());
    }
}
