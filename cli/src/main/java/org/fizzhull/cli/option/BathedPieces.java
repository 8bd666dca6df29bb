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
    private final Map<Shape, Observations> byMould = new LinkedHashMap<>();
    private int passed;

    private BathedPieces(Arguments arguments, List<Shape> moulds, boolean others) {
        this.arguments = arguments;
        this.moulds = moulds;
        this.others = others;
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
        BenchOption.asked(arguments, walk.moulds);
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
        Optional<Unfit> why = unfit(option, text);
        if (why.isPresent()) {
            throw why.get().refusal();
        }
        add(option, text);
    }

    private void written(String option, BenchFile.Measured measured) {
        try {
            Optional<Unfit> why = unfit(option, measured.piece().text());
            if (why.isPresent()) {
                passed++;
                arguments.benchUse().passed(measured.piece(), why.get().shortly());
            } else {
                add(option, measured.piece().text());
                arguments.benchUse().counts(measured.piece());
            }
        } catch (Refusal refusal) {
            throw measured.here(refusal);
        }
    }

    /**
     * Why a measurement cannot count for what is asked.
     *
     * @param shortly of one in a bench file
     * @param refusal of one that was typed
     */
    private record Unfit(String shortly, Refusal refusal) {}

    private Optional<Unfit> unfit(String option, String text) {
        Optional<Shape> mould = TypedMeasurement.mould(arguments, text);
        int recipes = arguments.texts(MakingOptions.RECIPE).size();
        if (recipes > 1) {
            return unfit("several recipes are compared", WeighedOptions.severalMixes(option, text, recipes));
        }
        if (arguments.has(QuestionOptions.BATHS)) {
            return unfit(
                    "several baths are asked about",
                    new Refusal(
                            "conflict",
                            option,
                            text + " and several baths",
                            "one of the two",
                            "A measurement is of one bath: leave --baths away, or learn from it (--bench bench.yaml)."));
        }
        if (arguments.has(QuestionOptions.NO_FIZZ)) {
            return unfit(
                    "still water does not fizz",
                    new Refusal(
                            "conflict",
                            option,
                            text + " and " + QuestionOptions.NO_FIZZ,
                            "one of the two",
                            "Still water neither fizzes nor lifts a sunk piece: leave one of them away."));
        }
        if (mould.isEmpty() && moulds.size() > 1) {
            return unfit("names no mould", WeighedOptions.withoutMould(option, text));
        }
        if (mould.isPresent() && !others && !moulds.contains(mould.get())) {
            return unfit(
                    "of another mould",
                    new Refusal(
                            "conflict",
                            option,
                            text,
                            "a piece of the mould that is asked about",
                            "What a piece of another mould tells goes into compare, or into a sheet of trials for learn."));
        }
        return Optional.empty();
    }

    private static Optional<Unfit> unfit(String shortly, Refusal refusal) {
        return Optional.of(new Unfit(shortly, refusal));
    }

    private void add(String option, String text) {
        Shape mould = TypedMeasurement.mould(arguments, text).orElse(moulds.get(0));
        Observations before = byMould.getOrDefault(mould, Observations.none());
        byMould.put(mould, TypedMeasurement.and(before, option, text.substring(0, TypedMeasurement.mouldAt(text))));
    }
}
