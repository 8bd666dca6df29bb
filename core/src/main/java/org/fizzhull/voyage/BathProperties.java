package org.fizzhull.voyage;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.fizz.Gas;
import org.fizzhull.fizz.Plume;
import org.fizzhull.fizz.WetSkin;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.relation.IapwsSurfaceTension;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.medium.relation.WagnerPruss2002;

/**
 * Properties of the bath at the temperature of a draw: density, viscosity, surface tension and vapour pressure, and
 * what follows from them: molar volume of wet gas at the depth of the piece, drift velocity of a plume, capillary pull
 * of the pores. All SI.
 *
 * <p>Worked out anew only when the temperature changes, since the relations behind them cost more than a step of a
 * voyage. Ranges and sources: docs/physics/fizz.md, 2. Mutable; one instance serves one thread.
 */
final class BathProperties {
    /** The bath: its water, salt and depth. */
    private final Bath bath;
    /**
     * Depth under the surface at which {@link #molarVolume} is taken, m: that of the centre of a piece just under it.
     */
    private final double depth;
    /** Temperature of the last call, K; NaN before the first. */
    private double temperature = Double.NaN;
    /** Vapour pressure of water at it, Pa. */
    private double vapourPressure;

    /** Density, kg/m3. */
    double density;

    /** Drift velocity of a plume of bubbles, m/s. */
    double driftVelocity;

    /** Pull of the pores over what slows the water, sigma/mu, over that at 38 C; no unit. */
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
