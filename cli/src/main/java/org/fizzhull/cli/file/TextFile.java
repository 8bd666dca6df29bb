package org.fizzhull.cli.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.fizzhull.quantity.Refusal;

/** The text of a small UTF-8 file that an option names, without a byte-order mark. */
final class TextFile {
    /** No file that a person writes by hand is longer. */
    private static final long LONGEST = 1 << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextFile() {}

    static String read(String option, String name) {
        byte[] bytes = bytes(option, name);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new Refusal("not-text", option, name, "a text file in UTF-8", "Save it again as UTF-8 text.")
                    .at(name, 0);
        }
    }

    private static byte[] bytes(String option, String name) {
        try {
            Path path = Path.of(name);
            if (!Files.isRegularFile(path)) {
                throw new Refusal(
                        "no-file",
                        option,
                        name,
                        "a file that is there",
                        "Check the name and the folder; a name with a space goes in double quotes.");
            }
            if (Files.size(path) > LONGEST) {
                throw new Refusal("too-long", option, name, "a file of at most 1 MiB", "Is this the right file?");
            }
            return Files.readAllBytes(path);
        } catch (InvalidPathException e) {
            throw new Refusal("unreadable", option, name, "a file name", "This is not a file name here.");
        } catch (IOException e) {
            throw new Refusal("cannot-read", option, name, "a file that can be read", "Check its rights.");
        }
    }
}
