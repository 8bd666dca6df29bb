package org.fizzhull.fizz;

import org.fizzhull.evidence.ValidityRange;

/** Dissociation constants of an acid in water without other salts, molal. */
public interface AcidConstants {
    /** {@return the number of protons it can lose} */
    int steps();

    /**
     * {@return the negative decimal logarithm of the constant of a step}
     *
     * @param step from 1 to {@link #steps}
     * @param kelvin temperature, K; not checked
     */
    double pK(int step, double kelvin);

    /** {@return the temperatures at which it holds} */
    ValidityRange validity();
}
