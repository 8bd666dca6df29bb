package org.fizzhull.forecast.making;

import org.fizzhull.forecast.prior.Draw;
import org.fizzhull.forecast.prior.MakingDraw;
import org.fizzhull.recipe.Blend;

/**
 * Fills or presses the mould of one draw: gives the solid fraction, before any drying. May keep scratch space: one
 * packing serves one thread.
 */
public interface Packing {
    /**
     * {@return how densely the dry powders of a draw lie in the mould}
     *
     * @param draw one draw of everything uncertain
     * @param volumeRatio true volume of the mould over the entered one
     */
    Packed of(Draw draw, double volumeRatio);

    /**
     * Powders in a mould, as the drying takes them.
     *
     * @param solidFraction volume of the grains per volume of the piece, 0 to 1
     * @param trueDensity of the grains, kg/m3
     * @param blend powders and liquid of the draw, with its amounts
     * @param making uncertain values of the draw before the bath
     */
    record Packed(double solidFraction, double trueDensity, Blend blend, MakingDraw making) {}
}
