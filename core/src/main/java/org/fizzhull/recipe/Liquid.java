package org.fizzhull.recipe;

import java.util.List;
import org.fizzhull.quantity.check.Given;

/**
 * The liquid of a mix, split by what becomes of it: water wets, reacts and dries; other vapour (alcohol) dries faster; the
 * rest stays in the pores. Masses are kg per kg of dry powder. A mix without liquid has water's density and tension, so
 * that water can be added to it ({@link #withRatio}).
 *
 * @param water free water: the water share of each liquid
 * @param volatiles alcohols: the share of each liquid that leaves as vapour besides water
 * @param staying oils, melted butters, glycerin, emulsifiers, fragrance
 * @param density of all of it together (volumes taken as additive), kg/m3; water's where there is none
 * @param surfaceTension volume-weighted mean, N/m (the mean is assumed; a spreading oil pulls it lower)
 * @param alcohol what the volatiles are: ethanol or isopropanol, the one of which there is more, also where none is said;
 *     {@code UNSPECIFIED} where nothing but water evaporates
 * @param oil share of the liquid's mass that stays, 0 to 1, taken as oil where grains soak up liquid: 1 for oils, 0 for water
 */
public record Liquid(
        double water,
        double volatiles,
        double staying,
        double density,
        double surfaceTension,
        Substance alcohol,
        double oil) {
    /** Density of water at 20 C, kg/m3 (from memory). */
    private static final double WATER_DENSITY = 998.2;

    /** Surface tension of water at 20 C, N/m (from memory). */
    private static final double WATER_TENSION = 0.0728;
    /** Surface tension of a liquid whose own is not known, N/m: that of a plant oil (from memory). */
    private static final double OIL_TENSION = 0.033;

    /**
     * {@return the liquid of a mix, all parts taken together}
     *
     * @param wet liquids and melted fats, kg
     * @param dryMass mass of the powders, kg, above 0
     */
    static Liquid of(List<Recipe.Part> wet, double dryMass) {
        double mass = 0;
        double volume = 0;
        double water = 0;
        double volatiles = 0;
        double staying = 0;
        double isopropanol = 0;
        double tension = 0;
        for (Recipe.Part part : wet) {
            Ingredient liquid = part.ingredient();
            double v = part.mass() / liquid.value(Property.LIQUID_DENSITY);
            mass += part.mass();
            volume += v;
            water += part.mass() * liquid.value(Property.WATER_SHARE, 0);
            double vapour = part.mass() * liquid.value(Property.VOLATILE_SHARE, 0);
            volatiles += vapour;
            isopropanol += liquid.substance() == Substance.ISOPROPANOL ? vapour : 0;
            staying += staying(part);
            tension += v * liquid.value(Property.SURFACE_TENSION, OIL_TENSION);
        }
        if (mass == 0) {
            return new Liquid(0, 0, 0, WATER_DENSITY, WATER_TENSION, Substance.UNSPECIFIED, 0);
        }
        return new Liquid(
                water / dryMass,
                volatiles / dryMass,
                staying / dryMass,
                mass / volume,
                tension / volume,
                alcohol(volatiles, isopropanol),
                staying / mass);
    }

    /** What the volatiles are, by the mass of isopropanol among them, kg; what is not said counts as ethanol. */
    private static Substance alcohol(double volatiles, double isopropanol) {
        if (volatiles == 0) {
            return Substance.UNSPECIFIED;
        }
        return isopropanol > volatiles / 2 ? Substance.ISOPROPANOL : Substance.ETHANOL;
    }

    /**
     * {@return what of a liquid neither is water nor evaporates, kg; shares that sum to 1 but for a rounding error leave 0}
     *
     * @param part a liquid of the recipe
     */
    public static double staying(Recipe.Part part) {
        Ingredient liquid = part.ingredient();
        double leaving = liquid.value(Property.WATER_SHARE, 0) + liquid.value(Property.VOLATILE_SHARE, 0);
        return part.mass() * Math.max(0, 1 - leaving);
    }

    /** {@return M, all liquid, kg per kg of dry powder} */
    public double ratio() {
        return water + volatiles + staying;
    }

    /**
     * {@return the same liquid in another amount, its proportions kept; where there was none, water}
     *
     * @param ratio M, all liquid, kg per kg of dry powder, 0 or more
     */
    public Liquid withRatio(double ratio) {
        Given.notNegative("ratio", ratio);
        double now = ratio();
        if (now == 0) {
            return new Liquid(ratio, 0, 0, density, surfaceTension, alcohol, oil);
        }
        double f = ratio / now;
        return new Liquid(water * f, volatiles * f, staying * f, density, surfaceTension, alcohol, oil);
    }
}
