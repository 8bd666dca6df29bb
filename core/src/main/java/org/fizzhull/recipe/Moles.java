package org.fizzhull.recipe;

import org.fizzhull.evidence.PhysicalConstants;

/**
 * What can react, mol per kg of dry powder. Largest gas (docs/physics/fizz.md, 1): min(bicarbonate + carbonate, acid
 * groups - carbonate), floored at 0, since each carbonate first takes one acid group to become bicarbonate.
 *
 * @param acid acid groups
 * @param bicarbonate bicarbonate
 * @param carbonate carbonate
 */
public record Moles(double acid, double bicarbonate, double carbonate) {
    /** Molar mass of carbon dioxide, kg/mol. */
    public static final double CO2 = PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS;

    /** Moles in a recipe. */
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

    /** {@return the yield xi, the most carbon dioxide that can form, mol per kg of dry powder} */
    public double gas() {
        return Math.max(0, Math.min(bicarbonate + carbonate, acid - carbonate));
    }

    /** {@return which side runs out first; balanced within 1 %} */
    public Limiting limiting() {
        double base = bicarbonate + carbonate;
        double left = acid - carbonate;
        if (Math.abs(base - left) <= 0.01 * Math.max(base, left)) {
            return Limiting.BALANCED;
        }
        return left < base ? Limiting.ACID : Limiting.BICARBONATE;
    }

    /** What runs out first. */
    public enum Limiting {
        /** Bicarbonate is left over. */
        ACID,
        /** Acid is left over. */
        BICARBONATE,
        /** Neither within 1 %. */
        BALANCED
    }
}
