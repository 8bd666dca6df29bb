package org.fizzhull.fizz;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Molar masses, kg/mol, summed from the abridged standard atomic weights of 2021. Good to 2e-5, far below what a
 * kitchen scale can tell.
 *
 * <p>Source: T. Prohaska et al., Standard atomic weights of the elements 2021, Pure Appl. Chem. 94 (2022) 573 [from
 * memory].
 */
public final class MolarMass {
    /** Atomic weights, kg/mol. */
    private static final double H = 1.008e-3;

    private static final double C = 12.011e-3;
    private static final double O = 15.999e-3;
    private static final double NA = 22.98976928e-3;
    private static final double MG = 24.305e-3;
    private static final double S = 32.06e-3;
    private static final double CL = 35.45e-3;
    private static final double K = 39.0983e-3;

    /** NaHCO3. */
    public static final double SODIUM_BICARBONATE = NA + H + C + 3 * O;

    /** KHCO3. */
    public static final double POTASSIUM_BICARBONATE = K + H + C + 3 * O;

    /** Na2CO3. */
    public static final double SODIUM_CARBONATE = 2 * NA + C + 3 * O;

    /** C6H8O7. */
    public static final double CITRIC_ACID = 6 * C + 8 * H + 7 * O;

    /** C6H8O7 with one water. */
    public static final double CITRIC_ACID_MONOHYDRATE = CITRIC_ACID + 2 * H + O;

    /** C4H6O6. */
    public static final double TARTARIC_ACID = 4 * C + 6 * H + 6 * O;

    /** C4H6O5. */
    public static final double MALIC_ACID = 4 * C + 6 * H + 5 * O;

    /** KC4H5O6, cream of tartar. */
    public static final double POTASSIUM_BITARTRATE = K + 4 * C + 5 * H + 6 * O;

    /** C6H8O6. */
    public static final double ASCORBIC_ACID = 6 * C + 8 * H + 6 * O;

    /** C3H6O3. */
    public static final double LACTIC_ACID = 3 * C + 6 * H + 3 * O;

    /** C4H4O4. */
    public static final double FUMARIC_ACID = 4 * C + 4 * H + 4 * O;

    /** CO2. */
    public static final double CARBON_DIOXIDE = PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS;

    /** H2O. */
    public static final double WATER = PhysicalConstants.WATER_MOLAR_MASS;

    /** NaCl. */
    public static final double SODIUM_CHLORIDE = NA + CL;

    /** MgSO4 with seven waters, Epsom salt. */
    public static final double EPSOM_SALT = MG + S + 4 * O + 7 * (2 * H + O);

    private MolarMass() {}
}
