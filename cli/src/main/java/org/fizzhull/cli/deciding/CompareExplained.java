package org.fizzhull.cli.deciding;

import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.cli.drying.Days;
import org.fizzhull.cli.floating.ExplainText;
import org.fizzhull.cli.floating.FloatSentence;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.quantity.Decimals;

/** What stands behind a comparison: every row with its numbers, the rule of choice, the notes, the uncertain inputs. */
final class CompareExplained {
    private static final double PER_CENTIMETRE = 1e-2;

    private CompareExplained() {}

    /**
     * The explanation.
     *
     * @param notices what the answer does not say itself
     * @param most rows whose figures are told; of more only that they are there
     */
    static String of(Comparison comparison, List<Notice> notices, int most) {
        StringBuilder out = new StringBuilder("\nBehind it\n");
        List<ComparedPiece> rows = comparison.rows();
        for (int i = 0; i < Math.min(most, rows.size()); i++) {
            out.append(i + 1)
                    .append(". ")
                    .append(CompareWords.name(comparison, rows.get(i)))
                    .append('\n')
                    .append(row(rows.get(i)));
        }
        if (most < rows.size()) {
            out.append('\n').append(Table.paragraph("Figures of the other " + (rows.size() - most) + ": --explain"));
        }
        out.append('\n').append(Table.paragraph(rule(comparison)));
        for (Notice notice : notices) {
            out.append(NoticeText.paragraph(notice));
        }
        return out.append("\nUncertain inputs: prior, source\n")
                .append(inputs(rows.get(0)))
                .toString();
    }

    private static Table row(ComparedPiece row) {
        Table table = new Table();
        ComparedPiece.InBath bathed = row.bathed();
        table.row("shape", NumberText.joined(row.shape().text()));
        table.row(
                "floats to the end",
                Decimals.text(row.floats(), 4) + " +- " + Decimals.text(bathed.error(), 2) + " (one standard error); "
                        + row.likelihood().words());
        table.row("weight", grams(row.made().mass()) + " into the bath");
        row.made().dampMass().ifPresent(damp -> table.row("weight, damp", grams(damp)));
        table.row("critical weight", grams(bathed.critical()) + ": the heaviest that floats to the end");
        table.row("could be heavier by", percent(bathed.headroom()));
        aim(table, "at most, out of the mould", bathed.aimDamp());
        bathed.fizzTime()
                .ifPresent(time -> table.row(
                        "fizzes",
                        OutcomeText.duration(time.median()) + " (" + OutcomeText.duration(time.low()) + " to "
                                + OutcomeText.duration(time.high()) + ')'));
        row.made().ready().ifPresent(time -> table.row("dry after", Days.text(time, 0)));
        table.row("surface per volume", Decimals.text(row.surfaceToVolume() * PER_CENTIMETRE, 3) + " per cm");
        for (ComparedPiece.InBath.InNamedBath bath : bathed.each()) {
            table.row("in the " + bath.bath().kind().words(), FloatSentence.chance(bath.floats()));
        }
        if (row.standing().betterThanNext().isPresent()) {
            table.row(
                    "beats the next",
                    "in " + Math.round(100 * row.standing().betterThanNext().getAsDouble()) + " of 100 cases");
        }
        table.row("floats best of all", "in " + Math.round(100 * row.standing().chanceOfBest()) + " of 100 cases");
        table.row(
                "a wrong choice costs",
                Decimals.text(Math.rint(1000 * row.standing().regret()) / 10, 4)
                        + " pieces of 100 against the best of them in each case");
        if (!row.made().special().isEmpty()) {
            table.row("special", String.join(", ", CompareWords.special(row)));
        }
        if (!row.mould().material().isEmpty() || !row.mould().note().isEmpty()) {
            table.row(
                    "mould",
                    String.join(
                            "; ", nonEmpty(row.mould().material(), row.mould().note())));
        }
        for (Notice notice : row.notices()) {
            table.row("note", NumberText.joined(notice.text()));
        }
        return table;
    }

    private static List<String> nonEmpty(String... texts) {
        return List.of(texts).stream().filter(text -> !text.isEmpty()).toList();
    }

    private static void aim(Table table, String label, OptionalDouble weight) {
        if (weight.isPresent()) {
            table.row(label, NumberText.grams(weight.getAsDouble()) + ": then a piece floats to the end 9 times of 10");
        }
    }

    private static String rule(Comparison comparison) {
        return "All rows are drawn in the same " + comparison.sampling().samples() + " states of the world (seed "
                + comparison.sampling().seed()
                + "), so that a difference is known better than a row. One is best where it is"
                + " ahead of every other by more than " + NumberText.whole(100 * Comparison.SAME_SHARE)
                + " pieces of 100 and two standard errors (times: by more than "
                + NumberText.percent(Comparison.SAME_TIME)
                + ", cost: by more than " + NumberText.percent(Comparison.SAME_COST)
                + "); else it is too close to call. Sorted by anything but floating, only what floats with a chance of "
                + NumberText.percent(Comparison.LIKELY) + " or more can be best.";
    }

    private static Table inputs(ComparedPiece row) {
        Table table = new Table();
        for (Factor factor :
                Factors.standard().asked(row.candidate().question()).rows()) {
            table.row(
                    factor.input().label(),
                    ExplainText.prior(factor) + "; " + factor.source().citation() + " ["
                            + factor.source().seen().words() + ']');
        }
        return table;
    }

    private static String grams(Interval weight) {
        return NumberText.grams(weight.median()) + " (" + NumberText.grams(weight.low()) + " to "
                + NumberText.grams(weight.high()) + ')';
    }

    private static String percent(Interval share) {
        return NumberText.percent(share.median()) + " (" + NumberText.percent(share.low()) + " to "
                + NumberText.percent(share.high()) + ") of its weight";
    }
}
