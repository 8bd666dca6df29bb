package org.fizzhull.validation.check;

import static org.fizzhull.quantity.Units.celsius;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.why.Cause;
import org.fizzhull.decide.why.Seen;
import org.fizzhull.decide.why.Symptom;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.numeric.Normal;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;

/**
 * Batches that went wrong from a known cause. For each a design is taken, a cause drawn by its prior weight, the size of its
 * fault drawn from the range that the cause speaks of, every uncertain input drawn from its prior, and the chain walked once:
 * pressed, dried, put into the bath. Of those that fail the maker tells the symptom that strikes most, the bath's before the drying
 * room's, and measures with error. Batches that do not fail are left out, as in life; a symptom that would have shown without the
 * fault too, in the same state of all that is uncertain, is laid to the plan.
 */
final class FailedBatches {
    private static final IngredientTable TABLE = IngredientTable.standard();
    private static final Sampling CENTRAL = new Sampling(1, 0);
    /** The loss of fizz from which a maker calls it weak. */
    private static final double WEAK = 1.0 / 3;

    /** A maker makes each of the further checks with this chance. */
    private static final double CHECKED = 0.5;

    /**
     * One failure.
     *
     * @param design as planned
     * @param cause that was at work
     * @param symptom that was seen
     * @param seen what was measured
     */
    record Failure(Design design, Cause cause, Symptom symptom, Seen seen) {}

    private record Truth(Design made, Optional<Double> fizzLeft, Optional<Fixed> weak) {
        Truth(Design made) {
            this(made, Optional.empty(), Optional.empty());
        }
    }

    private record Fixed(Input input, double value) {}

    /** The chain walked once, with all symptoms that it shows, the most striking first. */
    private record Walked(Forecast.BathOutcome outcome, DryForecast dry, List<Symptom> symptoms) {}

    private final SplittableRandom random;
    private final List<Design> designs = designs();

    FailedBatches(long seed) {
        random = new SplittableRandom(seed);
    }

    private static List<Design> designs() {
        Recipe lemon = ExampleRecipes.lemon(TABLE);
        Recipe clay = ExampleRecipes.harbourClay(TABLE);
        return List.of(
                design("sphere(diameter=65 mm)", lemon, new Design.Filling.Fill(0.134, hand()), 5),
                design("dome(diameter=80 mm)", clay, new Design.Filling.Fill(0.122, hand()), 5),
                design("bowl(diameter=90 mm, wall=15 mm)", lemon, new Design.Filling.Fill(0.140, hand()), 5),
                design(
                        "bowl(diameter=90 mm, wall=12 mm)",
                        clay,
                        new Design.Filling.Press(
                                PressWord.FIRM.pressure(),
                                1.6,
                                org.fizzhull.pressing.MouldDimensions.Filling.ONE_PLUNGER),
                        5));
    }

    private static Optional<org.fizzhull.uncertainty.Prior> hand() {
        return Optional.of(Priors.normal(0, 2e-3));
    }

    private static Design design(String text, Recipe recipe, Design.Filling filling, int days) {
        Shape shape = ShapeText.read(text);
        DryingConditions dried = new DryingConditions(
                RoomAir.of(celsius(21), 0.45),
                Optional.empty(),
                org.fizzhull.drying.place.Standing.RACK,
                false,
                days * 86_400.0,
                org.fizzhull.drying.place.Wrap.NONE,
                0,
                Optional.empty());
        return new Design(
                Optional.of(recipe),
                shape,
                filling,
                Optional.of(dried),
                Bath.at(celsius(38)),
                shape.hollow().isPresent() ? Question.IntoBath.PLACED : Question.IntoBath.DROPPED,
                false,
                Measured.CALIPERS,
                Scale.usual(0.140));
    }

    /** The next batch that failed. */
    Failure next() {
        while (true) {
            Design design = designs.get(random.nextInt(designs.size()));
            Cause cause = cause();
            try {
                Optional<Failure> failure = failure(design, cause);
                if (failure.isPresent()) {
                    return failure.get();
                }
            } catch (Refusal refusal) {
                // such a piece does not go into the mould: drawn again
            }
        }
    }

