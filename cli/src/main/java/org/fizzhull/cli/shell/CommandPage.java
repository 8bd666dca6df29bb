package org.fizzhull.cli.shell;

import java.util.List;

/**
 * What there is to say of a command.
 *
 * @param name what is typed
 * @param purpose one line: what it answers
 * @param free what words free of any option mean; empty where it takes none
 * @param options in the order of its help page
 * @param examples command lines to try, each whole
 */
public record CommandPage(String name, String purpose, String free, List<OptionLine> options, List<String> examples) {
    /** Keeps its lists from change. */
    public CommandPage {
        options = List.copyOf(options);
        examples = List.copyOf(examples);
    }

    /**
     * An option.
     *
     * @param name with its dashes
     * @param value what its value is; empty for a flag
     * @param description in a few words
     */
    public record OptionLine(String name, String value, String description) {}
}
