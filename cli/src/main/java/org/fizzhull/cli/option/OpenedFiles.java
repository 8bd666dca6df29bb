package org.fizzhull.cli.option;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.file.OutlineFile;
import org.fizzhull.mesh.reading.MeshReader;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeFiles;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/** The files that shape text names, opened; every refusal names its file. */
public final class OpenedFiles implements ShapeFiles {
    private static final String FIELD = "shape: file";
    private static final String MESH = "an STL or 3MF file";

    /** Room for the text of the four million facets that a mesh may have. */
    private static final long MOST_BYTES = 1L << 30;

    private final FileAccess files;

    /** Only those that may be opened. */
    public OpenedFiles(FileAccess files) {
        this.files = files;
    }

    @Override
    public Shape mesh(String file, @Nullable Unit unit) {
        Path path = path(file, MESH);
        try (FileChannel channel = FileChannel.open(path)) {
            long most = Math.min(channel.size(), Integer.MAX_VALUE);
            MeshReader.Reading reading =
                    MeshReader.read(channel.map(FileChannel.MapMode.READ_ONLY, 0, most), file, unit);
            Unit named = unit != null ? unit : reading.ownUnit().orElseThrow();
            Workers threads = Workers.on(
                    work -> new Thread(work, "depths").start(),
                    Runtime.getRuntime().availableProcessors());
            return MeshShape.of(file, named.symbol(), reading.mesh(), threads).with(reading.notices());
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(file, MESH);
        } catch (Refusal refusal) {
            throw refusal.file() == null ? refusal.at(file, 0) : refusal;
        }
    }

    @Override
    public Shape revolved(String file) {
        try {
            return OutlineFile.read(files, file);
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(file, "a CSV file in UTF-8");
        } catch (Refusal refusal) {
            throw refusal.file() == null ? refusal.at(file, 0) : refusal;
        }
    }

    private Path path(String file, String allowed) {
        try {
            Path path = files.path(FIELD, file);
            if (Files.isDirectory(path)) {
                throw new Refusal(
                                "a-folder",
                                FIELD,
                                file,
                                allowed,
                                "This name is a folder's: write the name of a file in it.")
                        .at(file, 0);
            }
            if (!Files.exists(path)) {
                throw new Refusal("no-file", FIELD, file, allowed + " that is there", "Check its name and folder.")
                        .at(file, 0);
            }
            if (!Files.isRegularFile(path)) {
                throw new Refusal(
                                "not-a-file",
                                FIELD,
                                file,
                                "an ordinary file",
                                "This is a pipe or a device: save what comes out of it as a file first.")
                        .at(file, 0);
            }
            if (Files.size(path) > MOST_BYTES) {
                throw new Refusal(
                                "too-large",
                                FIELD,
                                Files.size(path) + " bytes",
                                "at most " + MOST_BYTES + " bytes (1 GiB)",
                                "Export it with fewer facets: 100,000 are plenty.")
                        .at(file, 0);
            }
            return path;
        } catch (InvalidPathException | IOException e) {
            throw new Refusal(
                    "unreadable", FIELD, file, allowed, "This is no file name on this system: check its characters.");
        }
    }

    private static Refusal unreadable(String file, String allowed) {
        return new Refusal("unreadable", FIELD, file, allowed, "Check the file and its rights.").at(file, 0);
    }
}
