package org.fizzhull.uncertainty.sampling;

/**
 * Conditions draws on measurements: for one draw of all inputs it solves for the values of some of them, the solved
 * ones, at which the model gives what was measured, and weighs the draw. Each thread has its own, which may keep
 * scratch space. Read by {@link Posterior}; implemented in {@code forecast.conditioning}. Source:
 * docs/physics/uncertainty.md, 4.
 */
public interface ExactConditioning {
    /** {@return the places of the inputs that it changes, in the order of the priors; always the same} */
    int[] solved();

    /**
     * {@return how many uniform numbers it takes beside the inputs: errors of the measurements, choices between roots}
     */
    int uniforms();

    /**
     * Puts the solved inputs into the array.
     *
     * <p>Let t(p) be the measured quantity as a function of the solved input p, and T a draw of what may truly have
     * been there to be measured. Then the weight is the sum over the roots of t(p) = T of the prior density of p times
     * |dp/dT|: a draw so weighted is one of the posterior (change of variables; exact for any spread of the
     * measurement). Of several roots one is chosen with a probability in proportion to its part of the sum.
     *
     * @param inputs one value of each, in the order of the priors; the solved ones are overwritten
     * @param uniforms uniform numbers between 0 and 1, as many as {@link #uniforms} says; all at 0.5 stand for a
     *     measurement without error
     * @return natural logarithm of the weight; minus infinity where no value gives what was measured
     */
    double solve(double[] inputs, double[] uniforms);
}
