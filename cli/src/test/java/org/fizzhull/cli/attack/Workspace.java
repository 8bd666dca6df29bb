package org.fizzhull.cli.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder in which lines are run: files of every kind that the program reads, whole and spoilt, each written where a
 * line names it, and beside them what is no file: a folder, a pipe, devices, a name that leads nowhere.
 */
final class Workspace {
    /** Names that are no ordinary file; the first three may be named where a file is written. */
    private final List<String> odd = new ArrayList<>();

    private final Path work;
    private int count;

    Workspace(Path folder) {
        this.work = folder.resolve("work");
        try {
            Path beside = Files.createDirectories(folder.resolve("beside"));
            odd.addAll(
                    List.of(beside.toString(), beside.resolve("no folder/a.svg").toString(), "/dev/null"));
            odd.addAll(
                    List.of("/dev/zero", "/dev/full", beside.resolve("missing").toString(), "", " ", "\0", "a\nb"));
            odd.add(Files.write(beside.resolve("empty"), new byte[0]).toString());
            odd.add(Files.write(beside.resolve("zeros"), new byte[100_000]).toString());
            odd.add(Files.writeString(beside.resolve("aliases.yaml"), Corpus.aliases())
                    .toString());
            odd.add(Files.writeString(beside.resolve("nested.yaml"), "[".repeat(2000))
                    .toString());
            odd.add(Files.writeString(beside.resolve("own.yaml"), Corpus.ownIngredients(36))
                    .toString());
            odd.add(beside.resolve("n".repeat(300)).toString());
            Path loop = beside.resolve("loop");
            if (!Files.isSymbolicLink(loop)) {
                Files.createSymbolicLink(loop, loop);
            }
            odd.add(loop.toString());
            Path pipe = beside.resolve("pipe");
            if (new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0) {
                odd.add(pipe.toString());
            }
        } catch (IOException | UnsupportedOperationException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Takes away what the last line had. */
    void clear() {
        try {
            if (Files.exists(work)) {
                try (Stream<Path> all = Files.walk(work)) {
                    for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(path);
                    }
                }
            }
            Files.createDirectories(work);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        count = 0;
    }

    String recipe(Dice dice) {
        return read(dice, ".yaml", RecipeTexts.of(dice), 8);
    }

    String outline(Dice dice) {
        return read(dice, ".csv", SheetTexts.outline(dice), 5);
    }

    String log(Dice dice) {
        return read(dice, ".csv", SheetTexts.log(dice), 5);
    }

    String catalogue(Dice dice) {
        return read(dice, ".csv", SheetTexts.catalogue(dice), 5);
    }

    String trials(Dice dice) {
        // not by Path, which refuses some of the names that are tried
        String recipe = dice.once(3) ? recipe(dice) : "";
        return read(dice, ".csv", SheetTexts.trials(dice, recipe.substring(recipe.lastIndexOf('/') + 1)), 8);
    }

    String powders(Dice dice) {
        return read(dice, ".csv", SheetTexts.powders(dice), 6);
    }

    String bench(Dice dice) {
        return read(dice, ".yaml", SheetTexts.bench(dice), 6);
    }

    String mesh(Dice dice) {
        return read(dice, ".stl", MeshBytes.of(dice), 4);
    }

    /** A name under which an answer is written. */
    String written(Dice dice, String... ends) {
        return dice.once(15)
                ? dice.of(odd.subList(0, 3))
                : work.resolve("out" + count++ + dice.of(ends)).toString();
    }

    /** The same where a line was spoilt: what would be written elsewhere than in the folder is not. */
    String inside(String name) {
        try {
            Path path = Path.of(name).toAbsolutePath().normalize();
            boolean ours = path.startsWith(work) && !path.equals(work);
            return ours || odd.subList(0, 3).contains(name)
                    ? name
                    : work.resolve("elsewhere" + end(name)).toString();
        } catch (java.nio.file.InvalidPathException e) {
            return name;
        }
    }

    /** How a name of a picture or page ends; another is that of a bench. */
    private static String end(String name) {
        return name.endsWith(".svg") || name.endsWith(".html") ? name.substring(name.lastIndexOf('.')) : ".yaml";
    }

    Path folder() {
        return work;
    }

    /** The pictures and pages that were written for this line. */
    List<Path> drawn() {
        try (Stream<Path> all = Files.walk(work)) {
            return all.filter(file ->
                            file.toString().endsWith(".svg") || file.toString().endsWith(".html"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String read(Dice dice, String end, String text, int spoiltOneIn) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return read(dice, end, dice.once(6) ? FileHabits.bytes(dice, bytes) : bytes, spoiltOneIn);
    }

    private String read(Dice dice, String end, byte[] bytes, int spoiltOneIn) {
        if (dice.once(60)) {
            return dice.of(odd);
        }
        Path file = work.resolve("file" + count++ + end);
        try {
            Files.write(file, dice.once(spoiltOneIn) ? Mutation.bytes(dice, bytes) : bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file.toString();
    }
}
