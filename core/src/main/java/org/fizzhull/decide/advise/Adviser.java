package org.fizzhull.decide.advise;

import java.util.List;
import java.util.Set;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Advice.Need;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.uncertainty.Workers;

/**
 * Finds the smallest changes that make a piece float to the end with the chance that was asked for.
 *
 * <p>Method:
 *
 * <ol>
 * <li>Forecast the design as it is; where the goal is reached, nothing is searched. Where nearly all pieces of the batch may float as well as nearly none, the advice is to measure first ({@link Advice.Need}), whatever else is found.
 * <li>Follow every adjustment ({@link Adjustments}) alone to its smallest level that reaches the goal, with few draws
 *     ({@link ChangeSearch}).
 * <li>Try the adjustments that help most by two.
 * <li>Ask each proposal anew with all draws. What breaks a limit ({@link Limits}) is no proposal, whatever it gains.
 * </ol>
 *
 * <pre>{@code
 * Advice advice = Adviser.standard().advise(design, Adviser.Goal.nineOfTen());
 * advice.best().ifPresent(change -> change.steps().forEach(step -> System.out.println(step.label())));
 * }</pre>
 *
 * <p>Efforts, which set the order, are assumed. Cost: some ten forecasts. Left out: what no forecast computes, such as looks,
 * smell and feel. Immutable; the same answer for any number of workers.
 */
public final class Adviser {
    private final FloatPredictor predictor;
    /** Seed and number of draws of the answer; a search uses fewer. */
    private final FloatPredictor elsewhere;

    private final Sampling sampling;

    private final Workers workers;
    private final IngredientTable table;
    /** Names of ingredients that stay as they are. */
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
        Given.all(
                "predictor, elsewhere, sampling, workers, table, locked, steps",
                predictor,
                elsewhere,
                sampling,
                workers,
                table,
                locked,
                steps);
        this.predictor = predictor;
        this.elsewhere = elsewhere;
        this.sampling = sampling;
        this.workers = workers;
        this.table = table;
        this.locked = Set.copyOf(locked);
        this.steps = steps;
    }

    /** {@return an adviser with the usual predictor and draws, on the calling thread, the table of the library, nothing locked} */
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
     * {@return this adviser with other draws}
     *
     * @param other seed and number of draws, above 0
     * @throws IllegalArgumentException for no draws
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
     * @param others threads that compute the draws
     */
    public Adviser with(Workers others) {
        return new Adviser(predictor, elsewhere, sampling, others, table, locked, steps);
    }

    /**
     * {@return this adviser with another table, from which it takes what a change puts in}
     *
     * @param other table of ingredients, the user's own included
     */
    public Adviser with(IngredientTable other) {
        return new Adviser(predictor, elsewhere, sampling, workers, other, locked, steps);
    }

    /**
     * {@return this adviser keeping some ingredients as they are: neither more nor less of them is proposed}
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
     * @param design the design as planned
     * @param goal chance to be reached
     * @throws org.fizzhull.quantity.Refusal for a design that no forecast takes
     */
    public Advice advise(Design design, Goal goal) {
        Appraiser appraiser = new Appraiser(design.shape(), predictor, elsewhere, sampling, workers);
        Forecast forecast = appraiser.forecast(design);
        Advice.Appraisal now = appraiser.appraise(design, forecast);
        if (now.chance() >= goal.chance()) {
            return new AdviceRecord(goal, design, forecast, now, List.of(), List.of(), Need.NOTHING);
        }
        ChangeSearch search = new ChangeSearch(appraiser, design, goal, now);
        boolean ofItsMould =
                forecast.narrowing().map(effect -> effect.seen().bathed()).orElse(false);
        List<Change> changes = search.changes(Adjustments.of(design, table, locked, steps, ofItsMould));
        boolean reached = changes.stream().anyMatch(Change::reachesGoal);
        // nearly all may float as well as nearly none: no change helps as much as knowing
        boolean open = now.chance() > CriticalWeights.BatchShare.NEARLY_NONE
                && forecast.critical().batch().undecided();
        Need need = open ? Need.A_MEASUREMENT_FIRST : reached ? Need.A_CHANGE : Need.ANOTHER_DESIGN;
        return new AdviceRecord(goal, design, forecast, now, changes, search.forgone(), need);
    }

    /**
     * What is to be reached: so large a chance that a piece taken at random floats to the end.
     *
     * @param chance chance, above 0 and below 1; 9 of 10 is usual
     */
    public record Goal(double chance) {
        /**
         * Checks the chance: certainty no forecast gives.
         *
         * @param chance chance, above 0 and below 1; 9 of 10 is usual
         * @throws IllegalArgumentException for any other number, or NaN
         */
        public Goal {
            if (!(chance > 0 && chance < 1)) {
                throw new IllegalArgumentException("a goal is a chance above 0 and below 1, not " + chance);
            }
        }

        /** {@return a chance of 0.9: nine pieces of ten} */
        public static Goal nineOfTen() {
            return new Goal(0.9);
        }
    }

    /**
     * The steps in which a kitchen changes things: what its scale shows and its ruler has marks for, so that a proposal can be
     * weighed out as it is proposed. All assumed.
     *
     * @param weight of a fill, a piece or a liquid, kg
     * @param powder of a powder of the mix, kg
     * @param mould across a mould, m
     */
    public record KitchenSteps(double weight, double powder, double mould) {
        /** 1 g, 5 g of a powder, 5 mm. */
        public static final KitchenSteps METRIC =
                new KitchenSteps(Unit.GRAM.toSi(1), Unit.GRAM.toSi(5), Unit.MILLIMETRE.toSi(5));

        /** 0.05 oz, 0.2 oz of a powder, a quarter of an inch. */
        public static final KitchenSteps US =
                new KitchenSteps(Unit.OUNCE.toSi(0.05), Unit.OUNCE.toSi(0.2), Unit.INCH.toSi(0.25));

        /**
         * Refuses steps of nothing.
         *
         * @param weight of a fill, a piece or a liquid, kg
         * @param powder of a powder of the mix, kg
         * @param mould across a mould, m
         */
        public KitchenSteps {
            if (!(weight > 0 && powder > 0 && mould > 0)) {
                throw new Refusal(
                        "out-of-range", "steps", weight + ", " + powder + ", " + mould, "above 0", "Say a step.");
            }
        }

        /**
         * {@return these steps with those of another across a mould}
         *
         * @param other whose step is taken
         */
        public KitchenSteps across(KitchenSteps other) {
            return new KitchenSteps(weight, powder, other.mould);
        }
    }
}
