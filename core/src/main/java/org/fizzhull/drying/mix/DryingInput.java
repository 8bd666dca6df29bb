package org.fizzhull.drying.mix;

import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Additives;

/**
 * What drying needs to know of a pressed, damp mix. Shares are kg per kg of dry mix as weighed, so that the water a
 * powder brings along (starch, hydrates) is part of the dry mix and not of {@code freeWater}.
 *
 * <p>Made from a recipe by {@link BlendDrying}; {@link #plain} is for a mix by hand. What is uncertain about these
 * numbers is drawn before they are made; what is uncertain about drying itself stands in {@link DryingParameters}.
 * Immutable.
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
 * @param saltActivity what further salts, sugars and soluble acids leave of the film activity;
 *     1 without
 * @param hydrates water of crystallisation that comes or goes; how much of it does is the parameter's {@code
 *     hydrateShare}
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
        Hydrates hydrates,
        Additives additives) {

    /**
     * Refuses shares and densities outside the range of the drying model.
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
     * @param saltActivity what further salts, sugars and soluble acids leave of the film activity; 1
     *     without
     * @param hydrates water of crystallisation that comes or goes; how much of it does is the parameter's {@code
     *     hydrateShare}
     * @param additives what acts on the fizzing surface later; drying only hands it on to the piece
     * @throws Refusal {@code out-of-range}; of one of many draws it names the drawn value
     */
    public DryingInput {
        Given.all("alcohol, sorbents, hydrates, additives", alcohol, sorbents, hydrates, additives);
        String filled =
                "The piece would be emptier or denser than any that is pressed: check the mould, the fill and the "
                        + "error of its scale, and the densities of your own ingredients.";
        String liquids = "A mix with so much liquid is no powder that dries in one piece: check the amounts under wet.";
        within("dry mix in a volume of piece", rhoDry, 100, 4000, "kg/m3", filled);
        within("porosity", porosity, 1e-3, 0.95, "", filled);
        within("air-filled porosity", airPorosity, 1e-3, porosity, "", filled);
        within("free water per dry mix", freeWater, 0, 0.5, "kg/kg", liquids);
        within("liquid that stays per dry mix", stays, 0, 1, "kg/kg", liquids);
        within("oil per dry mix", oil, 0, stays, "kg/kg", liquids);
        within("carbon dioxide to be had", capacity, 0, 12, "mol/kg", "Check the amounts of acid and bicarbonate.");
        within(
                "water activity over the soluble salts",
                saltActivity,
                0.1,
                1,
                "",
                "Together they would turn wet in the air of any room: leave one of the salts or sugars out.");
    }

    /**
     * {@return a mix of dry powders and water alone}
     *
     * @param rhoDry mass of dry mix per volume of piece, kg/m3
     * @param porosity volume not filled by solids, 0 to 1
     * @param freeWater w0: water of the liquids
     * @param sorbents isotherm of the mix, glycerin included
     * @param capacity xi: CO2 obtainable, mol per kg of dry mix
     */
    public static DryingInput plain(
            double rhoDry, double porosity, double freeWater, SorptionMixture sorbents, double capacity) {
        double water = freeWater * rhoDry / 1000;
        return new DryingInput(
                rhoDry,
                porosity,
                porosity - water,
                freeWater,
                Alcohol.NONE,
                0,
                0,
                sorbents,
                capacity,
                false,
                1,
                Hydrates.NONE,
                Additives.NONE);
    }

    /** {@return the damp mass per mass of dry mix} */
    public double dampRatio() {
        return 1 + freeWater + alcohol.share() + stays;
    }

    /** Refuses a number outside its range, NaN included. */
    private static void within(String field, double x, double low, double high, String unit, String mend) {
        if (!(x >= low && x <= high)) {
            throw new Refusal(
                    "out-of-range",
                    field,
                    ((Double.isFinite(x) ? Decimals.text(x, 6) : x) + " " + unit).strip(),
                    (Decimals.text(low, 6) + " to " + Decimals.text(high, 6) + " " + unit).strip(),
                    mend);
        }
    }
}
