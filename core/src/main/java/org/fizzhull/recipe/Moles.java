package org.fizzhull.recipe;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * What can react in a mix, mol per kg of dry powder, and the carbon dioxide it can give (docs/physics/fizz.md, 1).
 *
 * <pre>
 * n_CO2 = max(0, min(n_HCO3 + n_CO3, n_acid - n_CO3))
 * </pre>
 *
 * Each carbonate first takes one acid group to become bicarbonate, before any gas is free. Stoichiometry only: what a
 * bath's equilibrium keeps dissolved is part of the gas share. Error 2e-5 from the molar masses; that of a recipe is in
 * the amounts and the purity of the powders.
 *
 * @param acid acid groups of powders and liquids, counted per proton that frees gas in a bath
 * @param bicarbonate bicarbonate
 * @param carbonate carbonate
 */
public record Moles(double acid, double bicarbonate, double carbonate) {
    /** Molar mass of carbon dioxide, kg/mol. */
    public static final double CO2 = PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS;

    /**
     * {@return the moles of a recipe, per kg of its powders; of liquids only acid groups count}
     *
     * @param recipe recipe with a dry mass above 0
     */
    static Moles of(Recipe recipe) {
        double a = 0;
        double b = 0;
        double c = 0;
        for (Part part : recipe.dry()) {
            a += part.mass() * part.ingredient().molesPerKilogram(Property.ACID_GROUPS);
            b += part.mass() * part.ingredient().molesPerKilogram(Property.BICARBONATE_GROUPS);
            c += part.mass() * part.ingredient().molesPerKilogram(Property.CARBONATE_GROUPS);
        }
        for (Part part : recipe.wet()) {
            a += part.mass() * part.ingredient().molesPerKilogram(Property.ACID_GROUPS);
        }
        double m = recipe.dryMass();
        return new Moles(a / m, b / m, c / m);
    }

    /** {@return xi_max, the most carbon dioxide that can form, mol per kg of dry powder, 0 or more} */
    public double gas() {
        return Math.max(0, Math.min(bicarbonate + carbonate, acid - carbonate));
    }
}
