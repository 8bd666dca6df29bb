package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.file.WrittenLine;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;

/**
 * Reads damp pressed pieces on the scale: {@code 146 g at firm in dome(diameter=80 mm)}, commas between them. Without a press it is
 * that of the piece asked about, and so is the mould.
 */
public final class WeighedText {
    private static final Allowed MASS = Allowed.above(0, Unit.GRAM);

    private final FileAccess files;
    private final Optional<String> press;
    private final Supplier<Shape> mould;

    private WeighedText(FileAccess files, Optional<String> press, Supplier<Shape> mould) {
        this.files = files;
        this.press = press;
        this.mould = mould;
    }

    /**
     * The reader for pieces beside the one that a line asks about.
     *
     * @param mould that of the piece asked about, needed only where a weight is leant on it
     */
    static WeighedText beside(Arguments line, Supplier<Shape> mould) {
        return new WeighedText(line.files(), line.text(MakingOptions.PRESS), mould);
    }

    /** Weighed pieces as typed, each with how it was pressed and, where one is given, its mould, if it does not say so itself. */
    public static String told(String texts, String press, Optional<String> mould) {
        List<String> told = new ArrayList<>();
        for (String text : apart(texts)) {
            PieceText piece = PieceText.of(text);
            String pressed = piece.said().contains(PieceText.AT) ? piece.said() : piece.said() + PieceText.AT + press;
            String from = piece.in().isEmpty()
                    ? mould.map(shape -> PieceText.IN + shape).orElse("")
                    : piece.in();
            told.add(pressed + from);
        }
        return String.join(", ", told);
    }

    /** The pieces of all texts, typed and of a file; the first with the others behind it. */
    Optional<WeighedPiece> all(List<String> typed, List<WrittenLine> written) {
        List<WeighedPiece> pieces = new ArrayList<>();
        for (String texts : typed) {
            for (String text : apart(texts)) {
                pieces.add(one(text));
            }
        }
        for (WrittenLine line : written) {
            try {
                pieces.add(one(line.text()));
            } catch (Refusal refusal) {
                throw line.refused(refusal, BenchFile.WEIGHED);
            }
        }
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(0).and(pieces.subList(1, pieces.size())));
    }

    private WeighedPiece one(String text) {
        PieceText parted = PieceText.of(text);
        String said = parted.said();
        int at = said.indexOf(PieceText.AT);
        Amount mass = MASS.parse(MeasuredOptions.WEIGHED, at < 0 ? said : said.substring(0, at));
        Optional<String> how = at < 0
                ? press
                : Optional.of(said.substring(at + PieceText.AT.length()).trim());
        Optional<Shape> own = parted.mould(files);
        PressText pressed = PressText.read(
                MeasuredOptions.WEIGHED,
                how.orElseThrow(() -> new Refusal(
                        "missing-value",
                        MeasuredOptions.WEIGHED,
                        text,
                        "a weight and how hard it was pressed, such as 146 g at firm",
                        "Say light, firm, hard or the weight you lean on it, such as 12 kg, behind at.")));
        double pressure = pressed.pressure(() -> own.orElseGet(mould));
        WeighedPiece piece = pressed.byHand()
                ? WeighedPiece.byHand(mass.value(), pressure)
                : WeighedPiece.byGauge(mass.value(), pressure, pressed.factor());
        if (!mass.isExact()) {
            piece = piece.within(mass.standardDeviation());
        }
        return own.isPresent() ? piece.in(own.get()) : piece;
    }

    /** Pieces between commas; a comma inside brackets, a number or in front of a press belongs to its piece. */
    private static List<String> apart(String text) {
        List<String> pieces = new ArrayList<>();
        int depth = 0;
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == ',' && depth == 0 && !QuantityText.commaInNumber(text, i)) {
                pieces.add(text.substring(from, i).strip());
                from = i + 1;
            }
        }
        pieces.add(text.substring(from).strip());
        return pieces;
    }
}
