package org.fizzhull.pressing.powder;

import org.fizzhull.recipe.Liquid;

/**
 * Solid fraction of a damp mix under a mean pressure, and the pressure of a solid fraction (docs/physics/packing.md, 4 and
 * 5). In this order: packing model, damp bulking, spring-back; the cap where the liquid fills all pores, {@link #cap}, is
 * put on by {@link Press}.
 *
 * <pre>  phi = phi_model [1 - B b(S)/(1 + P/Pb)],   b(S) = min(1, S/0.02) max(0, 1 - S/Sc)</pre>
 *
 * <pre>  1/phi_out = 1/phi + kappa ln(P/1 kPa),   phi_out at most 1/(1 + M rho_s/rho_l)</pre>
 *
 * <p>phi solid fraction, P mean pressure (Pa), B bulking (0.25 +- 0.08, assumed), Pb its pressure (20 kPa within a
 * factor 2, assumed), S saturation as pressed, before spring-back, Sc that at which pores fill (0.80 +- 0.05), kappa spring-back (0.002 to 0.012), M liquid per powder
 * (kg/kg), rho_s and rho_l densities of powder and liquid (kg/m3). Range: 0 to 2 MPa. Error: 0.015 on phi for the packing
 * model alone. Immutable.
 */
final class DampPacking {
    /**
     * Saturation at which bridges are complete (steep rise to 2 % moisture: Lanzerstorfer 2019,
     * docs/physics/packing.md, 5).
     */
    static final double COMPLETE_BRIDGES = 0.02;

    /** Pressure below which nothing springs back, Pa: 1 kPa, left when the plunger is taken off (docs/physics/packing.md, 5). */
    private static final double RELEASED = 1e3;

    /** Highest pressure, Pa: no hand or kitchen press goes beyond, and the law of pressure is not meant for it. */
    static final double MOST_PRESSURE = 2e6;

    private final PressingParameters parameters;
    private final Powders powders;
    private final DeLarrard1999 model = new DeLarrard1999();
    /** Volume of liquid over volume of solids, M rho_s/rho_l. */
    private final double volumeRatio;

    DampPacking(PressingParameters parameters, Powders powders, Liquid liquid) {
        this.parameters = parameters;
        this.powders = powders;
        this.volumeRatio = liquid.ratio() * powders.trueDensity() / liquid.density();
    }

    /** {@return phi after bulking and spring-back at a mean pressure, Pa} */
    double solidFraction(double meanPressure) {
        return damp(dry(meanPressure), meanPressure);
    }

    /**
     * {@return phi of the same powders without bulking and spring-back, at a mean pressure, Pa: the part that the amount of
     * liquid does not change}
     */
    double dry(double meanPressure) {
        return dry(model, meanPressure);
    }

    /** {@return phi after bulking and spring-back, from that of {@link #dry} at the same mean pressure, Pa} */
    double damp(double dry, double meanPressure) {
        return sprung(bulked(dry, meanPressure), meanPressure);
    }

    /** {@return phi after bulking and spring-back, by another packing model} */
    double solidFraction(PackingModel other, double meanPressure) {
        return damp(dry(other, meanPressure), meanPressure);
    }

    private double dry(PackingModel packing, double meanPressure) {
        return packing.solidFraction(powders, meanPressure / parameters.pressScale()) + parameters.packingError();
    }

    /** {@return S, volume of liquid over volume of pores; above 1 where the liquid does not fit, 0 without any} */
    double saturation(double solidFraction) {
        return volumeRatio > 0 ? volumeRatio * solidFraction / (1 - solidFraction) : 0;
    }

    /** {@return the largest phi that leaves room for the liquid: every pore full} */
    double cap() {
        return 1 / (1 + volumeRatio);
    }

    /**
     * {@return the mean pressure that gives phi, Pa; 0 where it is as loose as poured or looser; NaN where none up to 2 MPa
     * does}
     */
    double pressureOf(double solidFraction) {
        return pressureOf(solidFraction, 1e-13);
    }

    /** {@return the same, to an accuracy in ln(1 + P/1 kPa), relative} */
    double pressureOf(double solidFraction, double accuracy) {
        double low = 0;
        double high = MOST_PRESSURE;
        if (solidFraction <= solidFraction(low)) {
            return 0;
        }
        if (solidFraction > solidFraction(high)) {
            return Double.NaN;
        }
        // bisect on log(1 + P/1 kPa): the answer may be 1 kPa or 1 MPa; the squeeze it would take is a closed form
        double[] dominant = DeLarrard1999.inverseVirtual(powders);
        double a = 0;
        double b = Math.log1p(high / RELEASED);
        while (b - a > accuracy * (1 + b)) {
            double middle = 0.5 * (a + b);
            double pressure = RELEASED * Math.expm1(middle);
            double index = model.indexOf(powders, dominant, modelFraction(solidFraction, pressure));
            if (index > powders.indexAt(pressure / parameters.pressScale())) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return RELEASED * Math.expm1(0.5 * (a + b));
    }

    /** {@return the packing model's phi behind a phi after bulking and spring-back, at a known mean pressure, Pa} */
    double modelFraction(double solidFraction, double meanPressure) {
        double pressed = 1 / (1 / solidFraction - rebound(meanPressure));
        return pressed / loosening(pressed, meanPressure) - parameters.packingError();
    }

    /**
     * phi of the damp powder under pressure. Its own saturation decides how far it bulks: fixed-point iteration, which
     * converges since bulking changes slowly with phi.
     */
    private double bulked(double packed, double meanPressure) {
        double phi = packed;
        for (int i = 0; i < 60; i++) {
            double next = packed * loosening(phi, meanPressure);
            double move = Math.abs(next - phi);
            phi = next;
            if (move < 1e-15) {
                break;
            }
        }
        return phi;
    }

    /** 1 - B b(S)/(1 + P/Pb), the factor of damp bulking at a saturation that belongs to phi. */
    private double loosening(double phi, double meanPressure) {
        double s = saturation(phi);
        double bridges = Math.min(1, s / COMPLETE_BRIDGES) * Math.max(0, 1 - s / parameters.capillaryLimit());
        return 1 - parameters.bulking() * bridges / (1 + meanPressure / parameters.bulkingPressure());
    }

    /** phi after the plunger is taken off. */
    private double sprung(double phi, double meanPressure) {
        return 1 / (1 / phi + rebound(meanPressure));
    }

    /** kappa ln(P/1 kPa), growth of 1/phi as the pressure goes; 0 below 1 kPa. */
    private double rebound(double meanPressure) {
        return meanPressure > RELEASED ? parameters.springBack() * Math.log(meanPressure / RELEASED) : 0;
    }
}
