package org.fizzhull.cli.file;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;

/**
 * The text of a small UTF-8 file that an option names, without a byte-order mark: an ordinary file of at most 1 MiB in which
 * every character can be seen.
 */
public final class TextFile {
    /** No file that a person writes by hand is longer. */
    private static final int LONGEST = 1 << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextFile() {}

    /** Reads it; a refusal names the option, the file and, where it can, the line. */
    public static String read(FileAccess files, String option, String name) {
        byte[] bytes = bytes(files, option, name);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return seen(option, name, !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            throw new Refusal("not-text", option, name, "a text file in UTF-8", "Save it again as UTF-8 text.")
                    .at(name, 0);
        }
    }

    /** Refuses text that would not look as it is read: control characters and those that turn the direction of writing. */
    private static String seen(String option, String name, String text) {
        int at = PrintableText.hiddenAt(text);
        if (at < 0) {
            return text;
        }
        String before = text.substring(0, at);
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        String rest = text.substring(before.lastIndexOf('\n') + 1);
        int end = rest.indexOf('\n');
        throw new Refusal(
                        "hidden-character",
                        option,
                        (end < 0 ? rest : rest.substring(0, end)).strip(),
                        "text in which every character can be seen",
                        "Type the line anew: " + PrintableText.of(text.substring(at, text.offsetByCodePoints(at, 1)))
                                + " in it shows nothing, or turns the text around.")
                .at(name, line);
    }

    private static byte[] bytes(FileAccess files, String option, String name) {
        try {
            Path path = files.path(option, name);
            if (!Files.exists(path)) {
                throw new Refusal(
                        "no-file",
                        option,
                        name,
                        "a file that is there",
                        "Check the name and the folder; a name with a space goes in double quotes.");
            }
            if (!Files.isRegularFile(path)) {
                throw new Refusal(
                        "not-a-file",
                        option,
                        name,
                        "an ordinary file",
                        Files.isDirectory(path)
                                ? "This is a folder: write the name of a file in it."
                                : "This is a pipe or a device: save what comes out of it as a file first.");
            }
            try (InputStream in = new FileInputStream(path.toFile())) {
                byte[] bytes = in.readNBytes(LONGEST + 1);
                if (bytes.length > LONGEST) {
                    throw new Refusal(
                            "too-long",
                            option,
                            name + ", " + Files.size(path) + " bytes",
                            "a file of at most 1 MiB (1048576 bytes)",
                            "Is this the right file?");
                }
                return bytes;
            }
        } catch (InvalidPathException e) {
            throw new Refusal(
                    "unreadable",
                    option,
                    name,
                    "a file name",
                    "This is no file name on this system: check its characters.");
        } catch (IOException e) {
            throw new Refusal("cannot-read", option, name, "a file that can be read", "Check its rights.");
        }
    }
}
