package org.fizzhull.fizz;

import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.ValidityRange;

/** Dissociation constants of an acid in water without other salts, molal. */
public interface AcidConstants {
    /** Number of protons it can lose. */
    int steps();

    /**
     * Negative decimal logarithm of the constant of a step.
     *
     * @param step from 1 to {@link #steps}
     * @param kelvin temperature, K; not checked
     */
    double pK(int step, double kelvin);

    /** Temperatures at which it holds. */
    ValidityRange validity();

    /** Where it is from. */
    Source source();
}
