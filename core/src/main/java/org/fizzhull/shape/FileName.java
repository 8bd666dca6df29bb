package org.fizzhull.shape;

import org.fizzhull.quantity.Echo;
import org.fizzhull.quantity.Refusal;

/** Names of files as they stand in shape text, in double quotes. */
final class FileName {
    private FileName() {}

    static String checked(String file) {
        if (file.isEmpty() || file.indexOf('"') >= 0 || file.indexOf('\n') >= 0 || Echo.hiddenAt(file) >= 0) {
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
