package org.fizzhull.cli.option;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.Dates;
import org.fizzhull.cli.file.WeightsFile;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * Drying logs: tables of weighings, and those of a bench file with how the pieces were made and in what air they lay, by the names of
 * the options of {@code dry}. They count for a piece of the same mix that is dried, of any mould and in any air.
 */
public final class DryingLogs {
    public static final String LOG = "--log";
    public static final String START = "--start";

    private static final String HOUR_OF_DAY = "a day and an hour, such as 2026-08-14 18:30";

    private DryingLogs() {}

    /** Adds the options of a command that reads a log. */
    public static void add(Options spec) {
        CommonOptions.value(spec, START, "WHEN", "when it was pressed, such as 2026-08-14 18:30: gives dates");
        CommonOptions.value(spec, LOG, "FILE.csv", "weighings of one piece: piece, when, weight_g");
    }

    /** When the piece was pressed, if that was told. */
    public static Optional<LocalDateTime> start(Arguments arguments) {
        return arguments.value(START, (option, when) -> date(option, when, HOUR_OF_DAY));
    }

    /** A day and an hour of an option. */
    public static LocalDateTime date(String option, String text, String allowed) {
        return Dates.read(text)
                .orElseThrow(() -> new Refusal(
                        "unreadable-date",
                        option,
                        text,
                        allowed,
                        "Year, month, day, then the hour: 2026-08-20 18:30; years 1900 to 2199."));
    }

    /** What was measured on pieces like that of a question, with the drying logs of the bench that bear on it. */
    public static Observations and(Arguments arguments, Question question, Observations seen) {
        Observations all = seen;
        for (BenchFile.Log log : BenchOption.of(arguments).logs()) {
            boolean dried = question.making().isDried() && !(question.making() instanceof Making.Weighed);
            if (!dried) {
                arguments.benchUse().passed(log, "nothing is dried here");
                continue;
            }
            Blend blend = question.making().mix().orElseThrow();
            try {
                Arguments told = Arguments.of(spec(), words(log), arguments);
                if (told.has(MakingOptions.RECIPE) && !blend.equals(recipe(told, log))) {
                    arguments.benchUse().passed(log, "of another recipe");
                } else {
                    all = all.dried(piece(told, log, blend, question.shape().bare()));
                    arguments.benchUse().counts(log);
                }
            } catch (Refusal refusal) {
                throw refusal.file() == null ? placed(refusal, log) : refusal;
            }
        }
        return all;
    }

    private static Refusal placed(Refusal refusal, BenchFile.Log log) {
        String field = refusal.field();
        return refusal.of(field.startsWith("--") ? CommonOptions.bare(field).replace('-', ' ') : field)
                .at(log.file(), log.line());
    }

    /** Names that a log may have. */
    private static Options spec() {
        Options spec = new Options();
        QuestionOptions.addShape(spec);
        MakingOptions.add(spec);
        DryingOptions.add(spec);
        add(spec);
        return spec;
    }

    /** A log as the words of a line: {@code dry for: 3 d} is {@code --dry-for "3 d"}. */
    private static String[] words(BenchFile.Log log) {
        List<String> words = new ArrayList<>(List.of("dry"));
        log.said().forEach((name, value) -> {
            String option = "--" + name.replace(' ', '-');
            words.add(option);
            if (!option.equals(DryingOptions.FAN)) {
                words.add(value);
            } else if (!value.equals("yes")) {
                throw new Refusal("unknown-word", name, value, "yes", "Leave out the fan where there was none.");
            }
        });
        return words.toArray(new String[0]);
    }

    private static Blend recipe(Arguments told, BenchFile.Log log) {
        return Blend.of(MakingOptions.read(
                        told, beside(log, told.text(MakingOptions.RECIPE).orElseThrow()))
                .recipe());
    }

    private static String beside(BenchFile.Log log, String name) {
        return Path.of(log.file()).resolveSibling(name).toString();
    }

    private static Observations.LoggedPieces piece(Arguments told, BenchFile.Log log, Blend blend, Shape asked) {
        String file =
                told.required(LOG, "a table of weighings, such as log: weights.csv", "It stands beside this file.");
        told.required(
                DryingOptions.AIR,
                "the air that the pieces dried in, such as air: 21 C, 55 %",
                "Hang a hygrometer beside the rack.");
        DryLog weighings = WeightsFile.read(told.files(), LOG, beside(log, file), start(told));
        Shape shape = told.has(QuestionOptions.SHAPE) ? QuestionOptions.shape(told) : asked;
        Making making = MakingOptions.making(
                        told,
                        blend,
                        shape,
                        DryingOptions.read(told, weighings.end(), new ArrayList<>())
                                .plan(shape))
                .orElseThrow(() -> new Refusal(
                        "missing-value",
                        MakingOptions.FILL,
                        "",
                        "fill: 146 g or press: firm",
                        "Say how much damp mix went into the mould, or how hard it was pressed."));
        return new Observations.LoggedPieces(shape, making, weighings);
    }
}
