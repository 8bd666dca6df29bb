package org.fizzhull.uncertainty;

/** A function of the uncertain inputs. May keep scratch space, so each thread asks for its own. */
public interface Model {
    /** The output for one value of each input, in the order of the priors; the array is only lent. */
    double at(double[] inputs);
}
