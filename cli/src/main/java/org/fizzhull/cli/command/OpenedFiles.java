package org.fizzhull.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.fizzhull.mesh.reading.StlReader;
import org.fizzhull.mesh.reading.StlReading;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.MeshShape;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeFiles;

/** The files that shape text names, opened; every refusal names its file. */
final class OpenedFiles implements ShapeFiles {
    private static final String FIELD = "shape: file";

    @Override
    public Shape mesh(String file, Unit unit) {
        Path path = path(file, "an STL file");
        try (FileChannel channel = FileChannel.open(path)) {
            long most = Math.min(channel.size(), Integer.MAX_VALUE);
            StlReading reading =
                    StlReader.read(channel.map(FileChannel.MapMode.READ_ONLY, 0, most), file, unit.toSi(1));
            return MeshShape.of(file, unit.symbol(), reading.mesh()).with(reading.notices());
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(file, "an STL file");
        } catch (Refusal refusal) {
            throw refusal.file() == null ? refusal.at(file, 0) : refusal;
        }
    }

    @Override
    public Shape revolved(String file) {
        Path path = path(file, "a CSV file");
        try {
            return OutlineFile.read(file, path);
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(file, "a CSV file in UTF-8");
        } catch (Refusal refusal) {
            throw refusal.file() == null ? refusal.at(file, 0) : refusal;
        }
    }

    private static Path path(String file, String allowed) {
        try {
            Path path = Path.of(file);
            if (Files.isDirectory(path)) {
                throw new Refusal("a-folder", FIELD, file, allowed, "This name is a folder's.").at(file, 0);
            }
            if (!Files.exists(path)) {
                throw new Refusal("no-file", FIELD, file, allowed + " that is there", "Check its name and folder.")
                        .at(file, 0);
            }
            return path;
        } catch (InvalidPathException e) {
            throw new Refusal("unreadable", FIELD, file, allowed, "This is not a file name here.");
        }
    }

    private static Refusal unreadable(String file, String allowed) {
        return new Refusal("unreadable", FIELD, file, allowed, "Check the file and its rights.").at(file, 0);
    }
}
