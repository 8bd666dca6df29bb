package org.fizzhull.cli.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: into a new file beside it, forced to the disk, then renamed over the old one in one
 * step. A full disk, a lost connection or a killed program leaves the old file as it was, and at worst a file whose name
 * begins with a point and ends in {@code .part}.
 */
final class WholeFile {
    private WholeFile() {}

    /** Writes the bytes; a symbolic link stays one, and what it points to is replaced. */
    static void write(Path file, byte[] bytes) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        String name = "." + target.getFileName() + "." + ProcessHandle.current().pid() + "."
                + Thread.currentThread().getId() + ".part";
        Path part = target.resolveSibling(name);
        try {
            try (FileChannel channel =
                    FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            keepRights(target, part);
            move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** The new file may be read by whom the old one could, where the file system knows rights of that kind. */
    private static void keepRights(Path old, Path part) throws IOException {
        if (Files.exists(old)) {
            try {
                Files.setPosixFilePermissions(part, Files.getPosixFilePermissions(old));
            } catch (UnsupportedOperationException noSuchRights) {
                // a file system without them: the rights of a new file
            }
        }
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
