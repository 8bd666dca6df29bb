package org.fizzhull.uncertainty;

/** Several functions of the uncertain inputs at once. May keep scratch space, so each thread asks for its own. */
public interface Outputs {
    /** Writes the outputs for one value of each input, in the order of the priors; both arrays are only lent. */
    void at(double[] inputs, double[] outputs);
}
