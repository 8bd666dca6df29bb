package org.fizzhull.decide.advise;

import java.util.Optional;
import org.fizzhull.decide.Design;

/**
 * One thing that can be changed in ever larger steps: rung 1 is the smallest step, rung {@link #rungs} the largest that is
 * reasonable. Rung by rung the same thing goes further the same way, so that the smallest rung that reaches a goal can be
 * found by halving.
 */
interface Lever {
    /** What is changed. */
    Step.Kind kind();

    /** Number of rungs, at least 1. */
    int rungs();

    /**
     * How much of a nuisance a rung is to a kitchen, on one scale for all levers: a gram in a hundred of the fill counts 1.
     * Assumed.
     */
    double effort(int rung);

    /** The design with that rung taken, and what was done; empty where it cannot be: it does not go into the mould, say. */
    Optional<Changed> at(Design design, int rung);

    /**
     * A design that was changed.
     *
     * @param design after the change
     * @param step what was done
     */
    record Changed(Design design, Step step) {}
}
