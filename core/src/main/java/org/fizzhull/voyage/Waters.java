package org.fizzhull.voyage;

import org.fizzhull.fizz.Gas;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.IapwsSurfaceTension;
import org.fizzhull.medium.WagnerPruss2002;

/** The bath's properties at the temperature of a draw, worked out anew only when the temperature changes. */
final class Waters {
    private final Bath bath;
    private final double depth;
    private double temperature = Double.NaN;

    /** Density, kg/m3. */
    double density;

    /** Surface tension, N/m. */
    double surfaceTension;

    /** Volume of a mole of wet gas at the depth, m3/mol. */
    double molarVolume;

    /** Looks at the bath at a depth, m. */
    Waters(Bath bath, double depth) {
        this.bath = bath;
        this.depth = depth;
    }

    /** Sets the temperature, K. */
    void at(double kelvin) {
        if (kelvin != temperature) {
            temperature = kelvin;
            density = bath.densityAt(kelvin);
            surfaceTension = IapwsSurfaceTension.surfaceTension(kelvin);
            double pressure = Gas.ATMOSPHERE + density * Gas.GRAVITY * depth;
            molarVolume = Gas.wetMolarVolume(kelvin, pressure, WagnerPruss2002.vapourPressure(kelvin));
        }
    }
}