    private Cause cause() {
        double sum = 0;
        for (Cause cause : Cause.values()) {
            sum += cause.weight();
        }
        double at = sum * random.nextDouble();
        for (Cause cause : Cause.values()) {
            at -= cause.weight();
            if (at < 0) {
                return cause;
            }
        }
        return Cause.SOMETHING_ELSE;
    }

    private Optional<Failure> failure(Design design, Cause cause) {
        Optional<Truth> faulty = faulty(design, cause);
        if (faulty.isEmpty()) {
            return Optional.empty();
        }
        Truth truth = faulty.get();
        Factors state = state(design);
        Factors then = truth.weak().isPresent()
                ? state.fix(truth.weak().get().input(), truth.weak().get().value())
                : state;
        Walked walked = walked(truth, then);
        if (walked.symptoms().isEmpty()) {
            return Optional.empty();
        }
        Symptom told = walked.symptoms().get(0);
        boolean anyway = walked(new Truth(design), state).symptoms().contains(told);
        Cause blamed = anyway ? Cause.SOMETHING_ELSE : cause;
        return Optional.of(new Failure(design, blamed, told, measured(truth, then, walked)));
    }

    /** The chain once, in one state of all that is uncertain. */
    private static Walked walked(Truth truth, Factors state) {
        FloatPredictor walk = FloatPredictor.standard().with(state).with(CENTRAL);
        Forecast.BathOutcome outcome = walk.outcome(truth.made().question());
        if (truth.fizzLeft().isPresent()) {
            Piece.Makeup fresh = outcome.piece().makeup();
            Piece.Makeup left = new Piece.Makeup(
                    fresh.trueDensity(), truth.fizzLeft().get() * fresh.gasCapacity(), fresh.additives());
            Design.Filling finished =
                    new Design.Filling.Finished(outcome.piece().mass(), Optional.empty(), Optional.of(left));
            outcome = walk.outcome(truth.made().filled(finished).question());
        }
        DryForecast dry = DryPredictor.standard()
                .with(state)
                .with(CENTRAL)
                .forecast(truth.made().shape(), truth.made().making());
        return new Walked(outcome, dry, symptoms(truth, outcome, dry));
    }

    private static List<Symptom> symptoms(Truth truth, Forecast.BathOutcome outcome, DryForecast dry) {
        List<Symptom> shown = new ArrayList<>();
        double mass = outcome.piece().mass();
        if (mass > outcome.critical().atOnce()[0]) {
            shown.add(Symptom.SANK);
        } else if (mass > outcome.critical().toTheEnd()[0]) {
            shown.add(Symptom.SANK_LATER);
        }
        if (truth.fizzLeft().orElse(1.0) < 1 - WEAK || dry.fizzLost().median() > WEAK) {
            shown.add(Symptom.WEAK_FIZZ);
        }
        if (dry.readyWithin(dry.dryingTime()) < 0.5) {
            shown.add(Symptom.NEVER_DRIED);
        }
        return shown;
    }

    /** Every uncertain input at one value drawn from its prior. */
    private Factors state(Design design) {
        Factors state = Factors.standard();
        for (Factor row : Factors.standard().asked(design.question()).rows()) {
            state = state.fix(row.input(), row.prior().quantile(uniform()));
        }
        return state;
    }

    private Seen measured(Truth truth, Factors state, Walked walked) {
        Forecast.BathOutcome outcome = walked.outcome();
        double off =
                state.row(Input.MOULD_SIZE).map(row -> row.prior().median()).orElse(0.0);
        Seen seen = Seen.nothing()
                .with(Why.Check.WEIGH_A_PIECE, outcome.piece().mass() + normal(0.5e-3))
                .with(Why.Check.MEASURE_ACROSS, truth.made().shape().extents().length() + off + normal(0.7e-3));
        if (outcome.fizzTime().isPresent() && checked()) {
            seen = seen.with(Why.Check.TIME_THE_FIZZ, outcome.fizzTime().get().median() * Math.exp(normal(0.1)));
        }
        if (checked()) {
            double humidity = truth.made().drying().orElseThrow().air().humidity();
            seen = seen.with(Why.Check.READ_A_HYGROMETER, humidity + normal(0.04));
        }
        double water = walked.dry().course().last().water() * (0.6 + 0.4 * random.nextDouble()) + normal(0.2e-3);
        return checked() ? seen.with(Why.Check.WEIGH_AFTER_TWO_DAYS, Math.max(1e-4, water)) : seen;
    }

