package org.fizzhull.cli.deciding;

import static org.fizzhull.cli.floating.FloatSentence.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.CompareAnswer;
import org.fizzhull.cli.drying.Days;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.Columns;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.cli.text.Table;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Moulded;

/** A comparison in a maker's words: which one and why, a line for each row, at most 25 lines in all. */
public final class CompareText implements Answer {
    private static final int MOST_LINES = 25;

    /** Lines of notes; more are counted. */
    private static final int MOST_NOTES = 6;

    private static final int FEWEST_ROWS = 6;

    /** Two halves are usual and no news; what is left is. */
    private static final List<MadePiece.Special> NEWS =
            List.of(MadePiece.Special.BOAT, MadePiece.Special.GEODE, MadePiece.Special.TIPPY);

    private static final String CAUTION =
            "Caution: A glass mould breaks, the edge of a thin steel one cuts; a mould for food that was used for this does"
                    + " not go back to food. Floating is not a sign that a piece is dry or safe.";

    private final Comparison comparison;
    private final List<Notice> notices;
    private final Columns table;

    /**
     * @param comparison the answer
     * @param fewer whether a long table drew less than usual
     * @param told what is to be said of the question itself
     * @param units of the table, whose columns are as wide as what stands in them
     */
    public CompareText(Comparison comparison, boolean fewer, List<Notice> told, ShownUnits units) {
        this.comparison = comparison;
        this.table = table(comparison, units);
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
        return page(comparison.rows().size(), told().size());
    }

    @Override
    public String shown() {
        return page(rowsShown(), told().size() - untold());
    }

    /** How many of the rows fit. */
    private int rowsShown() {
        int shown = comparison.rows().size();
        while (shown > FEWEST_ROWS
                && Table.lines(page(shown, told().size() - untold())).size() > MOST_LINES) {
            shown--;
        }
        return shown;
    }

    /** With so many of the rows and of the notes. */
    private String page(int shown, int notes) {
        List<String> rows = table.lines();
        StringBuilder out = new StringBuilder(Table.paragraph(sentence(comparison))).append('\n');
        rows.subList(0, shown + 1).forEach(row -> out.append(row).append('\n'));
        if (shown + 1 < rows.size()) {
            out.append("  and ").append(rows.size() - 1 - shown).append(" more: --explain\n");
        }
        return out.append('\n')
                .append(notes(notes))
                .append(Table.paragraph(CAUTION))
                .toString();
    }

    @Override
    public String behind() {
        return behind(comparison.rows().size());
    }

    @Override
    public String behindOnPage() {
        return behind(ComparePicture.ON_PAGE);
    }

    private String behind(int most) {
        List<Notice> rest = new ArrayList<>(notices);
        rest.removeAll(CompareSentence.said(comparison));
        rest.removeAll(told());
        return CompareExplained.of(comparison, rest, most);
    }

    @Override
    public AnswerBody body() {
        return new CompareAnswer(comparison, notices);
    }

    private String notes(int shown) {
        List<Notice> told = told();
        String last = shown < told.size() ? "Note: and " + (told.size() - shown) + " more: --explain\n" : "";
        return NoticeText.paragraphs(told.subList(0, shown)) + last;
    }

    /** How many of the notes are left to the explanation. */
    private int untold() {
        List<Notice> told = told();
        int lines = 0;
        for (int i = 0; i < told.size(); i++) {
            lines += Table.lines(NoticeText.paragraph(told.get(i))).size();
            if (lines > MOST_NOTES) {
                return told.size() - i;
            }
        }
        return 0;
    }

    /** What is told below the rows; not what the first sentence says. */
    private List<Notice> told() {
        Set<Notice> said = CompareSentence.said(comparison);
        return notices.stream()
                .filter(notice -> notice.kind() != Notice.Kind.REMARK && !said.contains(notice))
                .toList();
    }

    private static Columns table(Comparison comparison, ShownUnits units) {
        List<ComparedPiece> rows = comparison.rows();
        boolean dried = rows.stream().anyMatch(row -> row.made().dried());
        boolean fizzes = rows.stream().anyMatch(row -> row.bathed().fizzTime().isPresent());
        boolean batches = rows.stream().anyMatch(row -> row.made().perBatch().isPresent());
        boolean priced = rows.stream().anyMatch(row -> row.made().costEach().isPresent());
        boolean panel = rows.stream().anyMatch(row -> row.bathed().worst().isPresent());
        boolean filled = rows.get(0).candidate().question().making() instanceof Moulded.Filled;
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
                                    .orElse(dried ? "not in 60 days" : "-"),
                            row.made().perBatch().isPresent()
                                    ? Integer.toString(row.made().perBatch().getAsInt())
                                    : "-",
                            row.made().costEach().isPresent()
                                    ? NumberText.money(row.made().costEach().getAsDouble())
                                    : "-",
                            called(comparison, row))
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

    private static String called(Comparison comparison, ComparedPiece row) {
        StringBuilder text = new StringBuilder(CompareWords.name(comparison, row));
        for (MadePiece.Special special : NEWS) {
            if (row.made().special().contains(special)) {
                text.append("; ").append(special.words());
            }
        }
        return text.toString();
    }
}
