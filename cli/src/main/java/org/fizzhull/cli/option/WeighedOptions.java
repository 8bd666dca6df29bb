package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.WrittenLine;
import org.fizzhull.forecast.making.WeighedPiece;
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

    /**
     * The weighed pieces: those of the option, or else those of recipe and bench; the first with the others behind it.
     *
     * @param mould that of a piece which names none, asked for where a weight was leant on it
     */
    public static Optional<WeighedPiece> weighed(Arguments arguments, Supplier<Shape> mould) {
        WeighedText reader = reader(arguments, mould);
        List<WeighedPiece> pieces = new ArrayList<>();
        List<String> typed = arguments.texts(MeasuredOptions.WEIGHED);
        typed.forEach(text -> pieces.addAll(reader.all(text)));
        if (typed.isEmpty()) {
            List<WrittenLine> written = new ArrayList<>();
            arguments
                    .text(MakingOptions.RECIPE)
                    .ifPresent(file -> written.addAll(
                            MakingOptions.read(arguments, file).weighed()));
            List<WrittenLine> bench = BenchOption.of(arguments).weighed();
            bench.forEach(arguments.benchUse()::counts);
            written.addAll(bench);
            pieces.addAll(written(reader, written));
        } else {
            passed(arguments, MeasuredOptions.WEIGHED + " was typed");
        }
        return together(pieces);
    }

    /** The pieces that a recipe file has of its mix; the first with the others behind it. */
    public static Optional<WeighedPiece> ofRecipe(Arguments arguments, String file, Supplier<Shape> mould) {
        return together(written(
                reader(arguments, mould), MakingOptions.read(arguments, file).weighed()));
    }

    private static WeighedText reader(Arguments arguments, Supplier<Shape> mould) {
        return new WeighedText(arguments.files(), arguments.text(MakingOptions.PRESS), mould);
    }

    private static Optional<WeighedPiece> together(List<WeighedPiece> pieces) {
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(0).and(pieces.subList(1, pieces.size())));
    }

    private static List<WeighedPiece> written(WeighedText reader, List<WrittenLine> lines) {
        List<WeighedPiece> pieces = new ArrayList<>();
        for (WrittenLine weighed : lines) {
            try {
                pieces.add(reader.one(weighed.text()));
            } catch (Refusal refusal) {
                throw weighed.refused(refusal, BenchFile.WEIGHED);
            }
        }
        return pieces;
    }
}
