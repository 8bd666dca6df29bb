package org.fizzhull.cli.shell;

import java.util.List;

/** The manual page, in the macros of {@code man}. */
public final class ManualPage {
    private ManualPage() {}

    /**
     * The text of a file {@code fizzhull.1}.
     *
     * @param version the version of the program
     */
    public static String of(String version, List<CommandPage> commands) {
        StringBuilder text = new StringBuilder();
        text.append(".TH FIZZHULL 1 \"\" \"fizzhull ").append(version).append("\" \"User Commands\"\n");
        section(text, "NAME", "fizzhull \\- will a pressed, fizzing bath piece float?");
        text.append(".SH SYNOPSIS\n.B fizzhull\n.I COMMAND\n[options]\n");
        section(
                text,
                "DESCRIPTION",
                "Answers before anything is mixed whether a piece floats, how it fizzes, when it is dry and what it weighs,"
                        + " and says how sure that is. An answer is a forecast, not a test certificate.\n.PP\n"
                        + "A quantity is a number and a unit: 65 mm, 4.6 oz, 138 g +\\- 4 g. Words behind an option belong"
                        + " to it until the next option.");
        text.append(".SH COMMANDS\n");
        for (CommandPage command : commands) {
            String free = command.free().isEmpty() ? "" : " [" + command.free() + ']';
            text.append(".SS ").append(plain(command.name() + free)).append('\n');
            text.append(plain(command.purpose())).append('\n');
            for (CommandPage.OptionLine option : command.options()) {
                text.append(".TP\n.B ").append(plain(option.name()));
                if (!option.value().isEmpty()) {
                    text.append(" \\fI").append(plain(option.value())).append("\\fR");
                }
                text.append('\n').append(plain(option.description())).append('\n');
            }
            text.append(".PP\nTry\n.nf\n");
            for (String example : command.examples()) {
                text.append("    ").append(plain(example)).append('\n');
            }
            text.append(".fi\n");
        }
        section(
                text,
                "EXIT STATUS",
                "0 answered (a piece that sinks is an answer), 2 refused: one message on standard error says what was read,"
                        + " what is allowed and how to mend it; 1 something inside failed.");
        section(
                text,
                "ENVIRONMENT",
                "JAVA_HOME names the Java to use, 17 or later; FIZZHULL_JAVA_OPTS further options for it.");
        section(
                text,
                "CAUTIONS",
                "Dust of acid and foaming powder burns eyes and nose: wear mask and goggles. Damp pieces give off gas: a"
                        + " shut jar bursts. Local rules and a qualified assessor come first.");
        return text.toString();
    }

    private static void section(StringBuilder text, String title, String body) {
        text.append(".SH ").append(title).append('\n').append(body).append('\n');
    }

    /** Without what a line of these macros would take as its own: backslashes, hyphens, a point or quote in front. */
    private static String plain(String text) {
        String escaped = text.replace("\\", "\\e").replace("-", "\\-");
        return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
    }
}
