package org.fizzhull.validation.published;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.RoomAir;

/**
 * Mass transfer from a ball in still air by the analogy with heat: {@code Sh = 2 + 0.589 Ra^(1/4) /
 * (1 + (0.469/Sc)^(9/16))^(4/9)}, Sh and Ra on the diameter, Ra below 1e11. Churchill (1983).
 *
 * <p>Source: S. W. Churchill, free convection around immersed bodies, in Heat Exchanger Design Handbook (1983); form as
 * coded in public open-source libraries [second-hand].
 */
public final class Churchill1983 {
    private static final double DRY_AIR = 287.055;

    private Churchill1983() {}

    /**
     * {@return the Sherwood (or Nusselt) number of a ball for Rayleigh number Ra and Schmidt (or Prandtl) number Sc}
     *
     * @param rayleigh Rayleigh number on the diameter, below 1e11
     * @param schmidt Schmidt (or Prandtl) number of the air
     */
    public static double sherwood(double rayleigh, double schmidt) {
        return 2 + 0.589 * Math.sqrt(Math.sqrt(rayleigh)) / Math.pow(1 + Math.pow(0.469 / schmidt, 9.0 / 16), 4.0 / 9);
    }

    /**
     * {@return the mass transfer coefficient h_m of a ball at the temperature of the still air around it, m/s}
     *
     * @param diameter m
     * @param air the air of the room
     * @param skinActivity water activity at the skin, 0 to 1
     */
    public static double still(double diameter, RoomAir air, double skinActivity) {
        double kelvin = air.temperature();
        double far = density(air, air.humidity());
        double near = density(air, skinActivity);
        double mean = 0.5 * (far + near);
        double nu = viscosity(kelvin) / mean;
        double diffusivity = air.diffusivity();
        double schmidt = nu / diffusivity;
        double grashof =
                PhysicalConstants.GRAVITY * diameter * diameter * diameter * Math.abs(near - far) / (mean * nu * nu);
        return sherwood(grashof * schmidt, schmidt) * diffusivity / diameter;
    }

    /** Dynamic viscosity of air, Pa s: Sutherland's law as coded in public open-source libraries [second-hand]. */
    static double viscosity(double kelvin) {
        return 1.458e-6 * Math.pow(kelvin, 1.5) / (kelvin + 110.4);
    }

    private static double density(RoomAir air, double humidity) {
        double e = humidity * air.saturationPressure();
        double t = air.temperature();
        return (air.pressure() - e) / (DRY_AIR * t) + e / (RoomAir.VAPOUR_GAS_CONSTANT * t);
    }
}
