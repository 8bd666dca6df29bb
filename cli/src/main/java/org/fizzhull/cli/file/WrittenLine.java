package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.quantity.Refusal;

/**
 * One line of a list in a file, such as {@code 146 g at firm in sphere(diameter=65 mm)}, and where it stands.
 *
 * @param text as written
 * @param file where
 * @param line in that file, from 1
 */
public record WrittenLine(String text, String file, int line) {
    /** A list without quotes breaks at the commas inside the brackets of a shape: such parts are put together again. */
    static List<WrittenLine> list(YamlMap in, YamlMap.Entry section, String file) {
        List<WrittenLine> pieces = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        int from = section.line();
        for (YamlMap.Entry entry : in.list(section)) {
            from = open.length() > 0 ? from : entry.line();
            open.append(open.length() > 0 ? ", " : "").append(in.text(entry));
            if (open.indexOf("(") < 0 || open.indexOf(")") >= 0) {
                pieces.add(new WrittenLine(open.toString(), file, from));
                open.setLength(0);
            }
        }
        if (open.length() > 0) {
            pieces.add(new WrittenLine(open.toString(), file, from));
        }
        return pieces;
    }

    /** The refusal of what is written here, under a key of the file. */
    public Refusal refused(Refusal why, String key) {
        return why.of(key).at(file, line);
    }
}
