package org.fizzhull.decide.advise;

import org.fizzhull.decide.Design;
import org.fizzhull.quantity.Refusal;

/**
 * One thing that can be changed in ever larger steps: level 1 is the smallest step, level {@link #levels} the largest that is
 * reasonable. From level to level the same thing goes further the same way, so that the smallest level that reaches a goal can be
 * found by halving. {@link Adjustments} has those of a design.
 */
interface Adjustment {
    /** {@return what is changed} */
    Change.Step.Kind kind();

    /** {@return the number of levels; an adjustment with less than 1 is left out} */
    int levels();

    /**
     * {@return how much of a nuisance a level is to a kitchen, on one scale for all adjustments: a gram in a hundred of the fill counts 1
     * (assumed)}
     *
     * @param level from 1 to {@link #levels}
     */
    double effort(int level);

    /**
     * {@return the design with that level taken, and what was done}
     *
     * @param design the design to start from, which another adjustment may have changed
     * @param level from 1 to {@link #levels}
     * @throws Refusal where it cannot be taken, since the mix does not go into the mould, say
     */
    Changed at(Design design, int level);

    /**
     * A design that was changed.
     *
     * @param design the design after the change
     * @param step what was done
     */
    record Changed(Design design, Change.Step step) {}
}
