package org.fizzhull.decide.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Progress;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;

/**
 * Moulds, recipes or both side by side, ranked.
 *
 * <p>All rows are answered in the same states of the world, so that one row against another is known better than either
 * alone. The rule of choice: a row is <b>best</b> where it is ahead of every other by more than the smallest difference
 * that matters in practice, and by more than the draws can err: for floating 2 pieces of 100 and two standard errors of
 * the difference, for fizzing and drying a tenth of the time, for cost a hundredth of it (the indifference zone of
 * Bechhofer 1954; its widths are assumed). Otherwise it is too close to call, and {@link #level} lists the rows that
 * are level with the first. Sorted by anything but floating, only rows that are likely to float (chance 0.66 or more)
 * can be best.
 *
 * <pre>{@code
 * List<Candidate> candidates = moulds.stream().map(mould -> new Candidate(mould, question(mould))).toList();
 * Comparison table = Comparison.of(
 *         candidates, NamedBath.homes(), SortBy.FLOAT, JointPredictor.standard(), Progress.SILENT);
 * Optional<ComparedPiece> take = table.best(); // empty: too close to call
 * }</pre>
 *
 * <p>Cost: one joint forecast for each candidate and bath. Immutable.
 *
 * @param rows best first by what they are sorted by, equals in the order given
 * @param level the rows among which it is too close to call; one row where that is the best, none where the table is
 *     sorted by something else than floating and no row is likely to float, or none of those ever dries
 * @param sort what matters
 * @param sampling seed and number of draws
 * @param notices what the reader must know of all rows
 */
