package org.fizzhull.drying.run;

import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.solver.DryingGrid;

/**
 * A phase laid out on cells: the conditions in which {@link DryingWalk} takes its steps.
 *
 * @param phase air, room, wrap and duration
 * @param grid cells from the faces that are open
 * @param closedIn whether its air is so damp that the piece counts as shut in: it neither dries nor takes up water
 */
record PhaseOnGrid(DryingPhase phase, DryingGrid grid, boolean closedIn) {
    /** The same for another time, s. */
    PhaseOnGrid lasting(double seconds) {
        return new PhaseOnGrid(phase.lasting(seconds), grid, closedIn);
    }
}
