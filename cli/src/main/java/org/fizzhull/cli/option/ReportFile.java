package org.fizzhull.cli.option;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.file.OutputFile;
import org.fizzhull.cli.file.TextFile;
import org.fizzhull.cli.page.ReportPage;
import org.fizzhull.quantity.Refusal;

/** The file of the printable page; checked before anything is computed, written before the answer. */
public record ReportFile(OutputFile file) {
    private static final String ALLOWED = "a file name that ends in .html";

    public static Optional<ReportFile> of(Arguments arguments) {
        return arguments.text(CommonOptions.REPORT).map(text -> of(arguments, text));
    }

    private static ReportFile of(Arguments arguments, String text) {
        if (!text.endsWith(".html")) {
            String hint = "Write " + OutputFile.renamed(text, "batch", ".html") + ", for example.";
            throw new Refusal("unknown-format", CommonOptions.REPORT, text, ALLOWED, hint);
        }
        return new ReportFile(OutputFile.of(arguments.files(), CommonOptions.REPORT, text, ALLOWED));
    }

    /** Writes the page of an answer; the picture is an SVG document, or empty. */
    public void write(Arguments arguments, String answer, String behind, String picture) {
        String page = ReportPage.of(
                CommonOptions.units(arguments)::onPage,
                arguments.question(),
                answer,
                picture,
                inputs(arguments),
                behind);
        file.write(page.getBytes(StandardCharsets.UTF_8));
    }

    /** The options, and what the recipe file says, remarks left out: a file may change after the page is printed. */
    private static List<List<String>> inputs(Arguments arguments) {
        List<List<String>> inputs = new ArrayList<>(arguments.asked());
        for (String file : arguments.texts(MakingOptions.RECIPE)) {
            List<String> row = new ArrayList<>(List.of("in " + file));
            TextFile.read(arguments.files(), MakingOptions.RECIPE, file)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
                    .forEach(row::add);
            inputs.add(row);
        }
        return inputs;
    }
}