    private boolean checked() {
        return random.nextDouble() < CHECKED;
    }

    /** A fault of a size drawn anew; empty where the cause cannot touch the design. */
    private Optional<Truth> faulty(Design d, Cause cause) {
        return switch (cause) {
            case TOO_MUCH_MIX -> filled(d, 1 + between(0.05, 0.15));
            case PRESSED_TOO_HARD -> pressed(d, between(2, 4.5));
            case PRESSED_TOO_LIGHTLY -> pressed(d, 1 / between(2, 4.5));
            case NOT_DRY_INSIDE ->
                of(d.dried(d.drying()
                        .orElseThrow()
                        .openFor(between(0.1, 0.4) * d.drying().orElseThrow().open())));
            case LOST_ITS_FIZZ -> Optional.of(new Truth(d, Optional.of(between(0.15, 0.45)), Optional.empty()));
            case LITTLE_CLINGING_GAS -> {
                double thin = between(0.3, 0.7);
                double bubble = Factors.standard()
                        .asked(d.question())
                        .row(Input.BUBBLE_SIZE)
                        .orElseThrow()
                        .prior()
                        .median();
                yield weak(d, Input.BUBBLE_SIZE, thin * bubble);
            }
            case MOULD_SMALLER -> weak(d, Input.MOULD_SIZE, -between(1e-3, 3e-3));
            case WATER_SOAKED_IN -> weak(d, Input.WET_SKIN_DEPTH, 0.15e-3 * between(2.5, 6)); // times its usual depth
            case HEAVY_POWDER -> weak(d, Input.GRAIN_SCORE, between(1.5, 3.5));
            case RIM_DIPPED -> d.shape().hollow().isPresent() ? of(d.put(Question.IntoBath.DROPPED)) : Optional.empty();
            case TOO_MUCH_LIQUID -> of(d.of(wetter(d.recipe().orElseThrow(), between(1.3, 1.7))));
            case TOO_LITTLE_LIQUID -> of(d.of(wetter(d.recipe().orElseThrow(), between(0.3, 0.7))));
            case DAMP_ROOM -> of(d.dried(damper(d.drying().orElseThrow(), between(0.15, 0.20))));
            case SOMETHING_ELSE -> of(d);
        };
    }

    private static Optional<Truth> of(Design made) {
        return Optional.of(new Truth(made));
    }

    private static Optional<Truth> weak(Design design, Input input, double value) {
        return Optional.of(new Truth(design, Optional.empty(), Optional.of(new Fixed(input, value))));
    }

    private static Optional<Truth> filled(Design d, double factor) {
        return d.filling() instanceof Design.Filling.Fill fill
                ? of(d.filled(new Design.Filling.Fill(factor * fill.mass(), fill.hand())))
                : Optional.empty();
    }

    private static Optional<Truth> pressed(Design d, double factor) {
        return d.filling() instanceof Design.Filling.Press press
                ? of(d.filled(new Design.Filling.Press(factor * press.pressure(), press.spread(), press.halves())))
                : Optional.empty();
    }

    private static Recipe wetter(Recipe recipe, double factor) {
        List<Recipe.Part> wet = new ArrayList<>();
        for (Recipe.Part part : recipe.wet()) {
            wet.add(new Recipe.Part(part.ingredient(), factor * part.mass(), part.sigma()));
        }
        return new Recipe(
                recipe.name(),
                recipe.dry(),
                wet,
                recipe.acidLast(),
                recipe.prices(),
                recipe.limits(),
                recipe.notices());
    }

    private static DryingConditions damper(DryingConditions dry, double more) {
        return new DryingConditions(
                dry.air().withHumidity(dry.air().humidity() + more),
                dry.room(),
                dry.standing(),
                dry.fan(),
                dry.open(),
                dry.wrap(),
                dry.wrapped(),
                dry.storage());
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double normal(double deviation) {
        return deviation * Normal.quantile(uniform());
    }

    private double uniform() {
        return 1e-9 + (1 - 2e-9) * random.nextDouble();
    }
}
