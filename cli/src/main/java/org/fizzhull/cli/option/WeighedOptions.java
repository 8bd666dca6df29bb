package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.WrittenLine;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;

/** Damp pressed pieces on the scale: typed, of a recipe file, of a bench file. */
public final class WeighedOptions {
    private WeighedOptions() {}

    /** Notes that the pieces of the bench file do not count. */
    public static void passed(Arguments arguments, String why) {
        for (WrittenLine piece : BenchOption.of(arguments).weighed()) {
            arguments.benchUse().passed(piece, why);
        }
    }

    /** The refusal of a measurement beside several recipes. */
    public static Refusal severalMixes(String option, String text, int recipes) {
        return new Refusal(
                "conflict",
                option,
                text + " for " + recipes + " recipes",
                "one recipe",
                "A measurement is of one mix. Compare the moulds of one recipe, or write it into a sheet of trials and"
                        + " learn from that: --bench bench.yaml.");
    }

    /** The refusal of a measurement of no named mould, where several are asked about. */
    public static Refusal withoutMould(String option, String text) {
        return new Refusal(
                "missing-value",
                option,
                text,
                "the mould of that piece behind it, such as " + text + " in sphere(diameter=65 mm)",
                "Several moulds are compared: say which of them, or which other mould, it came from.");
    }

    /** The weighed pieces: those of the option, or else those of recipe and bench; the first with the others behind it. */
    public static Optional<WeighedPiece> weighed(Arguments arguments) {
        List<WeighedPiece> pieces = typed(arguments);
        if (arguments.texts(MeasuredOptions.WEIGHED).isEmpty()) {
            arguments.text(MakingOptions.RECIPE).ifPresent(file -> pieces.addAll(ofRecipe(arguments, file)));
            List<WrittenLine> bench = BenchOption.of(arguments).weighed();
            bench.forEach(arguments.benchUse()::counts);
            pieces.addAll(written(arguments, bench));
        } else {
            passed(arguments, MeasuredOptions.WEIGHED + " was typed");
        }
        return together(pieces);
    }

    /** The pieces that a recipe file has of its mix; the first with the others behind it. */
    public static Optional<WeighedPiece> weighed(Arguments arguments, String recipe) {
        return together(ofRecipe(arguments, recipe));
    }

    private static Optional<WeighedPiece> together(List<WeighedPiece> pieces) {
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(0).and(pieces.subList(1, pieces.size())));
    }

    private static List<WeighedPiece> typed(Arguments arguments) {
        List<WeighedPiece> pieces = new ArrayList<>();
        for (String texts : arguments.texts(MeasuredOptions.WEIGHED)) {
            for (String text : apart(texts)) {
                pieces.add(piece(arguments, text));
            }
        }
        return pieces;
    }

    private static List<WeighedPiece> ofRecipe(Arguments arguments, String file) {
        return written(arguments, MakingOptions.read(arguments, file).weighed());
    }

    private static List<WeighedPiece> written(Arguments arguments, List<WrittenLine> lines) {
        List<WeighedPiece> pieces = new ArrayList<>();
        for (WrittenLine weighed : lines) {
            try {
                pieces.add(piece(arguments, weighed.text()));
            } catch (Refusal refusal) {
                throw weighed.refused(refusal, BenchFile.WEIGHED);
            }
        }
        return pieces;
    }

    /** Weighed pieces as typed, each with how it was pressed and, where one is given, its mould, if it does not say so itself. */
    public static String told(String texts, String press, Optional<String> mould) {
        List<String> told = new ArrayList<>();
        for (String text : apart(texts)) {
            int in = TypedMeasurement.mouldAt(text);
            String front = text.substring(0, in);
            String pressed = front.contains(TypedMeasurement.AT) ? front : front + TypedMeasurement.AT + press;
            String from = in == text.length()
                    ? mould.map(shape -> TypedMeasurement.IN + shape).orElse("")
                    : text.substring(in);
            told.add(pressed + from);
        }
        return String.join(", ", told);
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

    /** {@code 146 g at firm in dome(diameter=80 mm)}; without a press that of the piece asked about. */
    private static WeighedPiece piece(Arguments arguments, String text) {
        String front = text.substring(0, TypedMeasurement.mouldAt(text));
        int at = front.indexOf(TypedMeasurement.AT);
        Amount mass = TypedMeasurement.MASS.parse(MeasuredOptions.WEIGHED, at < 0 ? front : front.substring(0, at));
        Optional<String> press = at < 0
                ? arguments.text(MakingOptions.PRESS)
                : Optional.of(front.substring(at + TypedMeasurement.AT.length()).trim());
        Optional<Shape> mould = TypedMeasurement.mould(arguments, text);
        WeighedPiece piece = pressed(
                arguments,
                mould,
                mass.value(),
                press.orElseThrow(() -> new Refusal(
                        "missing-value",
                        MeasuredOptions.WEIGHED,
                        text,
                        "a weight and how hard it was pressed, such as 146 g at firm",
                        "Say light, firm, hard or the weight you lean on it, such as 12 kg, behind at.")));
        if (!mass.isExact()) {
            piece = piece.within(mass.standardDeviation());
        }
        return mould.isPresent() ? piece.in(mould.get()) : piece;
    }

    private static WeighedPiece pressed(Arguments arguments, Optional<Shape> mould, double mass, String press) {
        if (!press.isEmpty() && Character.isLetter(press.charAt(0))) {
            return WeighedPiece.byHand(mass, word(press).pressure());
        }
        Amount how = MakingOptions.howHard(MeasuredOptions.WEIGHED, press);
        double pressure = how.dimension() == Dimension.PRESSURE
                ? how.value()
                : MakingOptions.pascals(
                        MeasuredOptions.WEIGHED, press, how, mould.orElseGet(() -> QuestionOptions.shape(arguments)));
        return WeighedPiece.byGauge(mass, pressure, MakingOptions.factor(how));
    }

    private static PressWord word(String text) {
        try {
            return PressWord.named(text);
        } catch (Refusal refusal) {
            throw refusal.of(MeasuredOptions.WEIGHED);
        }
    }
}
