package org.fizzhull.drying.mix;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;

/**
 * Sorption isotherm of a powder after Guggenheim, Anderson and de Boer: the water it holds in equilibrium with air.
 *
 * <pre>
 * X = Xm C K a/((1 - K a)(1 - K a + C K a))
 * </pre>
 *
 * X kg of water per kg free of water, a water activity (relative humidity as a fraction). Meant for a from 0 to about 0.9
 * and below the deliquescence of the mix; above that it is not refused. Constants of each powder and their sources:
 * docs/physics/drying.md, 2 (spread 15 % for starch and milk powder, up to 50 % for clays). A humectant as an ideal
 * solution is the case C = K = 1, Xm = M(water)/M(humectant). {@link Sorbent} says how much of the powder a mix has.
 *
 * @param monolayer Xm, water of one molecular layer, kg per kg free of water, 0 or more
 * @param c C, energy constant of the first layer, without unit, above 0
 * @param k K, energy constant of the further layers, without unit, above 0 and at most 1
 */
public record Gab(double monolayer, double c, double k) implements Serializable {
    /**
     * Checks the constants.
     *
     * @param monolayer Xm, kg water per kg free of water
     * @param c C, without unit
     * @param k K, above 0 and at most 1: with more, X would be infinite below saturation
     * @throws IllegalArgumentException for constants outside these ranges, or NaN
     */
    public Gab {
        if (!(monolayer >= 0 && c > 0 && k > 0 && k <= 1)) {
            throw new IllegalArgumentException("GAB constants " + monolayer + ", " + c + ", " + k);
        }
    }

    /**
     * {@return the sorption isotherm of an ingredient, or empty where it takes up no water worth counting}
     *
     * @param ingredient powder or liquid
     */
    public static Optional<Gab> of(Ingredient ingredient) {
        return ingredient.datum(Property.GAB_MONOLAYER).isPresent()
                ? Optional.of(new Gab(
                        ingredient.value(Property.GAB_MONOLAYER),
                        ingredient.value(Property.GAB_C),
                        ingredient.value(Property.GAB_K)))
                : Optional.empty();
    }

    /**
     * {@return X, the water held, kg per kg free of water}
     *
     * @param activity a, water activity, 0 to below 1; at 1 and K = 1 the result is infinite
     */
    public double waterAt(double activity) {
        return waterIn(1, activity);
    }

    /** Water held by a mass free of water, in the unit of that mass, at a water activity. */
    double waterIn(double mass, double activity) {
        double u = k * activity;
        return mass * monolayer * c * u / ((1 - u) * (1 - u + c * u));
    }
}
