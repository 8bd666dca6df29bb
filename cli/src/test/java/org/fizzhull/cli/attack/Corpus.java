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
            case "trials" ->
                List.of(
                        "mould,bath_g,result\n" + "\"sphere(diameter=65 mm)\",141,floated\n".repeat(5000),
                        "mould" + ",".repeat(20_000) + "\n");
            case "bench" -> List.of(bench(60, 1), bench(20_000, 3), "powders: " + "{a: ".repeat(2000), aliases());
            case "catalogue" ->
                List.of(
                        "name,shape\n" + "a,sphere(diameter=65 mm)\n".repeat(5000),
                        "name;shape\n" + "n".repeat(300_000) + ";sphere(diameter=65 mm)\n");
            case "powders" -> List.of("name,loose_cup_g\n" + "oat flour,110\n".repeat(5000));
            case "stream" -> List.of("[".repeat(3000), "{\"a\":".repeat(3000), "\n".repeat(500), " ".repeat(1 << 21));
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

    /** A bench as {@code learn} writes it, its draws spread evenly over two standard deviations. */
    private static String bench(int draws, int width) {
        List<String> names = List.of("gas layer", "bubble size", "scale");
        StringBuilder text = new StringBuilder("made: \"2026-08-14\"\ntrials: \"trials.csv\"\nfactors:\n");
        for (String name : names.subList(0, width)) {
            text.append("  ").append(name).append(": {median: 1, low: 0.8, high: 1.2, prior percent: 40}\n");
        }
        text.append("draws: |\n");
        for (int i = 0; i < draws; i++) {
            text.append(' ');
            for (int k = 0; k < width; k++) {
                text.append(' ').append((i * (37 + k)) % 401 - 200);
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String milliseconds() {
        StringBuilder text = new StringBuilder("when,weight_g\n");
        for (int i = 0; i < 90; i++) {
            text.append(i / 1000.0).append(" s,").append(150 - i / 1000.0).append('\n');
        }
        return text.toString();
    }
}
