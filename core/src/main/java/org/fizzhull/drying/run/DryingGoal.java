package org.fizzhull.drying.run;

/**
 * What a piece starts with and is to lose, kg of water: the measure by which it is ready. Both are those of the whole
 * piece, and neither depends on how it is dried but through the air that is meant for it ({@code DryingMix.airing}).
 *
 * @param start after the prompt reaction
 * @param equilibrium what the air meant for drying leaves in it
 */
record DryingGoal(double start, double equilibrium) {
    /** Water that can leave in that air. */
    double removable() {
        return Math.max(0, start - equilibrium);
    }

    /** Water above equilibrium at which the piece counts as ready. */
    double readyExcess() {
        return (1 - Drying.READY) * removable();
    }
}
