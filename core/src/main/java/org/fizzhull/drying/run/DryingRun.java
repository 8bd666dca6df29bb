package org.fizzhull.drying.run;

import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.solver.DryingGrid;

/**
 * One computation of {@link Drying}: lays out the phases, takes the piece through them and sums up.
 *
 * <ol>
 *   <li>The phase meant for drying gives the goal: the water its air leaves in the piece in the end.
 *   <li>A {@link DryingWalk} goes through the phases in order. At the end of the last one before storage its state is
 *       marked where the piece is not ready yet.
 *   <li>Such a piece is afterwards followed on from the mark, beside the course, until it is ready or the wait is over:
 *       the ready time does not depend on when the piece was put away.
 * </ol>
 */
final class DryingRun {
    /** The mix with the parameters of the draw. */
    private final DryingMix mix;
    /** Cells and tolerance. */
    private final Resolution resolution;
    /** Whether the course ends once the piece is ready. */
    private final boolean stopWhenReady;

    /** Time until which a piece that is not ready by the end of its drying is followed on, s; 0 for not at all. */
    private final double wait;

    DryingRun(
            DryingInput input, DryingParameters parameters, Resolution resolution, boolean stopWhenReady, double wait) {
        mix = new DryingMix(input, parameters);
        this.resolution = resolution;
        this.stopWhenReady = stopWhenReady;
        this.wait = wait;
    }

    /** The course through the phases, at least one. */
    DryingCourse course(List<DryingPhase> phases) {
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("a drying course needs at least one phase");
        }
        // the goal: what the air meant for drying leaves in the piece
        DryingPhase first = phases.get(0);
        DryingPhase airing = mix.airing(phases);
        int onward = lastDrying(phases);
        DryingGrid grid = resolution.grid(first.opening());
        var goal = new DryingGoal(
                mix.startContent() * grid.total,
                mix.isotherm.contentAt(airing.air().humidity()) * grid.total);
        var walk = new DryingWalk(mix, goal, first.opening(), grid, resolution, stopWhenReady);
        DryingWalk.Mark mark = null;
        for (int at = 0; at < phases.size(); at++) {
            PhaseOnGrid stretch = walk.enter(phases.get(at));
            boolean goesOn = walk.advance(stretch);
            if (at == onward) {
                boolean waits = !walk.ready() && walk.clock() < wait && !mix.damp(airing);
                mark = waits ? walk.mark(stretch) : null;
            }
            if (!goesOn) {
                break;
            }
        }
        // the balance is that of the course; what follows is beside it
        double balance = walk.balanceError();
        if (mark != null && !walk.ready()) {
            walk.followOn(mark, wait);
        }
        var ends = new ComputedCourse.Ends(
                goal,
                mix.hydration.settled(mix.isotherm.contentAt(airing.air().humidity()))
                        * grid.total
                        * mix.input.rhoDry(),
                walk.readyAt(),
                mix.damp(airing),
                mix.isotherm.film(),
                airing.air().humidity(),
                mix.prompt(),
                reactionNumber(airing, first, grid),
                growth(first, walk.log().lastExtent()),
                walk.soaked(),
                balance);
        return new ComputedCourse(mix.input, grid.total * mix.input.rhoDry(), walk.log(), ends, phases);
    }

    /** Number of the phase before storage, which a piece that is not ready is left in; the first where all is storage. */
    private static int lastDrying(List<DryingPhase> phases) {
        int last = 0;
        for (int i = 0; i < phases.size(); i++) {
            last = phases.get(i).storage() ? last : i;
        }
        return last;
    }

    /** The reaction number of the drying phase, from the faces that are open there. */
    private double reactionNumber(DryingPhase airing, DryingPhase first, DryingGrid grid) {
        boolean same = airing.opening().equals(first.opening());
        return mix.reactionNumber(airing, same ? grid : resolution.grid(airing.opening()));
    }

    /** Relative growth in volume at the end of the course, by the gas that stays in the pores. */
    private double growth(DryingPhase first, double extent) {
        DryingInput input = mix.input;
        double saturation = mix.wet() * input.rhoDry() / (Drying.WATER_DENSITY * input.porosity());
        double kelvin = first.air().temperature();
        return DryingCourse.Swelling.growth(extent, input.rhoDry(), saturation, kelvin, mix.parameters.retainedGas());
    }
}
