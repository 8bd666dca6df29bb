package org.fizzhull.forecast;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.Gas;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;

/**
 * Whether the gas of a piece can keep water out of its pores: gas volume that wetted powder makes over the pore volume
 * that the water enters ({@link Gas#perEnteringWater}, no unit). A check that {@link Forecast} and {@link FizzForecast}
 * print, by the central values at the pressure just under the surface; no model uses it. Above 1 the gas outweighs the
 * water.
 */
final class EnteringWater {
    private EnteringWater() {}

    /** The ratio for a piece in a bath, no unit. */
    static double gas(Bath bath, Piece piece) {
        double molar = Gas.wetMolarVolume(bath.temperature(), PhysicalConstants.ATMOSPHERE, bath.vapourPressure());
        return Gas.perEnteringWater(piece.density(), piece.makeup().gasCapacity(), molar, piece.porosity());
    }
}
