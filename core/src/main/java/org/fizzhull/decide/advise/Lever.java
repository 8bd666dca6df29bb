package org.fizzhull.decide.advise;

import java.util.Optional;
import org.fizzhull.decide.Design;

/**
 * One thing that can be changed in ever larger steps: rung 1 is the smallest step, rung {@link #rungs} the largest that is
 * reasonable. Rung by rung the same thing goes further the same way, so that the smallest rung that reaches a goal can be
 * found by halving. {@link Levers} has those of a design.
 */
interface Lever {
    /** {@return what is changed} */
    Step.Kind kind();

    /** {@return the number of rungs; a lever with less than 1 is left out} */
    int rungs();

    /**
     * {@return how much of a nuisance a rung is to a kitchen, on one scale for all levers: a gram in a hundred of the fill counts 1
     * (assumed)}
     *
     * @param rung from 1 to {@link #rungs}
     */
    double effort(int rung);

    /**
     * {@return the design with that rung taken, and what was done; empty where it cannot be, since the mix does not go into the
     * mould, say}
     *
     * @param design the design to start from, which another lever may have changed
     * @param rung from 1 to {@link #rungs}
     */
    Optional<Changed> at(Design design, int rung);

    /**
     * A design that was changed.
     *
     * @param design the design after the change
     * @param step what was done
     */
    record Changed(Design design, Step step) {}
}
