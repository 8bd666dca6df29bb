package org.fizzhull.drying.mix;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;

/**
 * The alcohol of a binder liquid. It leaves through the pores by its own diffusion, about ten times as fast as water,
 * and stays out of the water balance. Its activity is that of the liquid as mixed, by van Laar's equation, and kept
 * until it is gone: the last traces in a watery rest leave later than this says.
 *
 * <p>Vapour pressures: Smith, Van Ness, Introduction to Chemical Engineering Thermodynamics, table B.2 (ethanol [seen],
 * isopropanol [from memory]); van Laar constants: Perry's Handbook [from memory]; diffusivities [from memory, medium].
 *
 * <p>With x the mole fraction of the alcohol in its mixture with the free water, A and B van Laar's constants, p_0 the
 * vapour pressure of the pure alcohol (Pa) and M its molar mass (kg/mol), activity and vapour density over the liquid
 * are
 *
 * <pre>
 *   a = x exp(A (B (1 - x)/(A x + B (1 - x)))^2)
 *   rho_v = a p_0 M/(R T),   p_0 = 1000 exp(a' - b'/(t + c'))   (Antoine, t in C)
 * </pre>
 *
 * <p>Its vapour burns: {@code CourseNotices} warns of it. Immutable.
 *
 * @param kind which alcohol
 * @param share kg per kg of dry mix
 */
public record Alcohol(Kind kind, double share) {
    /** No alcohol. */
    public static final Alcohol NONE = new Alcohol(Kind.ETHANOL, 0);

    /**
     * Refuses shares out of range.
     *
     * @param kind which alcohol
     * @param share kg per kg of dry mix
     * @throws Refusal {@code out-of-range}
     */
    public Alcohol {
        Given.all("kind", kind);
        if (!(share >= 0 && share <= 0.5)) {
            throw new Refusal(
                    "out-of-range",
                    "alcohol per dry mix",
                    share + " kg/kg",
                    "0 to 0.5 kg/kg",
                    "A mix with so much liquid is no powder that dries in one piece: check the amounts under wet.");
        }
    }

    /**
     * {@return the vapour density over this liquid with {@code freeWater} (kg/kg dry) mixed in, kg/m3, at a temperature
     * in K}
     *
     * @param freeWater free water of the mix, kg per kg of dry mix
     * @param kelvin temperature, K
     */
    public double vapourDensity(double freeWater, double kelvin) {
        return activity(freeWater)
                * kind.vapourPressure(kelvin)
                * kind.molarMass
                / (PhysicalConstants.GAS_CONSTANT * kelvin);
    }

    /**
     * {@return the activity of the alcohol in its mixture with {@code freeWater}, kg/kg dry}
     *
     * @param freeWater free water of the mix, kg per kg of dry mix
     */
    public double activity(double freeWater) {
        double moles = share / kind.molarMass;
        double x = moles / (moles + freeWater / PhysicalConstants.WATER_MOLAR_MASS);
        double ratio = kind.other * (1 - x) / (kind.own * x + kind.other * (1 - x));
        return x * Math.exp(kind.own * ratio * ratio);
    }

    /**
     * {@return the diffusivity in air, m2/s: the 25 C value with Massman's exponent}
     *
     * @param kelvin temperature, K
     */
    public double diffusivity(double kelvin) {
        return kind.diffusivity * Math.pow(kelvin / 298.15, 1.81);
    }

    /** Kinds of alcohol. */
    public enum Kind {
        /** Ethanol. */
        ETHANOL(0.046069, 1.2e-5, 16.8958, 3795.17, 230.918, 1.6798, 0.9227),
        /** 2-propanol. */
        ISOPROPANOL(0.060096, 1.0e-5, 16.6796, 3640.20, 219.610, 2.4702, 1.0938);

        /** Molar mass, kg/mol. */
        private final double molarMass;
        /** Diffusivity of the vapour in air at 25 C, m2/s. */
        private final double diffusivity;
        /** Antoine's constant a', of ln p in kPa. */
        private final double a;
        /** Antoine's constant b', K. */
        private final double b;
        /** Antoine's constant c', K, beside a temperature in C. */
        private final double c;
        /** Van Laar's constant A, of the alcohol in water. */
        private final double own;
        /** Van Laar's constant B, of water in the alcohol. */
        private final double other;

        Kind(double molarMass, double diffusivity, double a, double b, double c, double own, double other) {
            this.molarMass = molarMass;
            this.diffusivity = diffusivity;
            this.a = a;
            this.b = b;
            this.c = c;
            this.own = own;
            this.other = other;
        }

        /**
         * {@return the vapour pressure of the pure alcohol, Pa; 3 to 96 C}
         *
         * @param kelvin temperature, K
         */
        public double vapourPressure(double kelvin) {
            return 1000 * Math.exp(a - b / (kelvin - 273.15 + c));
        }
    }
}
