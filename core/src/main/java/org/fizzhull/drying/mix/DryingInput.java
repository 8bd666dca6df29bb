package org.fizzhull.drying.mix;

import org.fizzhull.recipe.Additives;

/**
 * What drying needs to know of a pressed, damp mix. Shares are kg per kg of dry mix as weighed, so that the water a
 * powder brings along (starch, hydrates) is part of the dry mix and not of {@code freeWater}.
 *
 * @param rhoDry mass of dry mix per volume of piece, kg/m3
 * @param porosity volume not filled by solids, 0 to 1
 * @param airPorosity eps_g: porosity less the volume of all liquids, 0.001 to porosity
 * @param freeWater w0: water of the liquids
 * @param alcohol ethanol or isopropanol of the liquids
 * @param stays oils, butters, glycerin, emulsifiers: what never dries
 * @param oil the oily part of {@code stays}
 * @param sorbents isotherm of the mix, glycerin included
 * @param capacity xi: CO2 obtainable, mol per kg of dry mix
 * @param acidLast whether the acid went in after the liquid
 * @param saltActivity product of the deliquescence humidities of further soluble salts and sugar, a lower bound;
 *     1 without
 * @param hydrate water that hydrated salts can give back in air below {@code HYDRATE_HUMIDITY}; how much of it comes is the
 *     parameter's {@code hydrateShare}
 * @param additives what acts on the fizzing surface later; drying only hands it on to the piece
 */
public record DryingInput(
        double rhoDry,
        double porosity,
        double airPorosity,
        double freeWater,
        Alcohol alcohol,
        double stays,
        double oil,
        SorptionMixture sorbents,
        double capacity,
        boolean acidLast,
        double saltActivity,
        double hydrate,
        Additives additives) {

    /**
     * Air below which epsomite becomes hexahydrite and gives water to the mix: about 51 % RH (SSHADE database [seen]).
     */
    public static final double HYDRATE_HUMIDITY = 0.51;

    /** Refuses shares and densities out of range. */
    public DryingInput {
        within("mass of dry mix per volume", rhoDry, 100, 4000);
        within("porosity", porosity, 1e-3, 0.95);
        within("air-filled porosity", airPorosity, 1e-3, porosity);
        within("free water", freeWater, 0, 0.5);
        within("liquid that stays", stays, 0, 1);
        within("oil", oil, 0, stays);
        within("fizz capacity", capacity, 0, 12);
        within("salt activity", saltActivity, 0.1, 1);
        within("hydrate water", hydrate, 0, 0.6);
    }

    /** A mix of which nothing is known that acts on its fizzing surface. */
    public DryingInput(
            double rhoDry,
            double porosity,
            double airPorosity,
            double freeWater,
            Alcohol alcohol,
            double stays,
            double oil,
            SorptionMixture sorbents,
            double capacity,
            boolean acidLast,
            double saltActivity,
            double hydrate) {
        this(
                rhoDry,
                porosity,
                airPorosity,
                freeWater,
                alcohol,
                stays,
                oil,
                sorbents,
                capacity,
                acidLast,
                saltActivity,
                hydrate,
                Additives.NONE);
    }

    /** A mix of dry powders and water alone. */
    public static DryingInput plain(
            double rhoDry, double porosity, double freeWater, SorptionMixture sorbents, double capacity) {
        double water = freeWater * rhoDry / 1000;
        return new DryingInput(
                rhoDry, porosity, porosity - water, freeWater, Alcohol.NONE, 0, 0, sorbents, capacity, false, 1, 0);
    }

    /** Damp mass per mass of dry mix. */
    public double dampRatio() {
        return 1 + freeWater + alcohol.share() + stays;
    }

    private static void within(String name, double x, double low, double high) {
        if (!(x >= low && x <= high)) {
            throw new IllegalArgumentException(name + " " + x + " is not within " + low + " to " + high);
        }
    }
}
