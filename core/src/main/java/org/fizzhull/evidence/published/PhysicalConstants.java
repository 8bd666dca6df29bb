package org.fizzhull.evidence.published;

/**
 * Constants of nature and conventional values, exact (SI Brochure, 9th edition, and its appendices; from memory), and
 * two molar masses.
 */
public final class PhysicalConstants {
    /** Molar gas constant, J/(mol K). */
    public static final double GAS_CONSTANT = 8.31446261815324;

    /** One standard atmosphere, Pa. */
    public static final double ATMOSPHERE = 101325;

    /** Standard acceleration of free fall, m/s2. */
    public static final double GRAVITY = 9.80665;

    /**
     * Molar mass of water, kg/mol, from the abridged standard atomic weights of 2021, H 1.008 and O 15.999 (T. Prohaska
     * et al., Pure Appl. Chem. 94 (2022) 573; from memory), good to 2e-5.
     */
    public static final double WATER_MOLAR_MASS = 18.015e-3;

    /** Molar mass of carbon dioxide, kg/mol, likewise with C 12.011; good to 2e-5. */
    public static final double CARBON_DIOXIDE_MOLAR_MASS = 44.009e-3;

    private PhysicalConstants() {}
}
