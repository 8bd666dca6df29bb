package org.fizzhull.pressing.powder;

/**
 * Tensile strength of damp powder, Pa: liquid bridges after Rumpf (1962) with the real bridge form, 2.8 in place of pi;
 * filled pores; between the two limits of saturation a straight blend after Schubert (all from memory,
 * docs/physics/packing.md, 7).
 *
 * <pre>  pendular: 2.8 (1 - eps)/eps gamma/d,   filled pores: 6 S (1 - eps)/eps gamma/d</pre>
 *
 * <p>eps porosity, gamma surface tension of the liquid (N/m), d surface mean diameter of the grains (m), S saturation.
 * Ideal strengths: rough grains reach about 0.4 of them (assumed), which the caller puts in. Range: saturations from
 * complete bridges, 0.02, to full pores. Error: a factor 1.8 of that share (assumed); not checked against measured
 * pieces.
 */
public final class WetStrength {
    /** Factor of pendular bridges of their real form; pi for ideal ones (from memory). */
    private static final double REAL_BRIDGE = 2.8;
    /** Factor of the capillary pull in filled pores (from memory). */
    private static final double FILLED = 6;

    private WetStrength() {}

    /**
     * {@return the unconfined compressive strength of a Mohr-Coulomb powder, Pa: sigma_u = 2 c cos(phi)/(1 - sin(phi))
     * with cohesion c = sigma_t tan(phi), so sigma_u = 2 sigma_t (1 - K)/K with K = 1 - sin(phi) (Jaky's lateral
     * ratio); 2.7 sigma_t at K = 0.43} A piece stands by itself where that exceeds the stress at its foot, rho g h. The
     * relation of c and sigma_t is a straight line of failure taken as far as the tension side (from memory; real lines
     * bend).
     *
     * @param tensile sigma_t, Pa
     * @param lateralRatio K, between 0 and 1
     */
    public static double unconfined(double tensile, double lateralRatio) {
        return tensile == 0 ? 0 : 2 * tensile * (1 - lateralRatio) / lateralRatio;
    }

    /**
     * {@return the ideal tensile strength of complete bridges, Pa}
     *
     * @param porosity eps, volume of pores over the volume of the body, 0 to 1
     * @param surfaceTension gamma, N/m
     * @param diameter surface mean diameter of the grains, m
     */
    public static double pendular(double porosity, double surfaceTension, double diameter) {
        return REAL_BRIDGE * (1 - porosity) / porosity * surfaceTension / diameter;
    }

    /**
     * {@return the ideal tensile strength of filled pores, Pa}
     *
     * @param saturation S, share of the pores that liquid fills, 0 to 1
     * @param porosity eps, volume of pores over the volume of the body, 0 to 1
     * @param surfaceTension gamma, N/m
     * @param diameter surface mean diameter of the grains, m
     */
    public static double capillary(double saturation, double porosity, double surfaceTension, double diameter) {
        return FILLED * saturation * (1 - porosity) / porosity * surfaceTension / diameter;
    }

    /**
     * {@return the ideal tensile strength at any saturation from complete bridges to full pores, Pa}
     *
     * @param saturation S, share of the pores that liquid fills, 0 to 1
     * @param porosity eps, volume of pores over the volume of the body, 0 to 1
     * @param surfaceTension gamma, N/m
     * @param diameter surface mean diameter of the grains, m
     * @param pendularLimit saturation where bridges merge
     * @param capillaryLimit saturation where pores are filled, above {@code pendularLimit}
     */
    public static double at(
            double saturation,
            double porosity,
            double surfaceTension,
            double diameter,
            double pendularLimit,
            double capillaryLimit) {
        double bridges = pendular(porosity, surfaceTension, diameter);
        if (saturation <= pendularLimit) {
            return bridges;
        }
        if (saturation >= capillaryLimit) {
            return capillary(saturation, porosity, surfaceTension, diameter);
        }
        double t = (saturation - pendularLimit) / (capillaryLimit - pendularLimit);
        return bridges * (1 - t) + capillary(saturation, porosity, surfaceTension, diameter) * t;
    }
}
