package org.fizzhull.pressing.powder;

/**
 * How densely a mix of powders packs under pressure. {@link DeLarrard1999} is used throughout; {@link YuStandish1991} gives
 * a second opinion that is printed.
 */
public interface PackingModel {
    /**
     * {@return phi, volume of dry solids over volume of the bed, 0 to 1}
     *
     * @param powders volume shares, sizes and single packings of the mix
     * @param squeeze P/Pk, mean pressure over the press scale of free-flowing powders; 0 as poured
     */
    double solidFraction(Powders powders, double squeeze);
}
