package org.fizzhull.recipe;

import java.io.Serializable;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;

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
        Datum density = ingredient.scoopDensity();
        double mass = amount.value() * density.value();
        double scoop = amount.standardDeviation() * density.value();
        return new Part(ingredient, mass, Math.hypot(scoop, mass * density.relativeSigma()));
    }
}
