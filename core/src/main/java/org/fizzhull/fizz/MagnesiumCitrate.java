package org.fizzhull.fizz;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * The ion pair of magnesium and citrate, {@code Mg++ + Cit--- = MgCit-}: lg K = 4.89 at 25 C and no ionic strength,
 * enthalpy 8.368 kJ/mol, carried to other temperatures by van't Hoff. It draws citrate out of its acid steps and so
 * makes a bath with much Epsom salt sourer, by about 0.1.
 *
 * <p>Source: Stability of MgCitrate-, lg K 4.89 and 8.368 kJ/mol, in the public database minteq of PHREEQC (USGS)
 * [second-hand].
 */
final class MagnesiumCitrate {
    /** lg of the stability constant at 25 C, molal. */
    private static final double AT_25 = 4.89;
    /** Enthalpy of the pairing, J/mol. */
    private static final double ENTHALPY = 8368;
    /** 25 C, K. */
    private static final double REFERENCE = 298.15;

    private MagnesiumCitrate() {}

    /** lg of the stability constant, kg/mol, at a temperature, K. */
    static double lgStability(double kelvin) {
        return AT_25 + ENTHALPY / (PhysicalConstants.GAS_CONSTANT * Math.log(10)) * (1 / REFERENCE - 1 / kelvin);
    }

    /**
     * {@return the molality of the pair, mol/kg} With c the free citrate ion and K the constant in molalities, {@code K c = x}
     * solves {@code a x^2 + (a + K (M - C)) x - K C = 0}.
     *
     * @param constant K, kg/mol, activities included
     * @param perIon a, all citrate that is not in the pair over the citrate ion
     * @param citrate C in all, mol/kg
     * @param magnesium M in all, mol/kg, above 0
     */
    static double bound(double constant, double perIon, double citrate, double magnesium) {
        double b = perIon + constant * (magnesium - citrate);
        double root = Math.sqrt(b * b + 4 * perIon * constant * citrate);
        // the form that does not cancel
        double x = b > 0 ? 2 * constant * citrate / (b + root) : (root - b) / (2 * perIon);
        return magnesium * x / (1 + x);
    }
}
