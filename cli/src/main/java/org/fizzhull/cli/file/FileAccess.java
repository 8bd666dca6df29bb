package org.fizzhull.cli.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.fizzhull.quantity.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Which files a run of the program may open or write: every name of a file, whether it stands in an option, in the text of
 * a shape or in a table, becomes a path here and nowhere else.
 *
 * <p>Three rules: {@link #ANY} for a person at a command line, who has the rights of their own account ({@link #from} a
 * folder where relative names are to begin elsewhere); {@link #NONE} for
 * questions of strangers; {@link #inside} for questions of strangers about the files of one folder. Inside a folder, names
 * count from the folder, {@code ..} is resolved before anything is looked at, symbolic links are followed, and a path that
 * leads outside is refused without saying whether anything is there. What is returned is the resolved path, so that a link
 * that is changed afterwards does not lead elsewhere; a folder on the way that is swapped between the look and the opening
 * is not guarded against, nor is a hard link. Immutable, safe to share between threads.
 */
public final class FileAccess {
    /** Every file that the account may open. */
    public static final FileAccess ANY = new FileAccess(false, null);

    /** No file. */
    public static final FileAccess NONE = new FileAccess(true, null);

    private final boolean limited;
    private final @Nullable Path folder;

    private FileAccess(boolean limited, @Nullable Path folder) {
        this.limited = limited;
        this.folder = folder;
    }

    /**
     * Every file that the account may open, names counted from a folder in place of the one the process works in.
     *
     * @param folder where relative names begin
     */
    public static FileAccess from(Path folder) {
        return new FileAccess(false, folder);
    }

    /**
     * The files in and below a folder.
     *
     * @param option the option that names the folder, for a refusal
     * @param folder name of a folder that is there
     */
    public static FileAccess inside(String option, String folder) {
        try {
            Path real = Path.of(folder).toRealPath();
            if (Files.isDirectory(real)) {
                return new FileAccess(true, real);
            }
        } catch (IOException | InvalidPathException e) {
            // told below
        }
        throw new Refusal("no-folder", option, folder, "a folder that is there", "Make the folder first.");
    }

    /**
     * Where a named file stands; it need not be there.
     *
     * @param option what named it, for a refusal
     * @param name the name as written
     * @throws InvalidPathException for what is no name of a file on this system
     */
    public Path path(String option, String name) {
        Path root = folder;
        if (!limited) {
            return root == null ? Path.of(name) : root.resolve(name);
        }
        if (root == null) {
            throw new Refusal(
                    "no-files", option, name, "questions without files", "Start the stream with --files and a folder.");
        }
        Path named = root.resolve(name).normalize();
        if (named.startsWith(root)) {
            try {
                Path real = real(named);
                if (real.startsWith(root)) {
                    return real;
                }
            } catch (IOException e) {
                // a link into nothing, or a folder that may not be entered: told as outside
            }
        }
        throw new Refusal(
                "outside-folder",
                option,
                name,
                "a file inside the folder of --files",
                "Names count from that folder; links that lead out of it are not followed.");
    }

    /** Without links, as far as the path is there. */
    private static Path real(Path path) throws IOException {
        Path parent = path.getParent();
        return parent == null || Files.exists(path, LinkOption.NOFOLLOW_LINKS)
                ? path.toRealPath()
                : real(parent).resolve(path.getFileName());
    }
}
