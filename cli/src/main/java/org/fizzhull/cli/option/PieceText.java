package org.fizzhull.cli.option;

import java.util.Optional;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;

/**
 * What was measured on a piece and the mould behind it, parted: {@code 95 s at 150 g in sphere(diameter=65 mm)}.
 *
 * @param said what was measured, {@code 95 s at 150 g}
 * @param in the mould with the word in front of it, {@code  in sphere(diameter=65 mm)}; empty where none is named
 */
record PieceText(String said, String in) {
    /** In front of what a piece weighed or how it was pressed. */
    static final String AT = " at ";

    /** In front of its mould. */
    static final String IN = " in ";

    static PieceText of(String text) {
        int bracket = text.indexOf('(');
        int in = bracket < 0 ? -1 : text.lastIndexOf(IN, bracket);
        return in < 0 ? new PieceText(text, "") : new PieceText(text.substring(0, in), text.substring(in));
    }

    /** The mould, if it is named. */
    Optional<Shape> mould(FileAccess files) {
        return in.isEmpty()
                ? Optional.empty()
                : Optional.of(ShapeText.read(in.substring(IN.length()).trim(), new OpenedFiles(files)));
    }
}
