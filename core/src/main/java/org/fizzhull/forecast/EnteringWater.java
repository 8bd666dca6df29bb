package org.fizzhull.forecast;

import org.fizzhull.evidence.PhysicalConstants;
import org.fizzhull.fizz.Gas;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;

/** Whether the gas of a piece can keep water out of its pores: the check that a forecast prints. */
final class EnteringWater {
    private EnteringWater() {}

    static double gas(Bath bath, Piece piece) {
        double molar = Gas.wetMolarVolume(bath.temperature(), PhysicalConstants.ATMOSPHERE, bath.vapourPressure());
        return Gas.perEnteringWater(piece.density(), piece.makeup().gasCapacity(), molar, piece.porosity());
    }
}
