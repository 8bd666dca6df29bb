package org.fizzhull.shape.size;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;

/**
 * Names of files as they stand in shape text, in double quotes: {@code mesh(file="a thing.stl", unit=mm)}. The quotes
 * have no escape, so a name that holds one could not be read back; it is refused where the shape is made. No file is
 * opened here. Stateless.
 */
public final class FileName {
    private FileName() {}

    /**
     * Checks a file name that shape text is to carry: not empty, and without a double quote, a line end or a character
     * that cannot be seen, since none of them could be read back.
     *
     * @param file name of the file as the person gave it
     * @return the same name
     * @throws Refusal {@code bad-file-name} for any other text
     */
    public static String checked(String file) {
        if (file.isEmpty() || file.indexOf('"') >= 0 || file.indexOf('\n') >= 0 || PrintableText.hiddenAt(file) >= 0) {
            throw new Refusal(
                    "bad-file-name",
                    SizeCheck.field("file"),
                    file,
                    "a name without double quotes, line ends and characters that cannot be seen",
                    "Rename the file.");
        }
        return file;
    }
}
