package org.fizzhull.recipe;

import java.util.List;

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
 * @param volatileMolarMass mean molar mass of the alcohols, kg/mol; 0 where there is none
 * @param oil share of the liquid's mass that stays, 0 to 1, taken as oil where grains soak up liquid: 1 for oils, 0 for water
 */
public record Liquid(
        double water,
        double volatiles,
        double staying,
        double density,
        double surfaceTension,
        double volatileMolarMass,
        double oil) {
    /** Density of water at 20 C, kg/m3 (from memory). */
    private static final double WATER_DENSITY = 998.2;

    /** Surface tension of water at 20 C, N/m (from memory). */
    private static final double WATER_TENSION = 0.0728;
    /** Surface tension of a liquid whose own is not known, N/m: that of a plant oil (from memory). */
    private static final double OIL_TENSION = 0.033;
    /** Molar mass of an alcohol whose own is not known, kg/mol: ethanol. */
    private static final double ETHANOL_MOLAR_MASS = 0.04607;

    /**
     * {@return the liquid of a mix, all parts taken together}
     *
     * @param wet liquids and melted fats, kg
     * @param dryMass mass of the powders, kg, above 0
     */
    static Liquid of(List<Part> wet, double dryMass) {
        double mass = 0;
        double volume = 0;
        double water = 0;
        double volatiles = 0;
        double staying = 0;
        double vapourMoles = 0;
        double tension = 0;
        for (Part part : wet) {
            Ingredient liquid = part.ingredient();
            double v = part.mass() / liquid.value(Property.LIQUID_DENSITY);
            mass += part.mass();
            volume += v;
            water += part.mass() * liquid.value(Property.WATER_SHARE, 0);
            volatiles += part.mass() * liquid.value(Property.VOLATILE_SHARE, 0);
            // shares that sum to 1 may do so but for a rounding error; an ingredient with more is refused when it is
            // built
            staying += part.mass()
                    * Math.max(0, 1 - liquid.value(Property.WATER_SHARE, 0) - liquid.value(Property.VOLATILE_SHARE, 0));
            vapourMoles += part.mass()
                    * liquid.value(Property.VOLATILE_SHARE, 0)
                    / liquid.value(Property.VOLATILE_MOLAR_MASS, ETHANOL_MOLAR_MASS);
            tension += v * liquid.value(Property.SURFACE_TENSION, OIL_TENSION);
        }
        if (mass == 0) {
            return new Liquid(0, 0, 0, WATER_DENSITY, WATER_TENSION, 0, 0);
        }
        return new Liquid(
                water / dryMass,
                volatiles / dryMass,
                staying / dryMass,
                mass / volume,
                tension / volume,
                vapourMoles == 0 ? 0 : volatiles / vapourMoles,
                staying / mass);
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
        double now = ratio();
        if (now == 0) {
            return new Liquid(ratio, 0, 0, density, surfaceTension, volatileMolarMass, oil);
        }
        double f = ratio / now;
        return new Liquid(water * f, volatiles * f, staying * f, density, surfaceTension, volatileMolarMass, oil);
    }
}
