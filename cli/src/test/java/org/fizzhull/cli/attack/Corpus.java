package org.fizzhull.cli.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the readers were fed before: files kept below {@code corpus/READER}, a case a file, to which each input that once
 * broke a reader is added; and cases too large to keep, made here. A case of a command line has one word a line.
 */
final class Corpus {
    private static final Path KEPT = Path.of("src/test/resources/org/fizzhull/cli/attack/corpus");

    private Corpus() {}

    /** The cases of a reader, the kept ones by name. */
    static List<byte[]> of(String reader) {
        List<byte[]> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(KEPT.resolve(reader))) {
            for (Path file : files.sorted().toList()) {
                cases.add(Files.readAllBytes(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (String large : large(reader)) {
            cases.add(large.getBytes(StandardCharsets.UTF_8));
        }
        return cases;
    }

    private static List<String> large(String reader) {
        return switch (reader) {
            case "quantity" -> List.of("1".repeat(5000) + " g", "(".repeat(2000), "1e" + "9".repeat(100) + " g");
            case "shape" ->
                List.of("ball(".repeat(2000), "sphere(" + "diameter=65 mm, ".repeat(3000) + ")", "x".repeat(100_000));
            case "recipe" ->
                List.of(
                        "[".repeat(2000),
                        "dry: " + "{a: ".repeat(2000),
                        "dry:\n" + "  sodium bicarbonate: 300 g\n".repeat(3000),
                        "dry:\n  " + "n".repeat(500_000) + ": 3 g\n",
                        aliases(),
                        ownIngredients(40),
                        ownIngredients(2000));
            case "outline" ->
                List.of(
                        "r_mm,z_mm\n" + "1,1\n".repeat(100_000),
                        zigzag(900),
                        zigzag(4000),
                        "r_mm,z_mm\n" + "9".repeat(200_000) + ",1\n");
            case "log" -> List.of("when,weight_g\n" + "1 h,150\n".repeat(20_000), milliseconds(), "\"".repeat(100_000));
            default -> List.of("float\n--mass\n" + "1".repeat(100_000), "float\n--shape\n" + "(".repeat(5000));
        };
    }

    static String aliases() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            text.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [*a")
                    .append(i - 1)
                    .append(", *a")
                    .append(i - 1)
                    .append("]\n");
        }
        return text.toString();
    }

    static String ownIngredients(int count) {
        StringBuilder text = new StringBuilder("dry:\n  sodium bicarbonate: 300 g\n");
        for (int i = 0; i < count; i++) {
            text.append("  oat flour ").append(i).append(": 1 to 2 g\n");
        }
        text.append("own ingredients:\n");
        for (int i = 0; i < count; i++) {
            text.append("  oat flour ").append(i).append(": {true density: 1.42 g/cm3, loose density: 0.48 g/cm3}\n");
        }
        return text.toString();
    }

    private static String zigzag(int points) {
        StringBuilder text = new StringBuilder("r_mm,z_mm\n0,0\n");
        for (int i = 0; i < points; i++) {
            text.append(i % 2 == 0 ? "30," : "12,")
                    .append(60.0 * (i + 1) / (points + 2))
                    .append('\n');
        }
        return text.append("0,60\n").toString();
    }

    private static String milliseconds() {
        StringBuilder text = new StringBuilder("when,weight_g\n");
        for (int i = 0; i < 90; i++) {
            text.append(i / 1000.0).append(" s,").append(150 - i / 1000.0).append('\n');
        }
        return text.toString();
    }
}
