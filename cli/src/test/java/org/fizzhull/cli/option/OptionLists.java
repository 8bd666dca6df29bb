package org.fizzhull.cli.option;

import java.util.List;
import org.apache.commons.cli.Option;
import org.fizzhull.cli.program.Commands;

/** The commands and their options, as the program itself has them, for tests of other packages. */
public final class OptionLists {
    private OptionLists() {}

    /** Names of all commands. */
    public static List<String> commands() {
        return Commands.NAMES;
    }

    /** The options of a command. */
    public static List<Option> of(String command) {
        return List.copyOf(Commands.named(command).spec().getOptions());
    }

    /** Whether a command takes an option more than once. */
    public static boolean mayRepeat(String command, String option) {
        return Commands.named(command).repeatable().contains("--" + option);
    }

    /** Whether a command takes words free of any option. */
    public static boolean takesFreeWords(String command) {
        return !Commands.named(command).free().isEmpty();
    }
}
