package org.fizzhull.cli.attack;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.file.CatalogueFile;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.file.PowdersFile;
import org.fizzhull.cli.file.RecipeFile;
import org.fizzhull.cli.file.TrialsFile;
import org.fizzhull.cli.file.WeightsFile;
import org.fizzhull.cli.option.OpenedFiles;
import org.fizzhull.cli.program.Program;
import org.fizzhull.decide.Mould;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.learn.Trial;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeFiles;
import org.fizzhull.shape.text.ShapeText;

/** Each reader of what a person writes, held to what must be true of any answer: a sound value, or a refusal with a mend. */
final class Readers {
    /** Names of the readers, as those of the folders of the corpus. */
    static final List<String> NAMES = List.of(
            "quantity",
            "shape",
            "recipe",
            "outline",
            "log",
            "line",
            "trials",
            "bench",
            "catalogue",
            "powders",
            "stream");

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
                case "trials" -> trials(file(bytes, "c.csv"));
                case "bench" -> {
                    String bench = file(bytes, "d.yaml");
                    file("piece,when,weight_g\nA,0 h,146.0\nA,24 h,145.0\n".getBytes(StandardCharsets.UTF_8), "w.csv");
                    // its drying logs, which only what is dried asks for, and all else
                    line(with(
                            "dry --recipe src/doc/recipes/lemon.yaml --fill 146g --air 21C,50% --dry-for 2d --json --shape"
                                    + " sphere(diameter=65mm) --bench",
                            bench));
                    return line(with("float --mass 142g --json --shape sphere(diameter=65mm) --bench", bench));
                }
                case "catalogue" ->
                    CatalogueFile.read(FileAccess.ANY, "--moulds", file(bytes, "e.csv"), opened())
                            .forEach(Readers::mould);
                case "powders" ->
                    PowdersFile.read(FileAccess.ANY, "--powders", file(bytes, "g.csv"), Measures.METRIC)
                            .forEach(powder -> require(
                                    powder.line() > 1 && powder.said().containsKey("loose cup"), "powder " + powder));
                case "stream" -> {
                    return stream(bytes);
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

    private static ShapeFiles opened() {
        return new OpenedFiles(FileAccess.NONE);
    }

    private void trials(String file) {
        TrialsFile trials = TrialsFile.read(FileAccess.ANY, "--trials", file, opened(), Measures.METRIC, List.of());
        for (Trial trial : trials.trials()) {
            shape(trial.shape());
            double mass = trial.mass().orElse(trial.fill().orElse(Double.NaN));
            require(mass > 0 && mass < 1e4, "a piece of " + mass + " kg");
            require(trial.mouldWater().orElse(1) > 0, "water " + trial.mouldWater());
            require(trial.fizzedFor().orElse(1) > 0, "fizzed for " + trial.fizzedFor());
        }
    }

    private static void mould(Mould mould) {
        require(!mould.name().isBlank(), "a mould without a name");
        require(mould.cavities() > 0, "cavities " + mould.cavities());
        require(mould.price().orElse(0) >= 0 && mould.price().orElse(0) < 1e9, "price " + mould.price());
        shape(mould.shape());
    }

    private static String[] with(String words, String last) {
        return (words + " " + last).split(" ", words.split(" ").length + 1);
    }

    /** Questions to {@code stream}, which may open no file. */
    private static boolean stream(byte[] bytes) {
        return run(new Line(List.of("stream", "--threads", "1"), bytes)).contains("\"result\"");
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
        return !run(new Line(List.of(few(words)), new byte[0])).isEmpty();
    }

    /** {@return what a line wrote to standard output; empty where it was refused} */
    private static String run(Line line) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new Program(
                        new ByteArrayInputStream(line.in()),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(line.words().toArray(new String[0]));
        String text = out.toString(StandardCharsets.UTF_8);
        Judge.fault(line, status, text, err.toString(StandardCharsets.UTF_8), List.of())
                .ifPresent(fault -> {
                    throw new AssertionError(fault);
                });
        return status == 0 ? text : "";
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
