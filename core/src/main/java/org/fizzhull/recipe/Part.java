package org.fizzhull.recipe;

import java.io.Serializable;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;

/**
 * One line of a recipe: an ingredient and its mass.
 *
 * @param ingredient which
 * @param mass kg
 * @param sigma one standard deviation of the mass, kg
 */
public record Part(Ingredient ingredient, double mass, double sigma) implements Serializable {
    /**
     * Refuses NaN and less than nothing.
     *
     * @param ingredient which
     * @param mass kg
     * @param sigma one standard deviation of the mass, kg
     */
    public Part {
        if (!(mass >= 0 && Double.isFinite(mass) && sigma >= 0 && Double.isFinite(sigma))) {
            throw new Refusal("out-of-range", ingredient.name(), mass * 1e3 + " g", "0 g or more", "");
        }
    }

    /**
     * {@return the part as measured} A scoop is turned into mass by {@link Ingredient#scoopDensity()} and carries that
     * density's spread.
     *
     * @param ingredient which
     * @param amount a mass or a volume
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
