package org.fizzhull.cli.making;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.BatchAnswer;
import org.fizzhull.answer.body.BatchPlan;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.MixingStep;
import org.fizzhull.cli.drying.Days;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.FirstAnswer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.FloatVerdict;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Decimals;

/**
 * A batch: as a first answer what to weigh in and what comes of it, as a sheet for the bench also the order of mixing with
 * boxes to tick, rack, shopping list and allergens.
 */
public record BatchText(BatchPlan plan) implements Answer {
    private static final String SHEET =
            "Order of mixing, rack, shopping list: --explain, or --report FILE.html to print.";

    /** From here on the chance of floating is named, below it that of sinking. */
    private static final double LEAST_LIKELY = 0.33;

    @Override
    public String brief() {
        return Table.paragraph(sentence(plan))
                + '\n'
                + amounts(plan.batch())
                + '\n'
                + warnings(BatchWarnings.brief(plan))
                + cautions(plan);
    }

    @Override
    public String whole() {
        return first().whole();
    }

    @Override
    public String shown() {
        return first().text();
    }

    private FirstAnswer first() {
        List<Notice> notices = new ArrayList<>(BatchWarnings.all(plan));
        notices.removeAll(BatchWarnings.of(plan));
        String first = Table.paragraph(sentence(plan))
                + warnings(BatchWarnings.brief(plan))
                + '\n'
                + amounts(plan.batch())
                + '\n'
                + result()
                + Table.paragraph(SHEET);
        StringBuilder cautions = new StringBuilder();
        BatchNeeds.cautions(plan).forEach(caution -> cautions.append(Table.paragraph("Caution: " + caution)));
        return FirstAnswer.of(first, notices, plan.effervescence().notice(), cautions.toString())
                .whole(sheet());
    }

    /** What a maker decides by before weighing in. */
    private Table result() {
        Table table = new Table().row("holds", PressText.shares(plan.piece()));
        plan.extras()
                .forEach(extra -> table.row(
                        "besides", extra.name() + ", " + BatchNeeds.weighed(extra.mass()) + " for each piece"));
        plan.batch().costEach().ifPresent(cost -> table.row("cost", BatchNeeds.cost(cost, plan)));
        return table;
    }

    /** All for the bench: what to weigh in, the order of mixing with boxes to tick, what it takes. */
    private String sheet() {
        StringBuilder out = new StringBuilder(Table.paragraph(sentence(plan)));
        out.append(warnings(BatchWarnings.of(plan)))
                .append('\n')
                .append(amounts(plan.batch()))
                .append("\nOrder of mixing\n");
        for (MixingStep step : plan.steps()) {
            out.append("  [ ] ");
            Table.hanging(out, 6, line(step, plan));
            if (!step.caution().isEmpty()) {
                Table.indented(out, 6, "Caution: " + step.caution());
            }
            if (step.mayStop()) {
                out.append("      -- you may stop here --\n");
            }
        }
        Table needs = new Table();
        BatchNeeds.rows(plan).forEach(row -> needs.row(row[0], row[1]));
        return out.append("\nIt takes\n").append(needs).toString();
    }

    @Override
    public String behind() {
        Pressed piece = plan.piece().central();
        double seconds = plan.pressed().workingTime();
        Table table = new Table()
                .row(
                        "spares",
                        "for the " + NumberText.percent(plan.piece().feel().getOrDefault(Pressed.Feel.CRUMBLES, 0.0))
                                + " that may crumble; " + NumberText.percent(Batch.SPARE_SHARE)
                                + " and one at least (common practice, no source)")
                .row("what sticks to the bowl", NumberText.percent(Batch.LOST_SHARE) + " (assumed)")
                .row("pressing one piece", NumberText.whole(Batch.SECONDS_A_PIECE) + NumberText.UNIT + "s (assumed)")
                .row(
                        "working time",
                        Double.isInfinite(seconds)
                                ? "without end: nothing reacts"
                                : (seconds < 7200
                                                ? Decimals.text(seconds / 60, 2) + NumberText.UNIT + "min"
                                                : Decimals.text(seconds / 3600, 2) + NumberText.UNIT + "h")
                                        + " until 2 % of the fizz is gone, by the central values")
                .row("pressure at the top", Decimals.text(piece.topPressure() * 1e-3, 3) + NumberText.UNIT + "kPa")
                .row("solid fraction", Decimals.text(piece.solidFraction(), 3))
                .row("saturation", Decimals.text(piece.saturation(), 3));
        return "\nBehind it\n" + table;
    }

