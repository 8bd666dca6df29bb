package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;

/**
 * What one mix is made of: powders, liquids and, where the user gave them, prices and limits. Build one with
 * {@link RecipeBuilder}, which reads amounts as people write them; turn it into physics with {@link Blend#of}. Immutable.
 *
 * <p>Limits are what the user copied from a supplier's sheet. They are compared with the shares of the piece and nothing
 * more: no limit is known or computed here.
 *
 * @param name the maker's name for it
 * @param dry powders, in the order written; at least one with a mass above 0
 * @param wet liquids and melted fats, in the order written; may be empty
 * @param acidLast whether the acid goes in after the liquids
 * @param prices what the user pays, by ingredient name
 * @param limits largest share of the piece the user's supplier allows, by ingredient name, 0 to 1
 * @param notices what was assumed while reading it
 */
public record Recipe(
        String name,
        List<Part> dry,
        List<Part> wet,
        boolean acidLast,
        Map<String, Price> prices,
        Map<String, Double> limits,
        List<Notice> notices)
        implements Serializable {

    /** Share of a mass that {@link #shifted} leaves at least, so that a rare draw keeps every ingredient. */
    private static final double LEAST = 0.01;

    /**
     * Checks the lines against one another and copies lists and maps.
     *
     * @param name the maker's name for it
     * @param dry powders, in the order written
     * @param wet liquids and melted fats, in the order written
     * @param acidLast whether the acid goes in after the liquids
     * @param prices what the user pays, by ingredient name
     * @param limits largest share of the piece the user's supplier allows, by ingredient name, 0 to 1
     * @param notices what was assumed while reading it
     * @throws Refusal {@code empty} for no mass of powder, {@code repeated} for an ingredient named twice, {@code
     *     misplaced} for a liquid under dry or a powder under wet
     */
    public Recipe {
        Given.all("name, dry, wet, prices, limits, notices", name, dry, wet, prices, limits, notices);
        dry = List.copyOf(dry);
        wet = List.copyOf(wet);
        prices = Map.copyOf(prices);
        limits = Map.copyOf(limits);
        notices = List.copyOf(notices);
        Set<String> names = new HashSet<>();
        double dryMass = 0;
        for (Part part : dry) {
            once(names, part);
            dryMass += part.mass();
            if (!part.ingredient().role().mayBeDry()) {
                throw misplaced(part, "dry", "wet");
            }
        }
        for (Part part : wet) {
            once(names, part);
            if (!part.ingredient().role().mayBeWet()) {
                throw misplaced(part, "wet", "dry");
            }
        }
        if (!(dryMass > 0)) {
            throw new Refusal(
                    "empty",
                    "dry",
                    dryMass * 1e3 + " g in all",
                    "more than 0 g of powder",
                    "Give at least one powder a weight.");
        }
    }

    /** {@return all lines, powders first, in the order written} */
    public List<Part> parts() {
        return Stream.concat(dry.stream(), wet.stream()).toList();
    }

    /** {@return the mass of the powders, kg} */
    public double dryMass() {
        return sum(dry);
    }

    /** {@return the mass of the liquids, kg} */
    public double wetMass() {
        return sum(wet);
    }

    /** {@return the mass of the whole mix, kg} */
    public double mass() {
        return dryMass() + wetMass();
    }

    /**
     * {@return the line of that ingredient, dry or wet; empty where the recipe has none}
     *
     * @param ingredientName name of the ingredient as {@link Ingredient#name()} gives it
     */
    public Optional<Part> part(String ingredientName) {
        Given.all("ingredientName", ingredientName);
        return parts().stream()
                .filter(part -> part.ingredient().name().equals(ingredientName))
                .findFirst();
    }

    /** {@return whether any amount is known only with a spread: a range, a {@code +-} or a scoop} */
    public boolean spread() {
        return parts().stream().anyMatch(part -> part.sigma() > 0);
    }

    /**
     * {@return the recipe as it may have been weighed in one draw: every mass moved by a number of its own standard deviations}
     *
     * <p>At least a hundredth of each mass is left: a spread that would take it below 0 keeps the ingredient in the mix.
     *
     * @param scores standard normal scores, one a line, powders first, in the order written
     * @throws IllegalArgumentException for another number of scores than lines
     */
    public Recipe shifted(double[] scores) {
        if (scores.length != dry.size() + wet.size()) {
            throw new IllegalArgumentException(scores.length + " scores for " + (dry.size() + wet.size()) + " lines");
        }
        return withLines(shifted(dry, scores, 0), shifted(wet, scores, dry.size()));
    }

    /** Lines moved by their scores, of which the first stands at {@code from}. */
    private static List<Part> shifted(List<Part> parts, double[] scores, int from) {
        List<Part> shifted = new ArrayList<>(parts.size());
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            double mass = Math.max(LEAST * part.mass(), part.mass() + scores[from + i] * part.sigma());
            shifted.add(new Part(part.ingredient(), mass, part.sigma()));
        }
        return shifted;
    }

    /**
     * {@return the recipe with other lines; name, order of mixing, prices, limits and notices stay}
     *
     * @param otherDry powders, at least one with a mass above 0
     * @param otherWet liquids and melted fats; may be empty
     * @throws Refusal as for the constructor
     */
    public Recipe withLines(List<Part> otherDry, List<Part> otherWet) {
        return new Recipe(name, otherDry, otherWet, acidLast, prices, limits, notices);
    }

    /** Mass of all lines, kg. */
    private static double sum(List<Part> parts) {
        double sum = 0;
        for (Part part : parts) {
            sum += part.mass();
        }
        return sum;
    }

    /** Refuses an ingredient whose name was met before. */
    private static void once(Set<String> names, Part part) {
        if (!names.add(part.ingredient().name())) {
            throw new Refusal(
                    "repeated",
                    part.ingredient().name(),
                    "named twice",
                    "each ingredient once",
                    "Add the two amounts, or check whether one line uses another name for the same thing.");
        }
    }

    /** For a line on the wrong side of the recipe. */
    private static Refusal misplaced(Part part, String here, String there) {
        return new Refusal(
                "misplaced",
                part.ingredient().name(),
                "under " + here,
                "under " + there,
                "Move the line to the " + there + " part.");
    }

    /**
     * One line of a recipe: an ingredient and its mass.
     *
     * @param ingredient the ingredient
     * @param mass mass in one mix, kg, 0 or more
     * @param sigma one standard deviation of the mass, kg, 0 or more: that of a range or a {@code +-} that was written, or of a
     *     scoop; 0 for a mass as weighed
     */
    public record Part(Ingredient ingredient, double mass, double sigma) implements Serializable {
        /**
         * Checks mass and spread.
         *
         * @param ingredient the ingredient
         * @param mass mass in one mix, kg, 0 or more
         * @param sigma one standard deviation of the mass, kg, 0 or more
         * @throws Refusal {@code out-of-range} for a negative mass, NaN or infinity
         */
        public Part {
            Given.all("ingredient", ingredient);
            if (!(mass >= 0 && Double.isFinite(mass) && sigma >= 0 && Double.isFinite(sigma))) {
                throw new Refusal(
                        "out-of-range",
                        ingredient.name(),
                        mass * 1e3 + " g",
                        "0 g or more",
                        "Take no more away than there is.");
            }
        }

        /**
         * {@return the line for an amount as measured} A scoop is turned into mass by {@link Ingredient#scoopDensity()} and carries
         * that density's spread; the two spreads add as squares.
         *
         * @param ingredient the ingredient
         * @param amount a mass or a volume, 0 or more
         * @throws IllegalArgumentException for an amount of another dimension
         */
        public static Part of(Ingredient ingredient, Amount amount) {
            if (amount.dimension() == Dimension.MASS) {
                return new Part(ingredient, amount.value(), amount.standardDeviation());
            }
            if (amount.dimension() != Dimension.VOLUME) {
                throw new IllegalArgumentException("an ingredient is weighed or scooped, not " + amount);
            }
            Property.Datum density = ingredient.scoopDensity();
            double mass = amount.value() * density.value();
            double scoop = amount.standardDeviation() * density.value();
            return new Part(ingredient, mass, Math.hypot(scoop, mass * density.relativeSigma()));
        }
    }
}
