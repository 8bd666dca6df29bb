package org.fizzhull.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.picture.Png;
import org.fizzhull.quantity.Refusal;

/** The file of a picture; checked before anything is computed, written before the answer. */
record ChartFile(Path path, boolean png) {
    private static final String ALLOWED = "a file name that ends in .svg or .png";

    static Optional<ChartFile> of(Arguments arguments) {
        Optional<String> text = arguments.text(CommonOptions.CHART);
        return text.isPresent() ? Optional.of(of(arguments.files(), text.get())) : Optional.empty();
    }

    private static ChartFile of(FileAccess files, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        boolean png = text.endsWith(".png");
        if (!png && !text.endsWith(".svg")) {
            String end = lower.endsWith(".png") ? ".png" : ".svg";
            String stem = lower.endsWith(end) ? text.substring(0, text.length() - end.length()) : text;
            String name = (stem.isBlank() ? "dome" : stem) + end;
            throw new Refusal("unknown-format", CommonOptions.CHART, text, ALLOWED, "Write " + name + ", for example.");
        }
        try {
            Path path = files.path(CommonOptions.CHART, text);
            Path folder = path.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new Refusal(
                        "no-folder",
                        CommonOptions.CHART,
                        text,
                        "a file in a folder that is there",
                        "Make the folder first.");
            }
            if (Files.isDirectory(path)) {
                throw new Refusal(
                        "a-folder",
                        CommonOptions.CHART,
                        text,
                        ALLOWED,
                        "This name is a folder's: write a name below it.");
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                throw new Refusal(
                        "not-a-file",
                        CommonOptions.CHART,
                        text,
                        "a new file, or an ordinary one to write over",
                        "This is a pipe or a device: choose another name.");
            }
            return new ChartFile(path, png);
        } catch (InvalidPathException e) {
            throw new Refusal(
                    "unreadable",
                    CommonOptions.CHART,
                    text,
                    ALLOWED,
                    "This is no file name on this system: leave out unusual characters.");
        }
    }

    void write(String picture) {
        try {
            WholeFile.write(path, png ? Png.of(picture) : picture.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new Refusal(
                    "cannot-write",
                    CommonOptions.CHART,
                    path.toString(),
                    "a file that can be written",
                    "The old file, if there was one, is as it was. Check the folder, its rights and the room on the disk.");
        }
    }
}
