package org.fizzhull.decide;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.fizzhull.evidence.Interval;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Price;
import org.fizzhull.recipe.Recipe;

/**
 * What comes out of a mould before any bath: weight, number from a recipe, cost, drying time. One part of a row of a
 * {@code Comparison}. Masses in kg, times in s from pressing. Immutable.
 *
 * @param mass mass into the bath, with crystals and all else that it carries
 * @param dampMass mass out of the mould; empty for a piece of a given density
 * @param perBatch whole pieces from the recipe as it is written, what sticks to the bowl left out; empty without a
 *     recipe
 * @param costEach cost of what goes into a piece, what sticks to the bowl included, in the money of the recipe's prices;
 *     empty without any price. Ingredients without a price count nothing
 * @param dried whether it is dried before the bath
 * @param ready when it is dry; empty where it is not dried, or not within 60 days
 * @param special what is worth knowing before its mould is bought
 * @param effervescence whether it fizzes at all, by the central values; empty without a recipe and in still water
 */
public record MadePiece(
        Interval mass,
        Optional<Interval> dampMass,
        OptionalInt perBatch,
        OptionalDouble costEach,
        boolean dried,
        Optional<Interval> ready,
        Set<Special> special,
        Optional<Effervescence> effervescence) {

    /**
     * Copies the set.
     *
     * @param mass mass into the bath, with crystals and all else that it carries
     * @param dampMass mass out of the mould; empty for a piece of a given density
     * @param perBatch whole pieces from the recipe as it is written; empty without a recipe
     * @param costEach cost of what goes into a piece, in the money of the recipe's prices; empty without any price
     * @param dried whether it is dried before the bath
     * @param ready when it is dry; empty where it is not dried, or not within 60 days
     * @param special what is worth knowing before its mould is bought
     * @param effervescence whether it fizzes at all; empty without a recipe and in still water
     */
    public MadePiece {
        special = Collections.unmodifiableSet(
                special.isEmpty() ? EnumSet.noneOf(Special.class) : EnumSet.copyOf(special));
    }

    /**
     * {@return whether the piece of a question is dried before its bath}
     *
     * @param question piece and bath
     */
    public static boolean dried(Question question) {
        return !question.making().plan().phases().isEmpty();
    }

    /**
     * {@return the cost of a mass of the mix, in the money of its prices; empty without any price} Ingredients without a price
     * count nothing.
     *
     * @param recipe recipe of the mix
     * @param mass of damp mix, kg
     */
    public static OptionalDouble cost(Recipe recipe, double mass) {
        Given.all("recipe", recipe);
        Given.finite("mass", mass);
        Map<String, Price> prices = recipe.prices();
        if (prices.isEmpty()) {
            return OptionalDouble.empty();
        }
        double batch = 0;
        for (Recipe.Part part : recipe.parts()) {
            Price price = prices.get(part.ingredient().name());
            batch += price == null ? 0 : part.mass() * price.perKilogram();
        }
        return OptionalDouble.of(batch * mass / recipe.mass());
    }

    /** What is special about a piece, and worth knowing before its mould is bought; {@link MadePiece#special}. */
    public enum Special {
        /** An open hollow that floats only while its rim is dry. */
        BOAT("boat"),
        /** A shell with crystals, which count in its weight and stay to the last. */
        GEODE("geode"),
        /** A small disturbance may tip it as it floats: its metacentric height is small. */
        TIPPY("tippy"),
        /** Pressed in two halves that are closed on one another. */
        TWO_HALVES("two halves");

        /** Its name in results. */
        private final String words;

        Special(String words) {
            this.words = words;
        }

        /** {@return the name in results} */
        public String words() {
            return words;
        }
    }
}
