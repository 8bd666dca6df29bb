package org.fizzhull.uncertainty.sampling;

import java.util.function.Supplier;

/**
 * Draws of uncertain inputs, whether from their priors ({@link MonteCarlo}) or from what a measurement leaves of them
 * ({@link Posterior}): what reads the outputs need not know which.
 */
public interface Draws {
    /**
     * {@return the output of every draw, in {@link MonteCarlo#BLOCKS} equally long blocks}
     *
     * @param model makes one model for each thread
     */
    double[] draws(Supplier<Model> model);
}