public record Comparison(
        List<ComparedPiece> rows, List<ComparedPiece> level, SortBy sort, Sampling sampling, List<Notice> notices) {
    /** Difference of two chances below which two rows count as equal: 2 pieces of 100 (assumed). */
    public static final double SAME_SHARE = 0.02;

    /** Difference of two times that counts as none, as a share of the first (assumed). */
    public static final double SAME_TIME = 0.1;

    /** Difference of two costs that counts as none, as a share of the first (assumed). */
    public static final double SAME_COST = 0.01;

    /** Least chance to float of a row that can be best of a table sorted by something else: the lower end of "likely". */
    public static final double LIKELY = 0.66;

    /** Rows at most. */
    private static final int MOST = 2000;

    /**
     * Copies the lists.
     *
     * @param rows best first by what they are sorted by, equals in the order given
     * @param level the rows among which it is too close to call
     * @param sort what matters
     * @param sampling seed and number of draws
     * @param notices what the reader must know of all rows
     */
    public Comparison {
        rows = List.copyOf(rows);
        level = List.copyOf(level);
        notices = List.copyOf(notices);
    }

    /**
     * Answers all candidates in the same states of the world and ranks them.
     *
     * @param candidates one or more, at most 2,000
     * @param panel baths that each goes into, the worst of them counting; none for the bath of its question
     * @param sort what matters; must be known of one candidate at least
     * @param predictor predictor to be asked, with its priors and draws
     * @param progress told before each candidate and after the last; may stop the work
     * @return the comparison, best row first
     * @throws Refusal {@code out-of-range} for no candidate or too many, {@code not-known} where no candidate can tell what
     *     is sorted by
     */
    public static Comparison of(
            List<Candidate> candidates,
            List<NamedBath> panel,
            SortBy sort,
            JointPredictor predictor,
            Progress progress) {
        if (candidates.isEmpty() || candidates.size() > MOST) {
            throw new Refusal(
                    "out-of-range",
                    "rows",
                    Integer.toString(candidates.size()),
                    "1 to " + MOST,
                    "A row is a recipe in a mould.");
        }
        check(candidates, sort);
        List<Question> questions = candidates.stream().map(Candidate::question).toList();
        List<Bath> baths = panel.stream().map(NamedBath::bath).toList();
        List<RowDraws> drawn = new ArrayList<>(candidates.size());
        predictor.forecast(
                questions,
                baths,
                progress,
                answer -> drawn.add(new RowDraws(candidates.get(drawn.size()), answer, panel)));
        drawn.sort(Comparator.comparingDouble((RowDraws row) -> -row.merit(sort)));
        return ranked(drawn, sort, predictor.sampling());
    }

    /** Refuses to sort by what no candidate can tell, before anything is drawn. */
    private static void check(List<Candidate> candidates, SortBy sort) {
        if (candidates.stream().noneMatch(candidate -> tells(candidate.question(), sort))) {
            throw new Refusal(
                    "not-known",
                    "sort",
                    sort.word(),
                    "something that is known of a row",
                    switch (sort) {
                        case COST -> "Write prices into the recipe: prices: {sodium bicarbonate: 3.10 / kg}";
                        case DRY -> "Say in what air they dry, and of which recipe: then it can be told.";
                        case FIZZ, FLOAT -> "Still water does not fizz.";
                    });
        }
    }

    /** Whether the question tells what is sorted by. */
    private static boolean tells(Question question, SortBy sort) {
        return switch (sort) {
            case FLOAT -> true;
            case FIZZ -> !question.stillWater();
            case DRY -> MadePiece.dried(question);
            case COST ->
                question.making()
                        .mix()
                        .map(mix -> !mix.recipe().prices().isEmpty())
                        .orElse(false);
        };
    }

    /** Rows with their ranks, from draws that are sorted already. */
    private static Comparison ranked(List<RowDraws> drawn, SortBy sort, Sampling sampling) {
        // ranks by the share that floats, whatever the table is sorted by
        double[][] shares = drawn.stream().map(RowDraws::shares).toArray(double[][]::new);
        double[] best = Ranking.best(shares);
        double[] chances = Ranking.chancesOfBest(shares);
        List<Notice> common = common(drawn);
        List<ComparedPiece> rows = new ArrayList<>(drawn.size());
        for (int i = 0; i < drawn.size(); i++) {
            RowDraws row = drawn.get(i);
            // against the next row, in what the table is sorted by
            OptionalDouble better = i + 1 == drawn.size()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Ranking.chanceAbove(
                            row.merits(sort), drawn.get(i + 1).merits(sort)));
            RowRank standing = new RowRank(better, chances[i], Ranking.opportunityLoss(best, row.shares()));
            List<Notice> own = new ArrayList<>(row.notices());
            own.removeAll(common);
            rows.add(row.row(standing, own));
        }
        return new Comparison(rows, level(drawn, rows, sort), sort, sampling, common);
    }

    /** Notices of every row, once each; they are told of the table. */
    private static List<Notice> common(List<RowDraws> drawn) {
        List<Notice> common = new ArrayList<>(drawn.get(0).notices());
        for (RowDraws row : drawn) {
            common.retainAll(row.notices());
        }
        return common.stream().distinct().toList();
    }

    /**
     * Rows that are level with the first of those that count: known in what is sorted by and, sorted by anything but floating,
     * likely to float.
     */
    private static List<ComparedPiece> level(List<RowDraws> drawn, List<ComparedPiece> rows, SortBy sort) {
        List<ComparedPiece> level = new ArrayList<>();
        RowDraws first = null;
        for (int i = 0; i < rows.size(); i++) {
            RowDraws row = drawn.get(i);
            boolean known = row.merit(sort) > Double.NEGATIVE_INFINITY;
            if (!known || (sort != SortBy.FLOAT && row.floats() < LIKELY)) {
                continue;
            }
            first = first == null ? row : first;
            if (same(first, row, sort)) {
                level.add(rows.get(i));
            }
        }
        return level;
    }

    /** Whether a row is level with the first: within the zone of indifference, and for floating also within two standard errors. */
    private static boolean same(RowDraws first, RowDraws row, SortBy sort) {
        double ahead = first.merit(sort) - row.merit(sort);
        if (sort == SortBy.FLOAT) {
            double error = 2 * Ranking.differenceError(first.shares(), row.shares());
            return first == row || ahead <= Math.max(SAME_SHARE, error);
        }
        double zone = sort == SortBy.COST ? SAME_COST : SAME_TIME;
        return first == row || ahead <= zone * Math.abs(first.merit(sort));
    }

    /** {@return the row to take; empty where it is too close to call, or none is likely to float} */
    public Optional<ComparedPiece> best() {
        return level.size() == 1 ? Optional.of(level.get(0)) : Optional.empty();
    }

    /** {@return what the choice came to} */
    public Verdict verdict() {
        if (rows.size() == 1) {
            return Verdict.ONE_ROW;
        }
        if (level.isEmpty()) {
            boolean likely = rows.stream().anyMatch(row -> row.floats() >= LIKELY);
            return likely ? Verdict.NONE_DRIES : Verdict.NONE_FLOATS;
        }
        return level.size() == 1 ? Verdict.BEST : Verdict.TOO_CLOSE;
    }

    /** What a choice comes to. */
    public enum Verdict {
        /** There is nothing to choose between. */
        ONE_ROW,
        /** One row is ahead of all others. */
        BEST,
        /** Several rows are level. */
        TOO_CLOSE,
        /** No row is likely to float. */
        NONE_FLOATS,
        /** Sorted by drying: no row that is likely to float is dry within 60 days in half of the cases. */
        NONE_DRIES
    }
}
