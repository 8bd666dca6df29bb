package org.fizzhull.cli.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.fizzhull.quantity.Refusal;

/** A file that an option says to write; checked before anything is computed, written before the answer. */
public record OutputFile(String option, String name, Path path) {
    /** Refuses what cannot be an ordinary file in a folder that is there. */
    public static OutputFile of(FileAccess files, String option, String name, String allowed) {
        try {
            Path path = files.path(option, name);
            Path folder = path.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new Refusal(
                        "no-folder", option, name, "a file in a folder that is there", "Make the folder first.");
            }
            if (Files.isDirectory(path)) {
                throw new Refusal("a-folder", option, name, allowed, "This name is a folder's: write a name below it.");
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                throw new Refusal(
                        "not-a-file",
                        option,
                        name,
                        "a new file, or an ordinary one to write over",
                        "This is a pipe or a device: choose another name.");
            }
            return new OutputFile(option, name, path);
        } catch (InvalidPathException e) {
            throw new Refusal(
                    "unreadable",
                    option,
                    name,
                    allowed,
                    "This is no file name on this system: leave out unusual characters.");
        }
    }

    /** A name with another ending; the plain one for a name that is blank or ends as a folder's does. */
    public static String renamed(String name, String plain, String ending) {
        String stem = name.replaceFirst("(?<=[^./])\\.[A-Za-z0-9]{1,5}$", "");
        boolean named = !stem.isBlank() && !stem.endsWith("/") && !stem.endsWith(".");
        return (named ? stem : plain) + ending;
    }

    public void write(byte[] bytes) {
        try {
            WholeFile.write(path, bytes);
        } catch (IOException e) {
            throw new Refusal(
                    "cannot-write",
                    option,
                    name,
                    "a file that can be written",
                    "The old file, if there was one, is as it was. Check the folder, its rights and the room on the disk.");
        }
    }
}
