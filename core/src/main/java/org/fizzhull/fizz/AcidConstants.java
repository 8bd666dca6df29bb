package org.fizzhull.fizz;

import org.fizzhull.evidence.published.ValidityRange;

/**
 * Dissociation constants of an acid in water without other salts, molal, as a function of temperature. One class for each
 * publication; {@link Acid} says which acid takes which.
 */
public interface AcidConstants {
    /** {@return the number of protons it can lose} */
    int steps();

    /**
     * {@return the negative decimal logarithm of the constant of a step, at no ionic strength}
     *
     * @param step which proton, from 1 to {@link #steps}
     * @param kelvin temperature, K; not checked, see {@link #validity}
     */
    double pK(int step, double kelvin);

    /** {@return the temperatures at which it holds} */
    ValidityRange validity();
}
