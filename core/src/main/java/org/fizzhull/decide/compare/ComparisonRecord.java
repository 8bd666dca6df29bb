package org.fizzhull.decide.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Ranking;

/** A {@link Comparison} and how its rows are ranked. */
record ComparisonRecord(
        List<ComparedPiece> rows,
        List<ComparedPiece> level,
        Comparison.SortBy sort,
        Sampling sampling,
        List<Notice> notices)
        implements Comparison {
    /** Rows at most. */
    private static final int MOST = 2000;

    ComparisonRecord {
        rows = List.copyOf(rows);
        level = List.copyOf(level);
        notices = List.copyOf(notices);
    }

    /** As {@link Comparer#compare}. */
    static Comparison of(
            List<Comparison.Candidate> candidates,
            List<Comparison.NamedBath> panel,
            Comparison.SortBy sort,
            JointPredictor predictor,
            Workers.Progress progress) {
        if (candidates.isEmpty() || candidates.size() > MOST) {
            throw new Refusal(
                    "out-of-range",
                    "rows",
                    Integer.toString(candidates.size()),
                    "1 to " + MOST,
                    "A row is a recipe in a mould.");
        }
        check(candidates, sort);
        List<Question> questions =
                candidates.stream().map(Comparison.Candidate::question).toList();
        List<Bath> baths = panel.stream().map(Comparison.NamedBath::bath).toList();
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
    private static void check(List<Comparison.Candidate> candidates, Comparison.SortBy sort) {
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
    private static boolean tells(Question question, Comparison.SortBy sort) {
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
    private static Comparison ranked(List<RowDraws> drawn, Comparison.SortBy sort, Sampling sampling) {
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
            ComparedPiece.Rank standing =
                    new ComparedPiece.Rank(better, chances[i], Ranking.opportunityLoss(best, row.shares()));
            List<Notice> own = new ArrayList<>(row.notices());
            own.removeAll(common);
            rows.add(row.row(standing, own));
        }
        return new ComparisonRecord(rows, level(drawn, rows, sort), sort, sampling, common);
    }

    /** Notices of all rows, each once; they apply to the whole table. */
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
    private static List<ComparedPiece> level(List<RowDraws> drawn, List<ComparedPiece> rows, Comparison.SortBy sort) {
        List<ComparedPiece> level = new ArrayList<>();
        RowDraws first = null;
        for (int i = 0; i < rows.size(); i++) {
            RowDraws row = drawn.get(i);
            boolean known = row.merit(sort) > Double.NEGATIVE_INFINITY;
            if (!known || (sort != Comparison.SortBy.FLOAT && row.floats() < LIKELY)) {
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
    private static boolean same(RowDraws first, RowDraws row, Comparison.SortBy sort) {
        double ahead = first.merit(sort) - row.merit(sort);
        if (sort == Comparison.SortBy.FLOAT) {
            double error = 2 * Ranking.differenceError(first.shares(), row.shares());
            return first == row || ahead <= Math.max(SAME_SHARE, error);
        }
        double zone = sort == Comparison.SortBy.COST ? SAME_COST : SAME_TIME;
        return first == row || ahead <= zone * Math.abs(first.merit(sort));
    }
}
