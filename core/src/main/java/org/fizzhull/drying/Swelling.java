package org.fizzhull.drying;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Whether gas made before the bath swells the piece: {@code dV/V = phi_ret xi V_m rho_dry}, phi_ret from 0.003 where
 * the pores hold less than a tenth of liquid to 0.05 above eight tenths (docs/physics/drying.md, 7, assumed, low
 * confidence). A class, not a number.
 *
 * <p>V growth in volume over volume, phi_ret share of the gas that stays and pushes, xi CO2 made before the bath
 * (mol/kg dry), V_m volume of a mole of gas at 1 atm (m3/mol), rho_dry dry mix per volume (kg/m3). How far a paste
 * holds its gas is not known for any such mix: hence classes.
 */
public enum Swelling {
    /** Below 3 % of volume, which is below 1 % across: not seen. */
    NONE("none", 0),
    /** 3 to 10 % of volume. */
    SLIGHT("slight", 0.03),
    /** Above 10 % of volume. */
    PUFFS("puffs", 0.10);

    /** Word shown to people, stable. */
    private final String word;
    /** Least relative growth in volume of the class. */
    private final double leastGrowth;

    Swelling(String word, double leastGrowth) {
        this.word = word;
        this.leastGrowth = leastGrowth;
    }

    /** {@return the least relative growth in volume of this class} */
    public double leastGrowth() {
        return leastGrowth;
    }

    /** {@return the word shown to people} */
    public String word() {
        return word;
    }

    /**
     * Relative growth in volume, dV/V.
     *
     * @param extent CO2 made, mol/kg dry
     * @param rhoDry dry mix per volume of piece, kg/m3
     * @param saturation share of the pores that liquid fills at the start, 0 to 1
     * @param kelvin temperature, K
     * @param factor on the retained share
     */
    public static double growth(double extent, double rhoDry, double saturation, double kelvin, double factor) {
        double place = Math.max(0, Math.min(1, (saturation - 0.1) / 0.7));
        double retained = factor * (0.003 + 0.047 * place);
        return retained * extent * rhoDry * PhysicalConstants.GAS_CONSTANT * kelvin / PhysicalConstants.ATMOSPHERE;
    }

    /**
     * {@return the class of a growth in volume}
     *
     * @param growth dV/V
     * @throws IllegalArgumentException for NaN
     */
    public static Swelling of(double growth) {
        if (Double.isNaN(growth)) {
            throw new IllegalArgumentException("a growth in volume of NaN");
        }
        if (growth < SLIGHT.leastGrowth) {
            return NONE;
        }
        return growth < PUFFS.leastGrowth ? SLIGHT : PUFFS;
    }
}
