package org.fizzhull.validation.published;

/**
 * How easily water gets into a bed of grains: {@code K = eps^3 d^2/(180 (1 - eps)^2)}, and by what a wick pulls it in.
 * A body that did not react would soak through within 0.1 to 10 s; gas that needs a ten-thousandth of the fizz stops
 * it, which is why a piece that fizzes recedes from its surface. Uncertain by a factor of 3.
 *
 * <p>Source: Permeability after Kozeny and Carman, wicking after Washburn: textbooks [from memory].
 *
 * <p>eps porosity, d grain diameter (m), K permeability (m2). Range: packed beds of grains of one size, slow flow.
 * Serves as a check of the wet skin; no forecast calls it. Stateless.
 */
public final class KozenyCarman {
    private KozenyCarman() {}

    /**
     * {@return the permeability, m2, of a bed of a porosity (0 to 1) of grains of a size, m}
     *
     * @param porosity volume of pores over the volume of the body, 0 to 1
     * @param grain diameter of the grains, m
     */
    public static double permeability(double porosity, double grain) {
        double solid = 1 - porosity;
        return porosity * porosity * porosity * grain * grain / (180 * solid * solid);
    }

    /**
     * {@return the hydraulic radius of its pores, m}
     *
     * @param porosity volume of pores over the volume of the body, 0 to 1
     * @param grain diameter of the grains, m
     */
    public static double poreRadius(double porosity, double grain) {
        return porosity * grain / (3 * (1 - porosity));
    }

    /**
     * {@return the pressure that pulls water into pores of a radius, m, in Pa; surface tension in N/m, contact angle in
     * degrees}
     *
     * @param radius hydraulic radius of the pores, m
     * @param surfaceTension surface tension of the liquid, N/m
     * @param contactAngle contact angle of water on the grains, degrees
     */
    public static double capillaryPressure(double radius, double surfaceTension, double contactAngle) {
        return 2 * surfaceTension * Math.cos(Math.toRadians(contactAngle)) / radius;
    }

    /**
     * {@return the time in which water gets a way in, s, by Darcy's law under the pull of the pores}
     *
     * @param way m
     * @param permeability m2
     * @param pull Pa
     * @param porosity 0 to 1
     * @param viscosity dynamic, Pa s
     */
    public static double soakingTime(double way, double permeability, double pull, double porosity, double viscosity) {
        return way * way * porosity * viscosity / (2 * permeability * pull);
    }
}
