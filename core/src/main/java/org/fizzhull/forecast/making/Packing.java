package org.fizzhull.forecast.making;

import org.fizzhull.forecast.prior.Draw;
import org.fizzhull.forecast.prior.MakingDraw;
import org.fizzhull.recipe.Blend;

/** Fills or presses the mould of one draw. One packing serves one thread. */
public interface Packing {
    /**
     * {@return how densely the dry powders of a draw lie in the mould}
     *
     * @param draw one draw of everything uncertain
     * @param volumeRatio true volume of the mould over the entered one
     */
    Packed of(Draw draw, double volumeRatio);

    /**
     * Powders in a mould.
     *
     * @param solidFraction volume of the grains per volume of the piece
     * @param trueDensity of the grains, kg/m3
     * @param blend of the draw
     * @param making the draw it belongs to
     */
    record Packed(double solidFraction, double trueDensity, Blend blend, MakingDraw making) {}
}
