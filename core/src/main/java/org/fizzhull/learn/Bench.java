package org.fizzhull.learn;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Priors;

/**
 * What is known of one kitchen, once, for every later question: what its trials taught, its scale, its hygrometer, its moulds and
 * its powders. What was measured on single pieces is told to a predictor beside it
 * ({@link org.fizzhull.forecast.measured.Observations}). The bench file of the command line says the same (cli/docs/contract.md).
 *
 * <pre>{@code
 * Bench bench = Bench.none()
 *         .with(learned.draws())                                        // what trials taught
 *         .weighingOn(Units.grams(0.1))                                 // step of the scale
 *         .reading(0.02)                                                // spread of the hygrometer, relative humidity
 *         .filled(ball, Units.grams(146))                               // water that the mould holds
 *         .cup("citric acid", Map.of("loose cup", "205 g"));            // a cup of a powder
 * Recipe recipe = bench.own(new RecipeBuilder(table, Measures.METRIC)).dry("citric acid", "150 g") ...
 * Forecast forecast = FloatPredictor.standard().with(bench.factors()).forecast(bench.on(question));
 * }</pre>
 *
 * <p>Immutable; each method returns a changed copy. Safe to share between threads.
 *
 * @param learned what trials taught; empty for none
 * @param scale the scale on which pieces are weighed; empty where it is not known
 * @param hygrometer one standard deviation of what the hygrometer shows, relative humidity 0 to 1; empty for the usual one
 * @param moulds moulds that were filled with water and weighed
 * @param powders what is known of each powder, by its name: values as {@link RecipeBuilder#own(String, Map)} takes them
 */
