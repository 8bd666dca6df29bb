package org.fizzhull.medium.relation;

import static org.fizzhull.quantity.Units.ZERO_CELSIUS_K;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Density of a salt solution at 1 atm: Laliberte and Cooper (2004), with the coefficients of Laliberte (2009). Each
 * salt takes up room as if it had the apparent density
 *
 * <pre>  rho_app = (c0 w + c1) exp(1e-6 (t + c4)^2) / (w + c2 + c3 t),   1/rho = w_water/rho_water + sum
 * w_i/rho_app,i</pre>
 *
 * with t in C and w the mass fraction of all salts together. The water density is {@link Kell1975}. Mass fractions are
 * of the anhydrous salt. Over the measured densities of single salts it was fitted to, the relation is off by 0.10
 * kg/m3 in the mean with a standard deviation of 1.44 kg/m3 (abstract, seen); sodium chloride in a bath is met to 0.5
 * kg/m3.
 *
 * <p>Source: M. Laliberte and W. E. Cooper, J. Chem. Eng. Data 49 (2004) 1141 (form; abstract seen); M. Laliberte, J.
 * Chem. Eng. Data 54 (2009) 1725 (coefficients, as coded in public open-source libraries) [second-hand].
 */
public enum LaliberteCooper2004 {
    /** NaCl, 0 to 140 C, to a mass fraction of 0.266. */
    SODIUM_CHLORIDE(
            "sodium chloride",
            140,
            0.266,
            -0.00324112223655149,
            0.0636354335906616,
            1.01371399467365,
            0.0145951015210159,
            3317.34854426537),
    /** MgSO4 without its water, 0 to 125 C, to a mass fraction of 0.268. */
    MAGNESIUM_SULFATE(
            "magnesium sulfate",
            125,
            0.268,
            98.1201663080777,
            59.265764731786,
            -0.0303404982114453,
            0.000503619228557116,
            1763.7594229147),
    /** NaHCO3, 0 to 125 C, to a mass fraction of 0.126. */
    SODIUM_BICARBONATE(
            "sodium bicarbonate",
            125,
            0.126,
            0.0377378060615898,
            0.00710029652458366,
            0.0735733388535116,
            0.00168369765511221,
            3291.38382252025);

    /** First coefficient, kg/m3. */
    private final double c0;
    /** Second coefficient, kg/m3. */
    private final double c1;
    /** Third coefficient. */
    private final double c2;
    /** Fourth coefficient, 1/K. */
    private final double c3;
    /** Fifth coefficient, a temperature, C. */
    private final double c4;
    /** Temperatures it was fitted to. */
    private final ValidityRange temperature;
    /** Mass fractions it was fitted to. */
    private final ValidityRange fraction;

    LaliberteCooper2004(
            String name,
            double highestCelsius,
            double highestFraction,
            double c0,
            double c1,
            double c2,
            double c3,
            double c4) {
        this.c0 = c0;
        this.c1 = c1;
        this.c2 = c2;
        this.c3 = c3;
        this.c4 = c4;
        String relation = "Density with " + name + " by Laliberte and Cooper (2004)";
        temperature = ValidityRange.ofTemperature(relation, celsius(0), celsius(highestCelsius));
        fraction = ValidityRange.of(relation, 0, highestFraction, "kg per kg of solution", 1);
    }

    /** {@return the temperature, K} */
    public ValidityRange temperatureRange() {
        return temperature;
    }

    /** {@return the mass fraction of the salt in the solution} */
    public ValidityRange fractionRange() {
        return fraction;
    }

    /**
     * {@return the apparent density of the dissolved salt, kg/m3, at a temperature in K and the mass fraction of all
     * salts}
     *
     * @param kelvin temperature, K
     * @param allSalts mass fraction of all salts in the solution, 0 to 1
     */
    public double apparentDensity(double kelvin, double allSalts) {
        double t = kelvin - ZERO_CELSIUS_K;
        double shifted = t + c4;
        return (c0 * allSalts + c1) * Math.exp(1e-6 * shifted * shifted) / (allSalts + c2 + c3 * t);
    }

    /**
     * {@return the density of a solution of this salt alone, kg/m3, at a temperature in K and its mass fraction; {@link
     * Kell1975#density} itself at 0} Not checked against the range.
     *
     * @param kelvin temperature, K
     * @param saltFraction mass fraction of the salt in the solution, 0 to 1
     */
    public double density(double kelvin, double saltFraction) {
        double water = Kell1975.density(kelvin);
        if (saltFraction == 0) {
            return water;
        }
        return 1 / ((1 - saltFraction) / water + saltFraction / apparentDensity(kelvin, saltFraction));
    }

    /**
     * {@return the density of a solution of several salts, kg/m3} Not checked against the ranges.
     *
     * @param kelvin temperature, K
     * @param fractions mass fraction of each salt in the solution, in the order of the constants of this type
     * @throws IllegalArgumentException for another number of fractions than of salts
     */
    public static double density(double kelvin, double... fractions) {
        LaliberteCooper2004[] salts = ALL;
        if (fractions.length != salts.length) {
            throw new IllegalArgumentException("one mass fraction for each of " + salts.length + " salts");
        }
        double all = 0;
        for (double fraction : fractions) {
            all += fraction;
        }
        double specificVolume = (1 - all) / Kell1975.density(kelvin);
        for (int i = 0; i < salts.length; i++) {
            if (fractions[i] != 0) {
                specificVolume += fractions[i] / salts[i].apparentDensity(kelvin, all);
            }
        }
        return 1 / specificVolume;
    }

    /** Kept, since {@code values()} copies at each call. */
    private static final LaliberteCooper2004[] ALL = values();
}
