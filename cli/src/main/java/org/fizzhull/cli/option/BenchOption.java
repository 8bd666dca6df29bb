package org.fizzhull.cli.option;

import java.util.List;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.learn.Bench;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;

/** The option that brings what is known of the kitchen: what {@code learn} found and what was measured besides. */
public final class BenchOption {
    public static final String BENCH = "--bench";

    private static final Allowed WATER = Allowed.above(0, Unit.GRAM);

    private BenchOption() {}

    static void add(Options spec) {
        CommonOptions.value(
                spec,
                BENCH,
                "FILE.yaml",
                "what learn found in your trials, in place of the default priors, and your scale, hygrometer, moulds, weighed"
                        + " and timed pieces, results, drying logs and cups; the answer says what of it counts");
    }

    /** The bench file of a line, read once; that of an unknown bench where none was named. */
    public static BenchFile of(Arguments arguments) {
        return arguments.knows(BENCH) ? arguments.bench(BENCH) : BenchFile.NONE;
    }

    /** The table of uncertain inputs: the standard one, or that of the bench. */
    public static Factors factors(Arguments arguments) {
        BenchFile file = of(arguments);
        Bench bench = file.known();
        for (BenchFile.Measured filled : file.measured()) {
            if (filled.key().equals(BenchFile.MOULD_WATER) && !arguments.has(QuestionOptions.MEASURED)) {
                try {
                    bench = bench.filled(mould(arguments, filled), water(filled));
                } catch (Refusal refusal) {
                    throw filled.here(refusal);
                }
            }
        }
        BenchUse use = arguments.benchUse();
        if (arguments.has(QuestionOptions.NO_FIZZ)) {
            use.passed(BenchFile.FACTORS, "still water does not fizz");
        } else {
            use.counts(BenchFile.FACTORS);
        }
        if (DryingOptions.given(arguments.without(DryingOptions.PIECES))) {
            use.counts(BenchFile.HYGROMETER);
        } else {
            use.passed(BenchFile.HYGROMETER, "nothing is dried here");
        }
        return bench.factors();
    }

    /** Notes which of the moulds that were filled with water are asked about. */
    public static void asked(Arguments arguments, List<Shape> moulds) {
        for (BenchFile.Measured filled : of(arguments).measured()) {
            if (!filled.key().equals(BenchFile.MOULD_WATER)) {
                continue;
            }
            if (arguments.has(QuestionOptions.MEASURED)) {
                arguments.benchUse().passed(filled.piece(), QuestionOptions.MEASURED + " says how the size is known");
            } else if (moulds.contains(mould(arguments, filled))) {
                arguments.benchUse().counts(filled.piece());
            } else {
                arguments.benchUse().passed(filled.piece(), "of another mould");
            }
        }
    }

    private static double water(BenchFile.Measured filled) {
        return WATER.parseExact(
                BenchFile.MOULD_WATER, PieceText.of(filled.piece().text()).said());
    }

    private static Shape mould(Arguments arguments, BenchFile.Measured filled) {
        String text = filled.piece().text();
        return PieceText.of(text)
                .mould(arguments.files())
                .orElseThrow(() -> filled.here(new Refusal(
                        "missing-value",
                        BenchFile.MOULD_WATER,
                        text,
                        "the mould behind it, such as " + text + " in sphere(diameter=65 mm)",
                        "Name the mould that the water filled.")));
    }
}
