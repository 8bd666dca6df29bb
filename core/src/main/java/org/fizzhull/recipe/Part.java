package org.fizzhull.recipe;

import org.fizzhull.quantity.Refusal;

/**
 * One line of a recipe: an ingredient and its mass.
 *
 * @param ingredient which
 * @param mass kg
 * @param sigma one standard deviation of the mass, kg
 */
public record Part(Ingredient ingredient, double mass, double sigma) {
    /** Refuses NaN and less than nothing. */
    public Part {
        if (!(mass >= 0 && Double.isFinite(mass) && sigma >= 0 && Double.isFinite(sigma))) {
            throw new Refusal("out-of-range", ingredient.name(), mass * 1e3 + " g", "0 g or more", "");
        }
    }
}
