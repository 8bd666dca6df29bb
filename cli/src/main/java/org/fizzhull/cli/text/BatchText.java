package org.fizzhull.cli.text;

import java.io.OutputStream;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.recipe.Batch;
import org.fizzhull.recipe.MixingStep;

/** A batch as a page for the bench: what to weigh in, the order of mixing with boxes to tick, what it needs and costs. */
public record BatchText(BatchPlan plan) implements Answer {
    @Override
    public String brief() {
        return Table.paragraph(sentence(plan)) + cautions(plan);
    }

    @Override
    public String whole() {
        Batch batch = plan.batch();
        StringBuilder out = new StringBuilder(Table.paragraph(sentence(plan)));
        out.append('\n').append(weighIn(batch)).append('\n');
        Table amounts = new Table();
        for (Batch.Line line : batch.lines()) {
            amounts.row(line.ingredient().name(), BatchNeeds.weighed(line.mass()) + ", that is " + line.spoons());
        }
        out.append(amounts).append("\nOrder of mixing\n");
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
        out.append("\nIt takes\n").append(needs).append('\n');
        return out.append(DriedText.paragraphs(plan.notices(), false))
                .append(cautions(plan))
                .toString();
    }

    @Override
    public String behind() {
        Pressed piece = plan.piece();
        Table table = new Table()
                .row("spares", Say.percent(Batch.SPARE_SHARE) + " and one at least (common practice, no source)")
                .row("what sticks to the bowl", Say.percent(Batch.LOST_SHARE) + " (assumed)")
                .row("pressing one piece", Say.whole(Batch.SECONDS_A_PIECE) + Say.UNIT + "s (assumed)")
                .row(
                        "working time",
                        Double.isInfinite(plan.workingTime())
                                ? "without end: nothing reacts"
                                : (plan.workingTime() < 7200
                                                ? Decimals.text(plan.workingTime() / 60, 2) + Say.UNIT + "min"
                                                : Decimals.text(plan.workingTime() / 3600, 2) + Say.UNIT + "h")
                                        + " until 2 % of the fizz is gone, by the central values")
                .row("pressure at the top", Decimals.text(piece.topPressure() * 1e-3, 3) + Say.UNIT + "kPa")
                .row("solid fraction", Decimals.text(piece.solidFraction(), 3))
                .row("saturation", Decimals.text(piece.saturation(), 3));
        return "\nBehind it\n" + table;
    }

    @Override
    public List<Notice> json(OutputStream out) {
        return BatchJson.write(out, plan);
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
                    + Say.grams(plan.piece().dampMass()) + " each; lay them apart on the rack.";
        }
        return step.ingredients().isEmpty()
                ? step.text() + '.'
                : step.text() + ": " + String.join(", ", step.ingredients()) + '.';
    }

    /** One plain sentence. */
    public static String sentence(BatchPlan plan) {
        Batch batch = plan.batch();
        String spares = batch.sparePieces() == 1 ? "1 spare" : batch.sparePieces() + " spares";
        String mixes = batch.mixes() == 1
                ? "make one mix of " + BatchNeeds.kilograms(batch.mixMass())
                : "make " + batch.mixes() + " mixes of " + BatchNeeds.kilograms(batch.mixMass());
        return "For " + plan.pieces() + (plan.pieces() == 1 ? " piece and " : " pieces and ") + spares + ", " + mixes
                + hurry(plan.workingTime(), batch.mixes())
                + plan.dried().map(BatchText::ready).orElse("") + '.';
    }

    private static String hurry(double seconds, int mixes) {
        String it = mixes == 1 ? "it" : "each";
        if (Double.isInfinite(seconds)) {
            return "; nothing hurries you";
        } else if (seconds < 60) {
            return ": " + it + " must be pressed at once";
        } else if (seconds > 4 * 3600) {
            return "; press " + it + " within the hour to be sure";
        }
        return ": " + it + " must be pressed within about " + Decimals.text(seconds / 60, 1) + Say.UNIT + "minutes";
    }

    private static String ready(DryForecast dried) {
        return dried.ready()
                .map(time -> ". Dry after about " + Days.text(time.median()))
                .orElse(". In this air they do not dry within 60 days");
    }

    private static String cautions(BatchPlan plan) {
        StringBuilder out = new StringBuilder(DriedText.paragraphs(plan.notices(), true));
        for (String caution : BatchNeeds.cautions(plan)) {
            out.append(Table.paragraph("Caution: " + Character.toLowerCase(caution.charAt(0)) + caution.substring(1)));
        }
        return out.toString();
    }
}
