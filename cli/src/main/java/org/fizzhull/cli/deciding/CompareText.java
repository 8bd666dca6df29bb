package org.fizzhull.cli.deciding;

import static org.fizzhull.cli.floating.FloatSentence.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fizzhull.answer.CompareAnswer;
import org.fizzhull.answer.tree.AnswerBody;
import org.fizzhull.cli.drying.Days;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.Columns;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.cli.text.Table;
import org.fizzhull.decide.Special;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.FilledMould;

/** A comparison in a maker's words: which one and why, a line for each row, at most 25 lines in all. */
public final class CompareText implements Answer {
    private static final int MOST_LINES = 25;

    /** Lines of notes; more are counted. */
    private static final int MOST_NOTES = 6;

    private static final int FEWEST_ROWS = 6;

    /** Two halves are usual and no news; what is left is. */
    private static final List<Special> NEWS = List.of(Special.BOAT, Special.GEODE, Special.TIPPY);

    private static final String CAUTION =
            "Caution: A glass mould breaks, the edge of a thin steel one cuts; a mould for food that was used for this does"
                    + " not go back to food. Floating is not a sign that a piece is dry or safe.";

    private final Comparison comparison;
    private final List<Notice> notices;
    private final ShownUnits units;

    /**
     * @param comparison the answer
     * @param fewer whether a long table drew less than usual
     * @param told what is to be said of the question itself
     * @param units of the table, whose columns are as wide as what stands in them
     */
    public CompareText(Comparison comparison, boolean fewer, List<Notice> told, ShownUnits units) {
        this.comparison = comparison;
        this.units = units;
        notices = new ArrayList<>(comparison.notices());
        notices.addAll(told);
        if (fewer) {
            notices.add(new Notice(
                    "fewer-draws",
                    "A long table is drawn " + comparison.sampling().samples()
                            + " times, not 4096: --samples 4096 takes longer and errs half as much."));
        }
    }

    /** The answer in its first sentences. */
    public static String sentence(Comparison comparison) {
        return new CompareSentence(comparison).text();
    }

    @Override
    public String brief() {
        return Table.paragraph(sentence(comparison)) + Table.paragraph(CAUTION);
    }

    @Override
    public String whole() {
        List<String> head = lines(Table.paragraph(sentence(comparison)));
        List<String> tail = new ArrayList<>(notes());
        tail.addAll(lines(Table.paragraph(CAUTION)));
        List<String> rows = table().lines();
        int all = rows.size() - 1;
        int shown = all;
        while (shown > FEWEST_ROWS && lines(page(head, rows, shown, tail)).size() > MOST_LINES) {
            shown--;
        }
        return page(head, rows, shown, tail);
    }

    /** With so many of the rows. */
    private static String page(List<String> head, List<String> rows, int shown, List<String> tail) {
        List<String> out = new ArrayList<>(head);
        out.add("");
        out.addAll(rows.subList(0, shown + 1));
        if (shown + 1 < rows.size()) {
            out.add("  and " + (rows.size() - 1 - shown) + " more: --explain");
        }
        out.add("");
        out.addAll(tail);
        return String.join("\n", out) + '\n';
    }

    @Override
    public String behind() {
        return CompareExplained.of(comparison, table().lines(), notices);
    }

    @Override
    public AnswerBody body() {
        return new CompareAnswer(comparison, notices);
    }

    private static List<String> lines(String text) {
        return text.lines().toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        List<Notice> told = notices.stream()
                .filter(notice -> notice.kind() != Notice.Kind.REMARK)
                .toList();
        for (int i = 0; i < told.size(); i++) {
            List<String> next = lines(NoticeText.paragraph(told.get(i)));
            if (notes.size() + next.size() > MOST_NOTES) {
                notes.add("Note: and " + (told.size() - i) + " more: --explain");
                return notes;
            }
            notes.addAll(next);
        }
        return notes;
    }

    private Columns table() {
        List<ComparedPiece> rows = comparison.rows();
        boolean dried = rows.stream().anyMatch(row -> row.made().dried());
        boolean fizzes = rows.stream().anyMatch(row -> row.bathed().fizzTime().isPresent());
        boolean batches = rows.stream().anyMatch(row -> row.made().perBatch().isPresent());
        boolean priced = rows.stream().anyMatch(row -> row.made().costEach().isPresent());
        boolean panel = rows.stream().anyMatch(row -> row.bathed().worst().isPresent());
        boolean filled = rows.get(0).candidate().question().making() instanceof FilledMould;
        Columns columns = new Columns(List.of(
                "floats",
                panel ? "worst in" : "",
                "weighs",
                filled ? "fill below" : "aim below",
                fizzes ? "fizzes" : "",
                dried ? "dry after" : "",
                batches ? "makes" : "",
                priced ? "each" : "",
                "mould"));
        for (ComparedPiece row : rows) {
            columns.row(Stream.of(
                            chance(row.floats()),
                            row.bathed()
                                    .worst()
                                    .map(bath -> bath.kind().words())
                                    .orElse(""),
                            NumberText.grams(
                                    row.made().mass().median(),
                                    row.made().mass().median()),
                            aim(row),
                            row.bathed()
                                    .fizzTime()
                                    .map(time -> OutcomeText.duration(time.median()))
                                    .orElse("-"),
                            row.made()
                                    .ready()
                                    .map(time -> Days.text(time.median()))
                                    .orElse(dried ? "never" : "-"),
                            row.made().perBatch().isPresent()
                                    ? Integer.toString(row.made().perBatch().getAsInt())
                                    : "-",
                            row.made().costEach().isPresent()
                                    ? CompareSentence.money(
                                            row.made().costEach().getAsDouble())
                                    : "-",
                            called(row))
                    .map(units::in)
                    .toList());
        }
        return columns;
    }

    /** The weight to stay below; none where it is so light that the mix would lie loose in the mould. */
    private static String aim(ComparedPiece row) {
        double weighs = row.made().mass().median();
        double aim = row.bathed().aim().orElse(0);
        return aim < AdviceSentence.LOOSEST * weighs ? "-" : NumberText.grams(aim, weighs);
    }

    private String called(ComparedPiece row) {
        StringBuilder text = new StringBuilder(CompareWords.name(comparison, row));
        for (Special special : NEWS) {
            if (row.made().special().contains(special)) {
                text.append("; ").append(special.words());
            }
        }
        return text.toString();
    }
}
