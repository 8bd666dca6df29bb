package org.fizzhull.cli.option;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.fizzhull.cli.file.OutputFile;
import org.fizzhull.cli.picture.Png;
import org.fizzhull.quantity.Refusal;

/** The file of a picture; checked before anything is computed, written before the answer. */
public record ChartFile(OutputFile file, boolean png) {
    private static final String ALLOWED = "a file name that ends in .svg or .png";

    public static Optional<ChartFile> of(Arguments arguments) {
        return arguments.text(CommonOptions.CHART).map(text -> of(arguments, text));
    }

    private static ChartFile of(Arguments arguments, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        boolean png = text.endsWith(".png");
        if (!png && !text.endsWith(".svg")) {
            String end = lower.endsWith(".png") ? ".png" : ".svg";
            String name = OutputFile.renamed(text, "dome", end);
            throw new Refusal("unknown-format", CommonOptions.CHART, text, ALLOWED, "Write " + name + ", for example.");
        }
        return new ChartFile(OutputFile.of(arguments.files(), CommonOptions.CHART, text, ALLOWED), png);
    }

    public void write(String picture) {
        file.write(png ? Png.of(picture) : picture.getBytes(StandardCharsets.UTF_8));
    }
}
