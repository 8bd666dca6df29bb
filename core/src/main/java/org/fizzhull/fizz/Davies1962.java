package org.fizzhull.fizz;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Activity coefficients of ions: Davies (1962), {@code lg g = -A z^2 [sqrt(I)/(1 + sqrt(I)) - 0.3 I]}, with the
 * Debye-Hueckel slope A = 1.82483e6 sqrt(rho)/(eps T)^1.5. Ionic strength up to 0.5 mol/kg; a bath has 0.007 to 0.04.
 *
 * <p>Source: C. W. Davies, Ion Association, Butterworths, London (1962) [from memory].
 */
public final class Davies1962 {
    /** Ionic strength, mol/kg. */
    public static final ValidityRange VALIDITY =
            ValidityRange.of("Ion activities by Davies (1962): ionic strength", 0, 0.5, "mol/kg", 1);

    /** Growth of the lg of the coefficient of a molecule without charge, kg/mol; a convention (second-hand). */
    private static final double NEUTRAL = 0.1;

    private Davies1962() {}

    /**
     * {@return the Debye-Hueckel slope A, (kg/mol)^(1/2)}
     *
     * @param kelvin temperature, K
     * @param waterDensity kg/m3
     */
    public static double slope(double kelvin, double waterDensity) {
        double scale = MalmbergMaryott1956.permittivity(kelvin) * kelvin;
        return 1.82483e6 * Math.sqrt(waterDensity / 1000) / (scale * Math.sqrt(scale));
    }

    /**
     * {@return the lg of the activity coefficient}
     *
     * @param slope of {@link #slope}
     * @param charge of the ion; 0 for a molecule
     * @param ionicStrength mol/kg
     */
    public static double lgCoefficient(double slope, int charge, double ionicStrength) {
        if (charge == 0) {
            return NEUTRAL * ionicStrength;
        }
        double root = Math.sqrt(ionicStrength);
        return -slope * charge * charge * (root / (1 + root) - 0.3 * ionicStrength);
    }
}
