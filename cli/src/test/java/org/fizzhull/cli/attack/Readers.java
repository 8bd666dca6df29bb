package org.fizzhull.cli.attack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.file.RecipeFile;
import org.fizzhull.cli.file.WeightsFile;
import org.fizzhull.cli.program.Program;
import org.fizzhull.forecast.model.DryLog;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;

/** Each reader of what a person writes, held to what must be true of any answer: a sound value, or a refusal with a mend. */
final class Readers {
    /** Names of the readers, as those of the folders of the corpus. */
    static final List<String> NAMES = List.of("quantity", "shape", "recipe", "outline", "log", "line");

    private final Path folder;

    Readers(Path folder) {
        this.folder = folder;
    }

    /** Whether a reader took the bytes; throws where the answer is neither sound nor a refusal with a mend. */
    boolean judge(String reader, byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        try {
            switch (reader) {
                case "quantity" -> quantity(text);
                case "shape" -> shape(ShapeText.read(text));
                case "recipe" ->
                    recipe(RecipeFile.read(FileAccess.ANY, "--recipe", file(bytes, "a.yaml"), Measures.US_LEGAL)
                            .recipe());
                case "outline" -> {
                    return line("shapes", "revolved(file=\"" + file(bytes, "a.csv") + "\")", "--json");
                }
                case "log" -> log(WeightsFile.read(FileAccess.ANY, "--log", file(bytes, "b.csv"), Optional.empty()));
                case "line" -> {
                    return line(text.split("\n", -1));
                }
                default -> throw new IllegalArgumentException(reader);
            }
            return true;
        } catch (Refusal refusal) {
            require(!refusal.code().isBlank() && !refusal.field().isBlank(), "a refusal of nothing: " + refusal);
            require(!refusal.hint().isBlank(), "no mend: " + refusal.getMessage());
            require(String.valueOf(refusal.getMessage()).length() < 2000, "a long refusal: " + refusal.getMessage());
            require(!String.valueOf(refusal.getMessage()).contains("\n"), "not on one line: " + refusal.getMessage());
            return false;
        }
    }

    private static void quantity(String text) {
        Amount amount = QuantityText.parseAny("any", text, Measures.METRIC, Dimension.values());
        require(amount.low() <= amount.value() && amount.value() <= amount.high(), "ends out of order: " + amount);
        require(Math.abs(amount.high()) < 1e13, "too large: " + amount);
    }

    private static void shape(Shape shape) {
        require(shape.volume() > 0 && shape.volume() < 10, "volume " + shape.volume());
        require(shape.surface() > 0 && shape.surface() < 100, "surface " + shape.surface());
        require(ShapeText.read(shape.text()).text().equals(shape.text()), "text does not read back: " + shape.text());
    }

    private static void recipe(Recipe recipe) {
        require(recipe.dryMass() > 0 && recipe.dryMass() < 1e12, "dry mass " + recipe.dryMass());
    }

    private static void log(DryLog log) {
        for (DryLog.Series piece : log.pieces()) {
            double before = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < piece.times().size(); i++) {
                require(piece.times().get(i) > before, "times do not rise");
                before = piece.times().get(i);
                require(
                        piece.weights().get(i) > 0 && piece.weights().get(i) < 1e6,
                        "weight " + piece.weights().get(i));
            }
        }
    }

    /** A whole command line; draws are few, and no file outside the folder is written. */
    private boolean line(String... words) {
        for (int i = 0; i < words.length; i++) {
            boolean writes = words[i].startsWith("--chart") || words[i].startsWith("-chart");
            boolean draws = words[i].startsWith("--sam") || words[i].startsWith("-sam");
            if (writes || draws) {
                words[i] = "--quiet";
            }
            words[i] = words[i].replace("FOLDER", folder.toString()).replace("\0", "0");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] all = few(words);
        int status = new Program(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(all);
        Judge.fault(
                        new Line(List.of(all), new byte[0]),
                        status,
                        out.toString(StandardCharsets.UTF_8),
                        err.toString(StandardCharsets.UTF_8),
                        List.of())
                .ifPresent(fault -> {
                    throw new AssertionError(fault);
                });
        return status == 0;
    }

    private static String[] few(String[] words) {
        boolean draws = List.of("float", "press", "dry", "fizz", "batch").contains(words[0]);
        if (!draws || List.of(words).contains("--help")) {
            return words;
        }
        String[] all = java.util.Arrays.copyOf(words, words.length + 2);
        all[words.length] = "--samples";
        all[words.length + 1] = "128";
        return all;
    }

    private String file(byte[] bytes, String name) {
        try {
            return Files.write(folder.resolve(name), bytes).toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
