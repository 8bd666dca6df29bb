package org.fizzhull.cli.program;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Option;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.shell.CommandPage;

/** The commands as pages, for the files that shells and {@code man} read. */
public final class CommandPages {
    private CommandPages() {}

    /** Every command, in the order of the help. */
    public static List<CommandPage> all() {
        List<CommandPage> pages = new ArrayList<>();
        for (String name : Commands.NAMES) {
            Command command = Commands.named(name);
            List<CommandPage.OptionLine> options = new ArrayList<>();
            for (Option option : command.spec().getOptions()) {
                options.add(new CommandPage.OptionLine(
                        "--" + option.getLongOpt(),
                        option.hasArg() ? option.getArgName() : "",
                        option.getDescription()));
            }
            pages.add(new CommandPage(name, command.purpose(), command.free(), options, List.of(command.examples())));
        }
        return pages;
    }
}
