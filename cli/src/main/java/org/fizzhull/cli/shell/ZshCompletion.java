package org.fizzhull.cli.shell;

import java.util.List;

/** Completion for zsh: the commands and options with what they mean, and names of files as values. */
public final class ZshCompletion {
    private ZshCompletion() {}

    /** The text of a file {@code _fizzhull} in a folder of {@code fpath}. */
    public static String of(List<CommandPage> commands) {
        StringBuilder text = new StringBuilder();
        text.append("#compdef fizzhull\n")
                .append("# Completion of fizzhull for zsh: put this file into a folder of fpath.\n")
                .append("_fizzhull() {\n")
                .append("    if (( CURRENT == 2 )); then\n")
                .append("        local -a commands\n")
                .append("        commands=(\n");
        for (CommandPage command : commands) {
            text.append("            ")
                    .append(quoted(command.name() + ':' + command.purpose()))
                    .append('\n');
        }
        text.append("        )\n")
                .append("        _describe command commands\n")
                .append("        return\n")
                .append("    fi\n")
                .append("    shift words\n")
                .append("    (( CURRENT-- ))\n")
                .append("    case $words[1] in\n");
        for (CommandPage command : commands) {
            text.append("        ").append(command.name()).append(")\n            _arguments \\\n");
            for (CommandPage.OptionLine option : command.options()) {
                String value =
                        option.value().isEmpty() ? "" : ':' + option.value().replace(":", "\\:") + ":_files";
                text.append("                ")
                        .append(quoted('*' + option.name() + '[' + inBrackets(option.description()) + ']' + value))
                        .append(" \\\n");
            }
            text.append("                '*: :_files' ;;\n");
        }
        return text.append("    esac\n}\n_fizzhull \"$@\"\n").toString();
    }

    private static String inBrackets(String text) {
        return text.replace("\\", "\\\\")
                .replace("[", "\\[")
                .replace("]", "\\]")
                .replace(":", "\\:");
    }

    private static String quoted(String text) {
        return '\'' + text.replace("'", "'\\''") + '\'';
    }
}
