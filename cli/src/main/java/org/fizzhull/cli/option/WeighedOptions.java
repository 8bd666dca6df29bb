package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fizzhull.cli.file.WrittenLine;
import org.fizzhull.forecast.making.WeighedPiece;
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
        List<String> typed = arguments.texts(MeasuredOptions.WEIGHED);
        List<WrittenLine> written = new ArrayList<>();
        if (!typed.isEmpty()) {
            passed(arguments, MeasuredOptions.WEIGHED + " was typed");
        } else {
            arguments
                    .text(MakingOptions.RECIPE)
                    .ifPresent(file ->
                            written.addAll(MakingOptions.read(arguments, file).weighed()));
            List<WrittenLine> bench = BenchOption.of(arguments).weighed();
            bench.forEach(arguments.benchUse()::counts);
            written.addAll(bench);
        }
        return WeighedText.beside(arguments, mould).all(typed, written);
    }

    /** The pieces that a recipe file has of its mix; the first with the others behind it. */
    public static Optional<WeighedPiece> ofRecipe(Arguments arguments, String file, Supplier<Shape> mould) {
        List<WrittenLine> written = MakingOptions.read(arguments, file).weighed();
        return WeighedText.beside(arguments, mould).all(List.of(), written);
    }
}
