package org.fizzhull.fizz;

import org.fizzhull.medium.relation.IapwsSurfaceTension;
import org.fizzhull.medium.relation.Patek2009Viscosity;

/**
 * Water in the pores behind the face that fizzes away. Three things set how deep it stands: the pores pull it in, the
 * front eats what is wet, and the gas that wetted powder gives off leaves against it. Where they balance,
 *
 * <pre>  delta = D/(u + eps v),   D = K p_c/mu  (Darcy's law under the pull of the pores)</pre>
 *
 * <p>delta depth (m), u gas given off per area and time (m/s), v speed of the front (m/s), eps porosity, K permeability
 * of pores that gas and water share (m2), p_c capillary pressure (Pa), mu viscosity (Pa s). Before that the skin grows
 * as in a body that does not fizz, {@code delta = sqrt(2 D t/eps)} (Washburn), and both ends are joined by
 * {@code delta sqrt(1 - exp(-t/tau))}, {@code tau = eps delta/(2 (u + eps v))}. A fresh piece is there within
 * hundredths of a second; one that has lost its fizz soaks through in minutes by the same law, and one without any gas
 * as fast as it would outside a bath of bubbles.
 *
 * <p>The one uncertain parameter is the depth at {@link #REFERENCE_FLUX}, 38 C and porosity 0.48, from there carried on
 * by {@code D ~ (sigma/mu) eps^2/(1 - eps)} (Kozeny and Carman). Tapped lactose powder draws water at 4 mm/s^(1/2)
 * (Kiesvaara and Yliruusi, Int. J. Pharm. 92 (1993) 81, abstract): D = 5e-6 m2/s at 38 C, 0.5 mm at that flux were the
 * pores the water's alone. Shared with gas they let through 0.1 to 1 of that [assumed]: 0.05 to 0.5 mm, centre 0.15.
 * Nobody has measured it. Left out: oil that sheds water, powder that swells, air that stays trapped.
 */
public final class WetSkin {
    /** Gas and front together at which the depth of the parameters holds, m/s: the usual mix, 38 C, porosity 0.48. */
    public static final double REFERENCE_FLUX = 0.010;

    /** Porosity at which it holds. */
    public static final double REFERENCE_POROSITY = 0.48;

    /**
     * Time added to that since the body went in, s: the gas layer fills within a second, and so does the first of the pores
     * (assumed).
     */
    public static final double ENTRY = 1;

    /** Share of the pores that fills at last: the rest is trapped air (assumed). */
    private static final double FULL = 0.9;

    /** Time constants after which the depth is the steady one to the last bit of a double. */
    private static final double FILLED = 30;

    /** sigma/mu at 38 C, m/s. */
    private static final double REFERENCE_WICKING = wickingSpeed(Recession.REFERENCE_TEMPERATURE);

    private WetSkin() {}

    /**
     * {@return sigma/mu, the pull of the pores over what slows the water, over that at 38 C}
     *
     * @param kelvin temperature of the water, K
     */
    public static double wicking(double kelvin) {
        return wickingSpeed(kelvin) / REFERENCE_WICKING;
    }

    /** Surface tension over viscosity of water, m/s. */
    private static double wickingSpeed(double kelvin) {
        return IapwsSurfaceTension.surfaceTension(kelvin) / Patek2009Viscosity.viscosity(kelvin);
    }

    /**
     * {@return delta, the depth at which pull, front and gas balance, m}
     *
     * @param reference depth at {@link #REFERENCE_FLUX}, 38 C and porosity 0.48, m
     * @param wicking of {@link #wicking}
     * @param porosity eps, 0 to below 1
     * @param flux u + eps v, gas given off and pore space eaten per area and time, m/s, above 0
     */
    public static double steadyDepth(double reference, double wicking, double porosity, double flux) {
        return reference * wicking * openness(porosity) / openness(REFERENCE_POROSITY) * REFERENCE_FLUX / flux;
    }

    /** eps^2/(1 - eps): permeability times capillary pressure by Kozeny and Carman, but for the grain size. */
    private static double openness(double porosity) {
        return porosity * porosity / (1 - porosity);
    }

    /**
     * {@return tau, the time constant with which the depth comes to the steady one, s}
     *
     * @param steadyDepth delta of {@link #steadyDepth}, m
     * @param porosity eps, 0 to below 1
     * @param flux u + eps v, as for {@link #steadyDepth}, m/s
     */
    public static double fillingTime(double steadyDepth, double porosity, double flux) {
        return porosity * steadyDepth / (2 * flux);
    }

    /**
     * {@return the depth of the wet pores, m}
     *
     * @param steadyDepth delta of {@link #steadyDepth}, m
     * @param fillingTime tau of {@link #fillingTime}, s
     * @param time time since the body went in, s
     */
    public static double depth(double steadyDepth, double fillingTime, double time) {
        double late = time + ENTRY;
        return late > FILLED * fillingTime ? steadyDepth : steadyDepth * Math.sqrt(-Math.expm1(-late / fillingTime));
    }

    /**
     * {@return the volume of the body whose pores are full, m3: the outer shell of a ball of this area and volume, nine tenths
     * of the body at most}
     *
     * @param depth depth of the wet pores, m
     * @param area wet area, m2
     * @param body volume of the body, m3
     */
    public static double volume(double depth, double area, double body) {
        double most = FULL * body;
        double core = 1 - depth * area / (3 * most);
        return core > 0 ? most * (1 - core * core * core) : most;
    }
}
