package org.fizzhull.drying.mix;

import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Liquid;
import org.fizzhull.recipe.Substance;

/**
 * Fills {@link DryingInput} from a recipe's blend and the packing of the pressed piece: adds up the sorbents of powders
 * and liquids; the alcohol of the liquids is the one of which there is more. Another liquid ratio than the recipe's scales all liquids alike. Used by {@code forecast} for every draw. Stateless.
 */
public final class BlendDrying {
    private BlendDrying() {}

    /**
     * {@return the drying input of a pressed blend}
     *
     * @param blend the recipe's blend
     * @param rhoDry dry mix per volume of piece, kg/m3
     * @param porosity volume not filled by solids
     * @param airPorosity porosity less the volume of the liquid, 0.001 or more: a piece without open pores is outside
     *     this model
     * @param liquidRatio all liquid per dry mix, kg/kg
     */
    public static DryingInput of(Blend blend, double rhoDry, double porosity, double airPorosity, double liquidRatio) {
        Liquid own = blend.liquid();
        Liquid liquid = own.withRatio(liquidRatio);
        double scale = own.ratio() > 0 ? liquidRatio / own.ratio() : 1;
        double oil = Math.min(liquid.staying(), scale * blend.oil());
        return new DryingInput(
                rhoDry,
                porosity,
                airPorosity,
                liquid.water(),
                alcohol(liquid),
                liquid.staying(),
                oil,
                SorptionMixture.of(blend.recipe(), scale),
                blend.moles().gas(),
                blend.recipe().acidLast(),
                blend.saltActivity(),
                new Hydrates(blend.hydrateWater(), blend.hydrateUptake()),
                Additives.of(blend));
    }

    /** The alcohol of a liquid; none where nothing is volatile. */
    private static Alcohol alcohol(Liquid liquid) {
        if (liquid.volatiles() == 0) {
            return Alcohol.NONE;
        }
        boolean isopropanol = liquid.alcohol() == Substance.ISOPROPANOL;
        return new Alcohol(isopropanol ? Alcohol.Kind.ISOPROPANOL : Alcohol.Kind.ETHANOL, liquid.volatiles());
    }
}
