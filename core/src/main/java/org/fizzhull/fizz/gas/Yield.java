package org.fizzhull.fizz.gas;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * What a mix can give at most, if every grain meets its partner: the upper bound that no bath reaches. The amounts of a
 * whole piece or batch; per kg of powder it is {@code recipe.Blend.Moles}.
 *
 * <p>Each carbonate first takes up one acid group and becomes bicarbonate; each bicarbonate then frees one carbon
 * dioxide and one water. Range: any amounts, 0 or more; exact in the amounts given. Source: stoichiometry,
 * docs/physics/fizz.md, 1. Immutable.
 *
 * @param limiting what runs out first
 * @param carbonDioxide carbon dioxide set free, mol
 * @param waterMade water made, mol, one for each carbon dioxide
 * @param bicarbonateLeft bicarbonate left over, mol
 * @param carbonateLeft carbonate left over, mol, above 0 only where the acid does not even turn it into bicarbonate
 * @param acidGroupsLeft acid groups left over, mol
 */
public record Yield(
        Limiting limiting,
        double carbonDioxide,
        double waterMade,
        double bicarbonateLeft,
        double carbonateLeft,
        double acidGroupsLeft) {

    /** What runs out first. */
    public enum Limiting {
        /** The acid. */
        ACID("acid"),
        /** The bicarbonate, carbonate included. */
        BICARBONATE("bicarbonate"),
        /** Neither, to within 1 %. */
        BALANCED("balanced");

        private final String word;

        Limiting(String word) {
            this.word = word;
        }

        /** {@return the word in results} */
        public String word() {
            return word;
        }
    }

    /**
     * {@return what is left to give after part of the gas has gone; what is over stays over}
     *
     * @param share share of the gas that has gone, 0 to 1
     * @throws IllegalArgumentException for any other share
     */
    public Yield afterLosing(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of the gas " + share);
        }
        return new Yield(
                limiting,
                carbonDioxide * (1 - share),
                waterMade * (1 - share),
                bicarbonateLeft,
                carbonateLeft,
                acidGroupsLeft);
    }

    /** {@return the mass of the carbon dioxide, kg} */
    public double gasMass() {
        return carbonDioxide * PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS;
    }

    /**
     * {@return the volume of the carbon dioxide as a dry ideal gas at 1 atm, m3}
     *
     * @param kelvin temperature, K
     */
    public double dryVolume(double kelvin) {
        return carbonDioxide * PhysicalConstants.GAS_CONSTANT * kelvin / PhysicalConstants.ATMOSPHERE;
    }
}
