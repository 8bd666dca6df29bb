package org.fizzhull.cli.option;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;

/**
 * The one walk through what was measured on pieces in the bath, for every command: each measurement goes to the mould it came from,
 * first those that were typed, then those of the bench file, in their order. A typed one that cannot count is refused; one of the
 * bench, which was not written for this question, is passed over and that is said ({@link BenchUse}).
 */
public final class BathedPieces {
    /** Option of each key of a bench file, in the order of the walk. */
    private static final Map<String, String> KEYS = keys();

    private final Arguments arguments;
    private final List<Shape> moulds;
    private final boolean others;

    /** Why no measurement can count, whatever its mould. */
    private final Optional<Unfit> unfit;

    private final Map<Shape, Observations> byMould = new LinkedHashMap<>();
    private int passed;

    private BathedPieces(Arguments arguments, List<Shape> moulds, boolean others) {
        this.arguments = arguments;
        this.moulds = moulds;
        this.others = others;
        unfit = unfit(arguments);
    }

    private static Map<String, String> keys() {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put(BenchFile.FIZZ_TIMES, MeasuredOptions.FIZZ);
        keys.put(BenchFile.RISE_TIMES, MeasuredOptions.RISE);
        keys.put(BenchFile.DUNKS, MeasuredOptions.LIFT);
        keys.put(BenchFile.RESULTS, MeasuredOptions.RESULT);
        return keys;
    }

    /**
     * Walks through all that was measured.
     *
     * @param moulds what is asked about, each once, without what lies on or in a piece
     * @param others whether a piece of another mould tells something, too
     */
    public static BathedPieces walk(Arguments arguments, List<Shape> moulds, boolean others) {
        BathedPieces walk = new BathedPieces(arguments, moulds, others);
        for (Map.Entry<String, String> key : KEYS.entrySet()) {
            String option = key.getValue();
            for (String text : arguments.texts(option)) {
                walk.typed(option, text);
            }
            if (arguments.knows(option)) {
                for (BenchFile.Measured measured : BenchOption.of(arguments).measured()) {
                    if (measured.key().equals(key.getKey())) {
                        walk.written(option, measured);
                    }
                }
            }
        }
        return walk;
    }

    /** What was measured on pieces of each mould, in the order in which they were met. */
    public Map<Shape, Observations> byMould() {
        return byMould;
    }

    /** How many of the bench file could not count. */
    public int passed() {
        return passed;
    }

    private void typed(String option, String text) {
        Optional<Unfit> why = taken(option, text);
        if (why.isPresent()) {
            throw why.get().refusal(option, text);
        }
    }

    private void written(String option, BenchFile.Measured measured) {
        Optional<Unfit> why;
        try {
            why = taken(option, measured.piece().text());
        } catch (Refusal refusal) {
            throw measured.here(refusal);
        }
        if (why.isPresent()) {
            passed++;
            arguments.benchUse().passed(measured.piece(), why.get().shortly());
        } else {
            arguments.benchUse().counts(measured.piece());
        }
    }

    /** Adds a measurement to its mould, or says why it cannot count. */
    private Optional<Unfit> taken(String option, String text) {
        PieceText piece = PieceText.of(text);
        Optional<Shape> named = piece.mould(arguments.files());
        if (unfit.isPresent()) {
            return unfit;
        }
        if (named.isEmpty() && moulds.size() > 1) {
            return Optional.of(Unfit.withoutMould(text));
        }
        if (named.isPresent() && !others && !moulds.contains(named.get())) {
            return Optional.of(Unfit.OTHER_MOULD);
        }
        Shape mould = named.orElse(moulds.get(0));
        Observations before = byMould.getOrDefault(mould, Observations.none());
        byMould.put(mould, TypedMeasurement.and(before, option, piece.said()));
        return Optional.empty();
    }

    /** What is asked may be nothing that a measurement in the bath tells of. */
    private static Optional<Unfit> unfit(Arguments arguments) {
        int recipes = arguments.texts(MakingOptions.RECIPE).size();
        if (recipes > 1) {
            return Optional.of(Unfit.severalRecipes(recipes));
        }
        if (arguments.has(QuestionOptions.BATHS)) {
            return Optional.of(Unfit.SEVERAL_BATHS);
        }
        return arguments.has(QuestionOptions.NO_FIZZ) ? Optional.of(Unfit.STILL_WATER) : Optional.empty();
    }
}
