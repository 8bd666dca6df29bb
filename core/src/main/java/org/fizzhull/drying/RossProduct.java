package org.fizzhull.drying;

import org.fizzhull.evidence.Source;

/**
 * Mutual deliquescence: soluble solids together go liquid at about the product of their own deliquescence humidities,
 * each a fraction. Measured on food blends -5 to +6 % RH of the product; with a common ion 6 to 18 % RH above it
 * (Allan, Taylor and Mauer 2016, Food Chem. [abstract seen]). So it is a lower bound for salts of sodium.
 */
public final class RossProduct {
    /** The relation's source. */
    public static final Source SOURCE = new Source(
            "RossProduct",
            "Ross's product of water activities; tested by Allan, Taylor and Mauer, Food Chem. (2016), abstract",
            Source.Seen.SECOND_HAND);

    /** Deliquescence of table salt at 25 C: Wexler, Constant humidity solutions, CRC Handbook [seen]. */
    public static final double SODIUM_CHLORIDE = 0.7525;

    /** Deliquescence of epsomite at 25 C, list after Arnold and Zehnder (1991) [second-hand]. */
    public static final double EPSOM_SALT = 0.883;

    /** Deliquescence of sucrose at 25 C [from memory, high]. */
    public static final double SUCROSE = 0.85;

    /** Deliquescence of magnesium chloride hexahydrate at 25 C: CRC Handbook [seen]. */
    public static final double MAGNESIUM_CHLORIDE = 0.3279;

    private RossProduct() {}

    /** The product of deliquescence humidities, each within 0 and 1; 1 for none. */
    public static double of(double... humidities) {
        double product = 1;
        for (double humidity : humidities) {
            if (!(humidity > 0 && humidity <= 1)) {
                throw new IllegalArgumentException("deliquescence humidity " + humidity + " is not within 0 to 1");
            }
            product *= humidity;
        }
        return product;
    }
}
