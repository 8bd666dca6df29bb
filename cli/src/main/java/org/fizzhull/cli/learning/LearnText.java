package org.fizzhull.cli.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.LearnAnswer;
import org.fizzhull.cli.file.TrialsFile;
import org.fizzhull.cli.floating.NextText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.cli.text.TrialWords;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.learn.Learned;
import org.fizzhull.learn.LearnedDraws;
import org.fizzhull.learn.TrialFit;
import org.fizzhull.quantity.Decimals;

/** What trials taught, in words and as a table. */
public final class LearnText implements Answer {
    /** An input that moved less than this many standard deviations, and kept its width, is not worth a sentence. */
    private static final double MOVED = 0.4;

    private static final double NARROWED = 85;

    private static final int INDENT = 2;

    private final Learned learned;
    private final TrialsFile trials;
    private final String file;
    private final long seed;

    /** Of a sheet, written to a file. */
    public LearnText(Learned learned, TrialsFile trials, String file, long seed) {
        this.learned = learned;
        this.trials = trials;
        this.file = file;
        this.seed = seed;
    }

    @Override
    public String brief() {
        StringBuilder text = new StringBuilder(Table.paragraph(sentence()));
        for (Notice notice : aside()) {
            if (!notice.equals(LearnAnswer.NOTHING_NEXT)) {
                text.append(Table.paragraph(NoticeText.line(notice)));
            }
        }
        return text.toString();
    }

    private String sentence() {
        List<String> changes = new ArrayList<>();
        for (LearnedDraws.Parameter parameter : byNews()) {
            if (Math.abs(parameter.shift()) >= MOVED && changes.size() < 3) {
                changes.add(parameter.input().words() + ": " + change(parameter));
            }
        }
        String news = changes.isEmpty()
                ? "nothing differs much from what was assumed, but it is surer now"
                : String.join("; ", changes);
        return "From " + learned.used() + " trials: " + news + ". " + learned.inside() + " of the " + learned.used()
                + " lie inside the interval that the finished bench gives them.";
    }

    private static String change(LearnedDraws.Parameter parameter) {
        return (parameter.shift() > 0 ? "more than assumed, " : "less than assumed, ")
                + shown(parameter, parameter.after().median()) + " in place of "
                + shown(parameter, parameter.before().median());
    }

    private List<LearnedDraws.Parameter> byNews() {
        return learned.draws().parameters().stream()
                .sorted(Comparator.comparingDouble(parameter -> -Math.abs(parameter.shift())))
                .toList();
    }

    private static String shown(LearnedDraws.Parameter parameter, double value) {
        String unit = parameter.input().unit();
        return Decimals.text(value, 2) + (unit.isEmpty() ? "" : "" + NumberText.UNIT + unit);
    }

    @Override
    public String whole() {
        return text(true);
    }

    @Override
    public String shown() {
        return text(false);
    }

    /** What is still as assumed is left to the whole answer. */
    private String text(boolean whole) {
        StringBuilder out = new StringBuilder(brief()).append('\n');
        List<String> same = new ArrayList<>();
        for (LearnedDraws.Parameter parameter : learned.draws().parameters()) {
            String what = parameter.input().words();
            if (parameter.stillPriorPercent() >= NARROWED && Math.abs(parameter.shift()) < MOVED) {
                same.add(what);
                continue;
            }
            String now = band(parameter, parameter.after()) + ", assumed " + band(parameter, parameter.before());
            String left = Math.round(parameter.stillPriorPercent()) + "" + NumberText.UNIT + "% of the doubt is left";
            Table.indented(out, INDENT, what + ": " + now + "; " + left);
        }
        if (whole && !same.isEmpty()) {
            Table.indented(out, INDENT, "still as assumed: " + String.join("; ", same));
        }
        Table.indented(out, INDENT, "written into " + file + ": add --bench " + file + " to any command");
        String next = learned.next()
                .map(found -> '\n'
                        + Table.paragraph("To know better: " + NextText.what(found, learned.asked())
                                + ", write it into a new row, and learn again (" + NextText.worth(found) + ")."))
                .orElse("");
        return out + next;
    }

    private static String band(LearnedDraws.Parameter parameter, Interval interval) {
        return shown(parameter, interval.median()) + " (" + Decimals.text(interval.low(), 2) + " to "
                + shown(parameter, interval.high()) + ')';
    }

    @Override
    public String behind() {
        Table table = new Table();
        table.row(
                "draws that count",
                "worth " + Math.round(learned.effective()) + " independent ones of " + learned.proposals()
                        + ", by importance sampling around the likeliest point (least squares, normal law)");
        table.row("evidence", "ln p = " + Decimals.text(learned.logEvidence(), 4) + ", up to a constant");
        for (LearnedDraws.Parameter parameter : learned.draws().parameters()) {
            table.row(
                    parameter.input().label(),
                    band(parameter, parameter.after()) + ", before " + band(parameter, parameter.before()) + "; moved "
                            + Decimals.text(parameter.shift(), 2) + " standard deviations");
        }
        for (TrialFit fit : learned.fits()) {
            table.row(
                    fit.name(),
                    TrialWords.of(fit) + (fit.inside() ? "" : ": outside") + " (chance; standard deviations off)");
        }
        table.row(
                "assumed",
                "pieces of one bench differ by 1 g of lift; grains, size and bath are each piece's own; a result may be"
                        + " written wrongly once in a hundred times");
        return table.toString();
    }

    @Override
    public AnswerBody body() {
        return new LearnAnswer(learned, seed, trials.unused(), NextText.words(""));
    }
}
