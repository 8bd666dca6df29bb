package org.fizzhull.cli.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.text.HeldUnderDrawing;
import org.fizzhull.cli.text.Table;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.quantity.Refusal;

/**
 * A folder to work in: {@code recipe.yaml}, {@code moulds.csv}, {@code trials.csv} and, for later, {@code next.txt}. All
 * are written or none, and never over a file that is there.
 */
public final class StartFolder {
    private static final String TRIALS = "trials.csv";

    /** The files that are written. */
    public static final List<String> FILES = List.of("recipe.yaml", "moulds.csv", TRIALS, "next.txt");

    /** What {@code learn} will write there. */
    private static final String BENCH = "bench.yaml";

    private static final String FIELD = "folder";
    private static final String ALLOWED = "a new folder, or one without " + String.join(", ", FILES);

    private final String folder;

    private StartFolder(String folder) {
        this.folder = folder;
    }

    /** Writes the files; the folder is made where it is not there. */
    public static StartFolder write(FileAccess access, String folder) {
        List<Path> written = new ArrayList<>();
        try {
            Path path = access.path(FIELD, folder);
            Path parent = path.toAbsolutePath().getParent();
            if (!Files.exists(path) && parent != null && Files.isDirectory(parent)) {
                Files.createDirectory(path);
                written.add(path);
            }
            if (!Files.isDirectory(path)) {
                throw new Refusal(
                        "no-folder", FIELD, folder, ALLOWED, "Check the name; the folder around it has to be there.");
            }
            for (String name : FILES) {
                Path file = path.resolve(name);
                try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
                    written.add(file);
                    out.write(written(name).getBytes(StandardCharsets.UTF_8));
                }
            }
            return new StartFolder(folder);
        } catch (FileAlreadyExistsException e) {
            takeBack(written);
            throw new Refusal(
                    "file-there",
                    FIELD,
                    Path.of(e.getFile()).getFileName() + " in " + folder,
                    ALLOWED,
                    "Nothing was written: choose another folder.");
        } catch (InvalidPathException e) {
            throw new Refusal("unreadable", FIELD, folder, ALLOWED, "This is no name of a folder on this system.");
        } catch (IOException e) {
            takeBack(written);
            throw new Refusal(
                    "cannot-write",
                    FIELD,
                    folder,
                    ALLOWED,
                    "Check the rights and the room on the disk; nothing is left.");
        }
    }

    /** What to type next, with the files where they now stand, and the cautions; what is to be typed stands unbroken. */
    public String next() {
        StringBuilder out = new StringBuilder();
        named(text("next.txt"))
                .lines()
                .forEach(line -> out.append(line.startsWith("  ") ? line + '\n' : Table.paragraph(line)));
        return out.toString();
    }

    /** The command lines among it, each whole. */
    public List<String> commands() {
        return next().lines()
                .filter(line -> line.startsWith("  "))
                .map(String::strip)
                .toList();
    }

    /** The files as they are named from here. */
    public List<String> files() {
        return FILES.stream().map(this::file).toList();
    }

    /** A name that begins with a dash would be taken for an option. */
    private String file(String name) {
        String from = folder.startsWith("-") ? "./" + folder : folder;
        return from.endsWith("/") ? from + name : from + "/" + name;
    }

    private String named(String text) {
        String named = text;
        List<String> names = new ArrayList<>(FILES);
        names.add(BENCH);
        for (String name : names) {
            String file = file(name);
            named = named.replace(name, file.matches("[\\w./-]+") ? file : TypedLine.quoted(file));
        }
        return named;
    }

    private static void takeBack(List<Path> written) {
        for (int i = written.size() - 1; i >= 0; i--) {
            try {
                Files.deleteIfExists(written.get(i));
            } catch (IOException e) {
                // it was just made: whoever took the right to delete it, or put something into it, sees it there
            }
        }
    }

    /** A file as it is written: the sheet for trials has a drawing above its header, as comment. */
    private static String written(String name) {
        StringBuilder file = new StringBuilder();
        if (name.equals(TRIALS)) {
            for (String line : HeldUnderDrawing.LINES) {
                file.append(("# " + line).stripTrailing()).append('\n');
            }
        }
        return file.append(text(name)).toString();
    }

    private static String text(String name) {
        try (InputStream in = StartFolder.class.getResourceAsStream("/org/fizzhull/cli/start/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
