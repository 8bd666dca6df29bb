package org.fizzhull.decide.compare;

import java.util.List;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Workers;

/**
 * Compares candidates (moulds, recipes, ways of making) in the same states of the world, so that a difference between two
 * rows is one between the candidates and not one between their draws.
 *
 * <pre>{@code
 * Comparison comparison = Comparer.standard()
 *         .with(new Sampling(1, 1024))
 *         .compare(candidates, Comparison.NamedBath.homes(), Comparison.SortBy.FLOAT, Workers.Progress.SILENT);
 * comparison.best().ifPresent(row -> System.out.println(row.mould().name()));
 * }</pre>
 *
 * <p>Cost: for each candidate that of its forecast without drivers and measurements to propose. Immutable; safe to share
 * between threads.
 */
public final class Comparer {
    private final JointPredictor predictor;

    private Comparer(JointPredictor predictor) {
        this.predictor = predictor;
    }

    /** {@return one with the standard priors and draws, on the calling thread} */
    public static Comparer standard() {
        return new Comparer(JointPredictor.standard());
    }

    /**
     * {@return the same with other priors}
     *
     * @param factors uncertain inputs, as a bench leaves them
     */
    public Comparer with(Factors factors) {
        return new Comparer(predictor.with(factors));
    }

    /**
     * {@return the same with another seed or number of draws}
     *
     * @param sampling seed and number of draws
     */
    public Comparer with(Sampling sampling) {
        return new Comparer(predictor.with(sampling));
    }

    /**
     * {@return the same on other threads; the answer does not depend on them}
     *
     * @param workers what runs the draws
     */
    public Comparer with(Workers workers) {
        return new Comparer(predictor.with(workers));
    }

    /**
     * {@return the same with what was measured on pieces of the same hand, powders or moulds}
     *
     * @param pieces what was measured, each with the question of the piece that it was measured on
     */
    public Comparer with(List<Observations.MeasuredPieces> pieces) {
        return new Comparer(predictor.with(pieces));
    }

    /**
     * Answers all candidates in the same states of the world and ranks them.
     *
     * @param candidates one or more, at most 2,000
     * @param panel baths that each goes into, the worst of them counting; none for the bath of its question
     * @param sort what matters; must be known of one candidate at least
     * @param progress told before each candidate and after the last; may stop the work
     * @return the comparison, best row first
     * @throws Refusal {@code out-of-range} for no candidate or too many, {@code not-known} where no candidate can tell what
     *     is sorted by
     */
    public Comparison compare(
            List<Comparison.Candidate> candidates,
            List<Comparison.NamedBath> panel,
            Comparison.SortBy sort,
            Workers.Progress progress) {
        return ComparisonRecord.of(candidates, panel, sort, predictor, progress);
    }
}
