package org.fizzhull.uncertainty.sampling;

/**
 * A function of the uncertain inputs. May keep scratch space, so each thread has its own: callers pass a {@code
 * Supplier} of models, whose {@code get} is called once for each block.
 */
public interface Model {
    /**
     * {@return the output for one value of each input, in the order of the priors; the array may be reused: copy it to
     * keep it}
     *
     * @param inputs one value of each input, in its SI unit; must be neither kept nor changed
     */
    double at(double[] inputs);

    /**
     * Called after {@link #at} where the output just given is that of a draw, and not of a mixed row of the indices:
     * for a model that keeps more of a draw than one number.
     *
     * @param draw place of the draw, from 0
     */
    default void keep(int draw) {}
}