    @Override
    public AnswerBody body() {
        return new BatchAnswer(plan, BatchWarnings.of(plan));
    }

    /** What the amounts are of. */
    public static String weighIn(Batch batch) {
        return batch.mixes() == 1 ? "Weigh in" : "Weigh in for each of " + batch.mixes() + " mixes";
    }

    /** One step in a line; the last one, which names no ingredient, says what comes out. */
    public static String line(MixingStep step, BatchPlan plan) {
        if (step.equals(plan.steps().get(plan.steps().size() - 1))) {
            int pieces = plan.batch().piecesPerMix();
            return step.text() + ": " + pieces + (pieces == 1 ? " piece of " : " pieces of ")
                    + PressText.weight(plan.piece().dampMass()) + " each; lay them apart on the rack.";
        }
        return step.ingredients().isEmpty()
                ? step.text() + '.'
                : step.text() + ": " + String.join(", ", step.ingredients()) + '.';
    }

    /** One plain sentence. */
    public static String sentence(BatchPlan plan) {
        String fizzless =
                plan.effervescence().notice().map(notice -> notice.text() + ' ').orElse("");
        return fizzless + plain(plan);
    }

    private static String plain(BatchPlan plan) {
        Batch batch = plan.batch();
        String spares = batch.sparePieces() == 1 ? "1 spare" : batch.sparePieces() + " spares";
        String mixes = batch.mixes() == 1
                ? "make one mix of " + BatchNeeds.kilograms(batch.mixMass())
                : "make " + batch.mixes() + " mixes of " + BatchNeeds.kilograms(batch.mixMass());
        return "For " + plan.pieces() + (plan.pieces() == 1 ? " piece and " : " pieces and ") + spares + ", " + mixes
                + hurry(plan)
                + plan.dried().map(BatchText::ready).orElse("") + floats(plan) + '.';
    }

    /** In the calibrated words of {@code float}. */
    private static String floats(BatchPlan plan) {
        if (plan.floatsToTheEnd().isEmpty()) {
            return "";
        }
        if (plan.floating().verdict().answer() == FloatVerdict.Answer.CANNOT_TELL) {
            return ". Whether they float to the end cannot be told yet";
        }
        double p = plan.floatsToTheEnd().getAsDouble();
        return p >= LEAST_LIKELY
                ? ". It is " + Probability.Likelihood.of(p).words() + " that a piece floats to the end"
                : ". It is " + Probability.Likelihood.of(1 - p).words() + " that a piece sinks before the end";
    }

    private static String amounts(Batch batch) {
        Table amounts = new Table();
        for (Batch.Line line : batch.lines()) {
            amounts.row(line.ingredient().name(), BatchNeeds.weighed(line.mass()) + ", that is " + line.spoons());
        }
        return weighIn(batch) + '\n' + amounts;
    }

    private static String warnings(List<Notice> warnings) {
        StringBuilder out = new StringBuilder();
        for (Notice notice : warnings) {
            out.append(Table.paragraph(notice.text()));
        }
        return out.toString();
    }

    private static String hurry(BatchPlan plan) {
        double seconds = plan.pressed().workingTime();
        String it = plan.batch().mixes() == 1 ? "it" : "each";
        if (!Effervescence.of(plan.pressed().blend().moles()).fizzes()) {
            return "";
        } else if (Double.isInfinite(seconds)) {
            return "; without water it may wait";
        } else if (seconds < 60) {
            return ": " + it + " must be pressed at once";
        } else if (seconds > PressText.HOURS) {
            return "; press " + it + " within the hour to be sure";
        }
        return ": " + it + " must be pressed within about " + Decimals.text(seconds / 60, 1) + NumberText.UNIT
                + "minutes";
    }

    private static String ready(DryForecast dried) {
        return dried.ready()
                .map(time -> ". Dry after about " + Days.text(time.median()))
                .orElseGet(() -> {
                    double soon = dried.readyWithin(ReadyTimes.LONGEST);
                    return ". In this air "
                            + (soon > 0 ? NumberText.ofHundred(soon) + " of 100 such batches" : "they do not")
                            + " dry within 60 days";
                });
    }

    private static String cautions(BatchPlan plan) {
        StringBuilder out = new StringBuilder(NoticeText.paragraphs(BatchWarnings.all(plan), Notice.Kind.CAUTION));
        for (String caution : BatchNeeds.cautions(plan)) {
            out.append(Table.paragraph("Caution: " + caution));
        }
        return out.toString();
    }
}
