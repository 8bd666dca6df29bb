package org.fizzhull.cli.start;

import java.io.PrintStream;
import java.util.List;
import org.apache.commons.cli.Options;
import org.fizzhull.answer.body.AnswerWriter;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.cli.text.Table;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;

/** {@code start}: files for a first day, and what to type next. */
public final class StartCommand implements Command {
    @Override
    public String purpose() {
        return "writes a recipe, a list of moulds and a sheet for trials to begin with.";
    }

    @Override
    public String[] examples() {
        return new String[] {"fizzhull start workshop"};
    }

    @Override
    public Options spec() {
        return CommonOptions.spec();
    }

    @Override
    public String free() {
        return "FOLDER";
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        String name = arguments
                .free()
                .orElseThrow(() -> new Refusal(
                        "missing-option",
                        "folder",
                        "",
                        "a new folder, such as fizzhull start workshop",
                        "Name the folder behind start."));
        if (PrintableText.hiddenAt(name) >= 0 || name.indexOf('\n') >= 0) {
            throw new Refusal(
                    "unreadable", "folder", name, "letters, digits and signs that can be seen", "Type the name anew.");
        }
        StartFolder folder = StartFolder.write(arguments.files(), name);
        if (arguments.has(CommonOptions.JSON)) {
            try (JsonSink sink = JsonSink.pretty(out)) {
                AnswerWriter.open(sink, "start")
                        .text("folder", name)
                        .texts("files", folder.files())
                        .texts("next", folder.commands())
                        .notices(List.of())
                        .end();
            }
            return;
        }
        String last = folder.files().get(folder.files().size() - 1);
        out.print(Table.plain(Table.paragraph("Written: "
                + String.join(", ", folder.files().subList(0, folder.files().size() - 1))
                + "; the lines below stand in " + last + ".")));
        if (!arguments.has(CommonOptions.QUIET)) {
            out.println();
            out.print(Table.plain(folder.next()));
        }
    }
}
