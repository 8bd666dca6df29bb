package org.fizzhull.uncertainty;

/**
 * What measurements pin: for one draw of all inputs, the values of some of them at which the model gives what was
 * measured. May keep scratch space, so each thread asks for its own.
 */
public interface Pinning {
    /** {@return the places of the inputs that it changes, always the same} */
    int[] pinned();

    /**
     * {@return how many uniform numbers it takes beside the inputs: errors of the measurements, choices between roots}
     */
    int uniforms();

    /**
     * Puts the pinned inputs into the array.
     *
     * <p>Let t(p) be the measured quantity as a function of the pinned input p, and T a draw of what may truly have
     * been there to be measured. Then the weight is the sum over the roots of t(p) = T of the prior density of p times
     * |dp/dT|: a draw so weighted is one of the posterior (change of variables; exact for any spread of the
     * measurement). Of several roots one is chosen with a probability in proportion to its part of the sum.
     *
     * @param inputs one value of each, in the order of the priors
     * @param uniforms between 0 and 1; all at 0.5 stand for a measurement without error
     * @return logarithm of the weight; minus infinity where no value gives what was measured
     */
    double pin(double[] inputs, double[] uniforms);
}
