package org.fizzhull.decide.advise;

import java.util.List;
import java.util.Set;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Advice.Need;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.model.BatchShare;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.uncertainty.Workers;

/**
 * Finds the smallest changes that make a piece float to the end with the chance that was asked for.
 *
 * <p>Every lever ({@link Levers}) is followed alone to its smallest rung that reaches the goal, then the levers that help most
 * by two ({@link ChangeSearch}). What breaks a limit ({@link Limits}) is no proposal, whatever it gains. Cost: some ten
 * forecasts. Immutable; the same answer for any number of workers.
 */
public final class Adviser {
    private final FloatPredictor predictor;
    private final FloatPredictor elsewhere;
    private final Sampling sampling;
    private final Workers workers;
    private final IngredientTable table;
    private final Set<String> locked;
    private final KitchenSteps steps;

    private Adviser(
            FloatPredictor predictor,
            FloatPredictor elsewhere,
            Sampling sampling,
            Workers workers,
            IngredientTable table,
            Set<String> locked,
            KitchenSteps steps) {
        this.predictor = predictor;
        this.elsewhere = elsewhere;
        this.sampling = sampling;
        this.workers = workers;
        this.table = table;
        this.locked = Set.copyOf(locked);
        this.steps = steps;
    }

    /** {@return the usual predictor and draws, on the calling thread, the table of the library, nothing locked} */
    public static Adviser standard() {
        FloatPredictor usual = FloatPredictor.standard();
        return new Adviser(
                usual,
                usual,
                Sampling.standard(),
                Workers.CALLER,
                IngredientTable.standard(),
                Set.of(),
                KitchenSteps.METRIC);
    }

    /**
     * {@return this adviser with another predictor: other priors, or measurements}
     *
     * @param other predictor to be asked
     */
    public Adviser with(FloatPredictor other) {
        return new Adviser(other, other, sampling, workers, table, locked, steps);
    }

    /**
     * {@return this adviser asking another predictor about other moulds than that of the design: one that knows from which
     * mould the weighed pieces came} To be said after {@link #with(FloatPredictor)}.
     *
     * @param other predictor to be asked about pieces of other moulds
     */
    public Adviser elsewhere(FloatPredictor other) {
        return new Adviser(predictor, other, sampling, workers, table, locked, steps);
    }

    /**
     * {@return this adviser with other draws; at least 128}
     *
     * @param other number of draws and seed
     */
    public Adviser with(Sampling other) {
        if (other.samples() == 0) {
            throw new IllegalArgumentException("advice needs draws: central values know no chance");
        }
        return new Adviser(predictor, elsewhere, other, workers, table, locked, steps);
    }

    /**
     * {@return this adviser with other workers; the answer stays the same to the byte}
     *
     * @param others workers that compute the draws
     */
    public Adviser with(Workers others) {
        return new Adviser(predictor, elsewhere, sampling, others, table, locked, steps);
    }

    /**
     * {@return this adviser with another table of ingredients, the user's own included}
     *
     * @param other table of ingredients
     */
    public Adviser with(IngredientTable other) {
        return new Adviser(predictor, elsewhere, sampling, workers, other, locked, steps);
    }

    /**
     * {@return this adviser keeping ingredients as they are, by their names in the table}
     *
     * @param names names of ingredients in the table
     */
    public Adviser keeping(Set<String> names) {
        return new Adviser(predictor, elsewhere, sampling, workers, table, names, steps);
    }

    /**
     * {@return this adviser proposing changes in other steps}
     *
     * @param others in which the kitchen changes things
     */
    public Adviser with(KitchenSteps others) {
        return new Adviser(predictor, elsewhere, sampling, workers, table, locked, others);
    }

    /**
     * {@return the advice for a design}
     *
     * @param design what was planned
     * @param goal what is to be reached
     */
    public Advice advise(Design design, Goal goal) {
        Appraiser appraiser = new Appraiser(design.shape(), predictor, elsewhere, sampling, workers);
        Forecast forecast = appraiser.forecast(design);
        Appraisal now = appraiser.appraise(design, forecast);
        if (now.chance() >= goal.chance()) {
            return new Advice(goal, design, forecast, now, List.of(), List.of(), Need.NOTHING);
        }
        ChangeSearch search = new ChangeSearch(appraiser, design, goal, now);
        boolean ofItsMould =
                forecast.narrowing().map(effect -> effect.seen().bathed()).orElse(false);
        List<Change> changes = search.changes(Levers.of(design, table, locked, steps, ofItsMould));
        boolean reached = changes.stream().anyMatch(Change::reachesGoal);
        boolean open = now.chance() > BatchShare.NEARLY_NONE
                && forecast.critical().batch().undecided();
        Need need = open ? Need.A_MEASUREMENT_FIRST : reached ? Need.A_CHANGE : Need.ANOTHER_DESIGN;
        return new Advice(goal, design, forecast, now, changes, search.forgone(), need);
    }
}
