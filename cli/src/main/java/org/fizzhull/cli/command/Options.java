package org.fizzhull.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The options that a command takes, in the order of its help page. */
public final class Options {
    private static final String SHORT_HELP = "-h";

    private final List<Option> all = new ArrayList<>();

    Options() {}

    /**
     * One option.
     *
     * @param name with both dashes
     * @param label what its value is called on the help page; empty where it takes none
     * @param description for the help page
     */
    record Option(String name, String label, String description) {
        boolean takesValue() {
            return !label.isEmpty();
        }
    }

    void add(String name, String label, String description) {
        all.add(new Option(name, label, description));
    }

    List<Option> all() {
        return all;
    }

    /** The option of that name, with one dash or two; null where there is none. */
    @Nullable
    Option named(String word) {
        String name = word.equals(SHORT_HELP) ? CommonOptions.HELP : word.startsWith("--") ? word : '-' + word;
        for (Option option : all) {
            if (option.name().equals(name)) {
                return option;
            }
        }
        return null;
    }
}