public record Bench(
        Optional<Learned.Draws> learned,
        Optional<Scale> scale,
        OptionalDouble hygrometer,
        List<MouldWater> moulds,
        Map<String, Map<String, String>> powders) {
    /** Largest spread of a hygrometer, relative humidity. */
    private static final double VAGUEST = 0.2;

    private static final Source HYGROMETER =
            new Source("hygrometer", "The spread that the bench gives", Source.Seen.ASSUMED);

    /**
     * Copies the lists; refuses a spread that no hygrometer has.
     *
     * @param learned what trials taught; empty for none
     * @param scale the scale on which pieces are weighed; empty where it is not known
     * @param hygrometer one standard deviation of what the hygrometer shows, relative humidity; empty for the usual one
     * @param moulds moulds that were filled with water and weighed
     * @param powders what is known of each powder, by its name
     * @throws Refusal {@code out-of-range}
     */
    public Bench {
        moulds = List.copyOf(moulds);
        powders = Collections.unmodifiableMap(new LinkedHashMap<>(powders));
        if (hygrometer.isPresent() && !(hygrometer.getAsDouble() > 0 && hygrometer.getAsDouble() <= VAGUEST)) {
            throw new Refusal(
                    "out-of-range",
                    "hygrometer",
                    100 * hygrometer.getAsDouble() + " %",
                    "more than 0 %, at most 20 %",
                    "Say how far it may be off, one standard deviation, or leave it out.");
        }
    }

    /** {@return a bench of which nothing is known} */
    public static Bench none() {
        return new Bench(Optional.empty(), Optional.empty(), OptionalDouble.empty(), List.of(), Map.of());
    }

    /**
     * {@return this bench with what trials taught, in place of earlier trials}
     *
     * @param draws what trials left of the priors
     */
    public Bench with(Learned.Draws draws) {
        return new Bench(Optional.of(draws), scale, hygrometer, moulds, powders);
    }

    /**
     * {@return this bench with a scale}
     *
     * @param step smallest difference that the scale shows, kg
     */
    public Bench weighingOn(double step) {
        return new Bench(learned, Optional.of(new Scale(step)), hygrometer, moulds, powders);
    }

    /**
     * {@return this bench with a hygrometer}
     *
     * @param deviation one standard deviation of what it shows, relative humidity, above 0 to 0.2
     */
    public Bench reading(double deviation) {
        return new Bench(learned, scale, OptionalDouble.of(deviation), moulds, powders);
    }

    /**
     * {@return this bench with a mould that was filled with water and weighed}
     *
     * @param mould form of its pieces, as stated
     * @param water mass of the water that fills it, kg at room temperature
     */
    public Bench filled(Shape mould, double water) {
        List<MouldWater> more = new ArrayList<>(moulds);
        more.add(new MouldWater(mould, water));
        return new Bench(learned, scale, hygrometer, more, powders);
    }

    /**
     * {@return this bench with a powder of which a cup was weighed, or something else is known}
     *
     * @param powder name of the ingredient, as recipes write it
     * @param said values by key, such as {@code loose cup: 205 g}
     */
    public Bench cup(String powder, Map<String, String> said) {
        Given.all("powder, said", powder, said);
        Map<String, Map<String, String>> more = new LinkedHashMap<>(powders);
        more.put(powder, new LinkedHashMap<>(said));
        return new Bench(learned, scale, hygrometer, moulds, more);
    }

    /** {@return the table of uncertain inputs of this bench, for every predictor} */
    public Factors factors() {
        Factors factors = Factors.standard();
        if (learned.isPresent()) {
            factors = learned.get().over(factors);
        }
        if (hygrometer.isPresent()) {
            factors = factors.with(
                    new Factor(Input.ROOM_HUMIDITY, Priors.normal(0, hygrometer.getAsDouble()), HYGROMETER));
        }
        for (MouldWater mould : moulds) {
            factors = factors.sized(mould.mould(), mould.size());
        }
        return factors;
    }

    /**
     * {@return a question whose piece was weighed on the scale of this bench; itself where that is not known}
     *
     * @param question what is asked
     */
    public Question on(Question question) {
        Given.all("question", question);
        return scale.isPresent() ? question.on(scale.get()) : question;
    }

    /**
     * {@return a builder that knows the powders of this bench; for each that the recipe describes itself, that counts}
     *
     * @param recipe builder of a recipe, before its lines
     */
    public RecipeBuilder own(RecipeBuilder recipe) {
        powders.forEach(recipe::own);
        return recipe;
    }

    /**
     * A mould that was filled with water and weighed. With W the mass of the water, V and S volume and surface of the stated form and
     * r = W/(998 kg/m3 V), the mould is across by
     * <pre>  e = (6 V/S)(r^(1/3) - 1)</pre>
     * more than stated: of a ball 6 V/S is the diameter; of any form, what grows the volume as that of a ball. The water is true to
     * 1 g ({@link Measured#WATER}), its density at 10 to 30 C to 2 in 1000. Immutable.
     *
     * @param mould form of its pieces, as stated
     * @param water mass of the water that fills it, kg at room temperature
     */
    public record MouldWater(Shape mould, double water) implements Serializable {
        /** Density of the water that fills a mould, kg/m3: at 20 C, to 2 in 1000 from 10 to 30 C. */
        private static final double DENSITY = 998;

        /** Relative difference of the water from the stated volume above which it must be another mould. */
        private static final double MOST_OFF = 0.25;

        private static final Source FILLED =
                new Source("mould-water", "The mould filled with water and weighed, true to 1 g", Source.Seen.COMPUTED);

        /**
         * Refuses water that is not that of the mould.
         *
         * @param mould form of its pieces, as stated
         * @param water mass of the water that fills it, kg at room temperature
         * @throws Refusal {@code conflict}
         */
        public MouldWater {
            if (!(Math.abs(water / DENSITY / mould.volume() - 1) <= MOST_OFF)) {
                throw new Refusal(
                        "conflict",
                        "mould water",
                        1e3 * water + " g of water in a mould of " + Math.round(1e6 * mould.volume()) + " mL",
                        "as much as the mould holds, to a quarter",
                        "Weigh the water that fills the whole mould, both halves of a ball, or mend the size.");
            }
        }

        /** {@return true less stated size of the mould, m across} */
        public double sizeError() {
            double ratio = water / DENSITY / mould.volume();
            return 6 * mould.volume() / mould.surface() * (Math.cbrt(ratio) - 1);
        }

        /** {@return what is then known of the size of the mould} */
        Factor size() {
            double deviation = Measured.WATER.sizeDeviation(mould.surface());
            return new Factor(Input.MOULD_SIZE, Priors.normal(sizeError(), deviation), FILLED);
        }
    }
}
