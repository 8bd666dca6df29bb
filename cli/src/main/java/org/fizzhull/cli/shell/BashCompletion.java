package org.fizzhull.cli.shell;

import java.util.List;
import java.util.stream.Collectors;

/** Completion for bash: the commands, then the options of the one that stands there, and names of files elsewhere. */
public final class BashCompletion {
    private BashCompletion() {}

    /** The text of a file to be sourced. */
    public static String of(List<CommandPage> commands) {
        StringBuilder text = new StringBuilder();
        text.append("# Completion of fizzhull for bash: source this file.\n")
                .append("_fizzhull() {\n")
                .append("    local word=${COMP_WORDS[COMP_CWORD]} words=\n")
                .append("    COMPREPLY=()\n")
                .append("    if [ \"$COMP_CWORD\" -eq 1 ]; then\n")
                .append("        words=\"")
                .append(commands.stream().map(CommandPage::name).collect(Collectors.joining(" ")))
                .append(" --help --version\"\n")
                .append("    else\n")
                .append("        case $word in -*) ;; *) return ;; esac\n")
                .append("        case ${COMP_WORDS[1]} in\n");
        for (CommandPage command : commands) {
            text.append("            ")
                    .append(command.name())
                    .append(") words=\"")
                    .append(command.options().stream()
                            .map(CommandPage.OptionLine::name)
                            .collect(Collectors.joining(" ")))
                    .append("\" ;;\n");
        }
        return text.append("        esac\n")
                .append("    fi\n")
                .append("    COMPREPLY=($(compgen -W \"$words\" -- \"$word\"))\n")
                .append("}\n")
                .append("complete -o default -F _fizzhull fizzhull\n")
                .toString();
    }
}
