package org.fizzhull.voyage;

import org.fizzhull.evidence.PhysicalConstants;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.WetSkin;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.IapwsSurfaceTension;
import org.fizzhull.medium.Patek2009Viscosity;
import org.fizzhull.medium.WagnerPruss2002;

/**
 * Properties of the bath at the temperature of a draw, worked out anew only when the temperature changes. Not
 * thread-safe.
 *
 * <p>Density, viscosity, surface tension and vapour pressure of the bath and what follows from them: molar volume of
 * wet gas at the depth of the piece, drift velocity of bubbles, pull of the pores. All SI.
 */
final class BathProperties {
    private final Bath bath;
    private final double depth;
    private double temperature = Double.NaN;
    private double vapourPressure;

    /** Density, kg/m3. */
    double density;

    /** Drift velocity of a plume of bubbles, m/s. */
    double driftVelocity;

    /** Pull of pores over viscosity, over that at 38 C. */
    double wicking;

    /** Volume of a mole of wet gas at the depth, m3/mol. */
    double molarVolume;

    /** Looks at the bath at a depth, m. */
    BathProperties(Bath bath, double depth) {
        this.bath = bath;
        this.depth = depth;
    }

    /** Sets the temperature, K. */
    void at(double kelvin) {
        if (kelvin != temperature) {
            temperature = kelvin;
            density = bath.densityAt(kelvin);
            driftVelocity = Plume.driftVelocity(IapwsSurfaceTension.surfaceTension(kelvin), density);
            vapourPressure = WagnerPruss2002.vapourPressure(kelvin);
            molarVolume = molarVolume(depth);
            wicking = WetSkin.wicking(kelvin);
        }
    }

    /** The temperature, K. */
    double temperature() {
        return temperature;
    }

    /** Volume of a mole of wet gas at another depth, m, m3/mol. */
    double molarVolume(double metres) {
        return Gas.wetMolarVolume(temperature, pressure(metres), vapourPressure);
    }

    /** Pressure at a depth, m, in Pa. */
    double pressure(double metres) {
        return PhysicalConstants.ATMOSPHERE + density * PhysicalConstants.GRAVITY * metres;
    }

    /** Volume of trapped air at a depth, m, over its volume at the surface (Boyle). */
    double squeeze(double metres) {
        return PhysicalConstants.ATMOSPHERE / pressure(metres);
    }

    /** Depth of the bath, m. */
    double bathDepth() {
        return bath.depth();
    }

    /** Kinematic viscosity, m2/s. */
    double kinematicViscosity() {
        return Patek2009Viscosity.viscosity(temperature) / density;
    }
}
