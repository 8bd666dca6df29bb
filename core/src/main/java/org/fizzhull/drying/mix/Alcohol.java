package org.fizzhull.drying.mix;

import org.fizzhull.evidence.PhysicalConstants;
import org.fizzhull.quantity.Refusal;

/**
 * The alcohol of a binder liquid. It leaves through the pores by its own diffusion, about ten times as fast as water,
 * and stays out of the water balance. Its activity is that of the liquid as mixed, by van Laar's equation, and kept
 * until it is gone: the last traces in a watery rest leave later than this says.
 *
 * <p>Vapour pressures: Smith, Van Ness, Introduction to Chemical Engineering Thermodynamics, table B.2 (ethanol [seen],
 * isopropanol [from memory]); van Laar constants: Perry's Handbook [from memory]; diffusivities [from memory, medium].
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
     */
    public Alcohol {
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

        private final double molarMass;
        private final double diffusivity;
        private final double a;
        private final double b;
        private final double c;
        private final double own;
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
