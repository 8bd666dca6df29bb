package org.fizzhull.drying.run;

import java.util.Arrays;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.solver.Contents;
import org.fizzhull.drying.solver.DryingGrid;
import org.fizzhull.drying.solver.DryingSolver;
import org.fizzhull.drying.solver.RecedingFront;
import org.fizzhull.drying.solver.VolumeRank;
import org.fizzhull.medium.RoomAir;

/**
 * Takes one piece through its stretches of time, one after the other: chooses the steps, keeps the log, and sees when
 * the piece is ready or soaked. SI.
 *
 * <p>One instance serves one piece and one thread.
 *
 * <p>The step in time is chosen by how much the flux of the two stages of a step differs: with dt the step (s), dF that
 * difference (kg/s), W the water that the stretch has to move (kg) and e the tolerance,
 *
 * <pre>  error = dt |dF|/(e W),   next dt = dt min(2, 0.9/sqrt(error))</pre>
 *
 * <p>and a step with an error above 4, or that the solver cannot take, is taken back and shortened.
 */
final class DryingWalk {
    /**
     * Share of the pores in liquid at which a piece that takes up water counts as soaked and the course ends: beyond it
     * liquid would flow.
     */
    private static final double SOAKED = 0.3;

    /** First step of a stretch, s. */
    private static final double FIRST_STEP = 30;

    /** The mix with the parameters of the draw. */
    private final DryingMix mix;
    /** What it starts with and is to lose. */
    private final DryingGoal goal;
    /** Cells and tolerance. */
    private final Resolution resolution;
    /** Whether the course ends once the piece is ready. */
    private final boolean stopWhenReady;
    /** Takes the steps; holds what the cells hold now. */
    private final DryingSolver solver;
    /** The steps so far. */
    private final ComputedCourse.Log log;

    /** Faces that are open now. */
    private Opening opening;
    /** Cells from those. */
    private DryingGrid grid;
    /** Time from pressing, s. */
    private double clock;
    /** Share of the alcohol that has evaporated, 0 to 1. */
    private double alcoholGone;
    /** When the piece was ready, s; NaN before. */
    private double readyAt = Double.NaN;
    /** Whether the piece took up water until it counted as soaked. */
    private boolean soaked;

    /** Whether the course is behind and only the time until ready is sought. */
    private boolean following;

    /**
     * @param opening the faces that are open at the start
     * @param grid cells from those
     */
    DryingWalk(
            DryingMix mix,
            DryingGoal goal,
            Opening opening,
            DryingGrid grid,
            Resolution resolution,
            boolean stopWhenReady) {
        this.mix = mix;
        this.goal = goal;
        this.opening = opening;
        this.grid = grid;
        this.resolution = resolution;
        this.stopWhenReady = stopWhenReady;
        solver = new DryingSolver(mix.isotherm, mix.reaction, mix.hydration, mix.input.rhoDry());
        log = new ComputedCourse.Log(mix.reaction.waterPerMole());
        if (goal.removable() <= 0) {
            readyAt = 0;
        }
    }

    /** Goes into a phase; where other faces are open than before, what the cells hold is carried over. */
    PhaseOnGrid enter(DryingPhase phase) {
        DryingGrid old = grid;
        if (!phase.opening().equals(opening)) {
            opening = phase.opening();
            grid = resolution.grid(opening);
        }
        var stretch = new PhaseOnGrid(phase, grid, mix.damp(phase) && !phase.storage());
        lay(stretch);
        if (log.isEmpty()) {
            Arrays.fill(solver.now.water, mix.startContent());
            Arrays.fill(solver.now.extent, mix.prompt());
            log.add(0, goal.start(), 0, mix.prompt(), 0, solver.now.room);
        } else if (grid != old) {
            VolumeRank.carry(old, grid, solver.now.water);
            VolumeRank.carry(old, grid, solver.now.extent);
            VolumeRank.carry(old, grid, solver.now.bound);
        }
        return stretch;
    }

    /** Tells the solver the cells, conductances and room of a stretch. */
    private void lay(PhaseOnGrid stretch) {
        DryingPhase phase = stretch.phase();
        RoomAir air = phase.air();
        double saturation = air.saturationDensity();
        double vapour = mix.poreDiffusivity(air.diffusivity()) * saturation;
        double surface = stretch.closedIn() ? 0 : Drying.surface(phase, mix.parameters) * saturation;
        solver.lay(stretch.grid(), vapour, surface, mix.filmRate(air));
        if (phase.room().isEmpty()) {
            solver.fixedRoom(air.humidity());
            return;
        }
        DryingPhase.ClosedRoom room = phase.room().get();
        double capacity = room.volume() * saturation / room.pieces();
        if (clock == 0) {
            solver.now.room = air.humidity();
        }
        solver.air()
                .close(
                        capacity,
                        capacity * room.airChanges(),
                        air.humidity(),
                        room.dehumidifier() / room.pieces(),
                        room.setPoint(),
                        DryingPhase.ClosedRoom.RAMP);
    }

    /** Steps through a stretch; false where the course ends with it. */
    boolean advance(PhaseOnGrid stretch) {
        // what errors are measured against, and where a stored piece counts as soaked
        double scale = toMove(stretch);
        double soakedWater = soakedWater(stretch.grid());
        var front = mix.input.alcohol().share() > 0 ? new RecedingFront(stretch.grid()) : null;
        double duration = stretch.phase().duration();
        double end = clock + duration;
        double next = Math.min(FIRST_STEP, duration);
        while (clock < end) {
            double dt = Math.min(next, end - clock);
            double was = mobile() - goal.equilibrium();
            // an error of 9 stands for a step that could not be taken: a quarter of it is tried next
            boolean settled = solver.step(dt);
            double error = settled ? dt * Math.abs(solver.fluxChange) / (resolution.tolerance() * scale) : 9;
            if (!settled || (error > 4 && dt > 1)) {
                if (settled) {
                    solver.undo();
                }
                next = shorter(dt, error);
                continue;
            }
            double from = clock;
            clock = dt == end - from ? end : from + dt;
            next = dt * Math.min(2, 0.9 / Math.sqrt(Math.max(error, 0.01)));
            // an accepted step: alcohol, ready time, log, and what ends the course
            if (front != null) {
                alcoholGone = evaporate(front, dt, stretch.phase());
            }
            if (!stretch.closedIn()) {
                seeWhetherReady(from, dt, was);
            }
            if (!following) {
                double extent = stretch.grid().sum(solver.now.extent) / stretch.grid().total;
                log.add(clock, water(), bound(), extent, alcoholGone, solver.now.room);
            }
            if ((stopWhenReady || following) && ready()) {
                return false;
            }
            // one that comes wet out of the mould is soaked only where the air makes it wetter
            boolean fromAir = stretch.phase().storage() || solver.now.lost < 0;
            if (fromAir && mobile() > soakedWater) {
                soaked |= !following;
                return false;
            }
        }
        return true;
    }

    /** A shorter step, s, after one that was too long; throws where no step is short enough. */
    private double shorter(double dt, double error) {
        double next = dt * Math.max(0.1, 0.8 / Math.sqrt(error));
        if (!(next > 1e-6)) {
            throw new IllegalStateException("the drying course does not settle at " + clock + " s");
        }
        return next;
    }

    /**
     * Notes when in the step just done the water that can move fell to what makes a piece ready; {@code was} is the excess before.
     */
    private void seeWhetherReady(double from, double dt, double was) {
        double excess = mobile() - goal.equilibrium();
        if (!ready() && excess <= goal.readyExcess()) {
            readyAt = from + dt * (was - goal.readyExcess()) / (was - excess);
        }
    }

    /** Water the piece holds by its balance, kg. */
    private double water() {
        return goal.start() + solver.now.made - solver.now.lost;
    }

    /** The part of it that the acid has not bound, kg. */
    private double mobile() {
        return water() - bound();
    }

    private double bound() {
        return mix.hydration.idle() ? 0 : mix.input.rhoDry() * grid.sum(solver.now.bound);
    }

    /** Water this stretch has to move, kg: what the step control measures errors against. */
    private double toMove(PhaseOnGrid stretch) {
        double humidity = stretch.phase().air().humidity();
        double there = mix.isotherm.contentAt(humidity) * stretch.grid().total;
        double least = humidity < mix.isotherm.film() ? 1e-3 : 0.1;
        return Math.max(Math.abs(mobile() - there), least * goal.start() + 1e-9 * stretch.grid().total);
    }

    /** Water of a piece at which it counts as soaked, kg: that of its films, and liquid in 0.3 of its pores. */
    private double soakedWater(DryingGrid grid) {
        return SOAKED * Drying.WATER_DENSITY * mix.input.porosity() * grid.total
                + mix.isotherm.filmContent() * grid.total;
    }

    /** Share of the alcohol gone after a step, by its own receding front. */
    private double evaporate(RecedingFront front, double dt, DryingPhase phase) {
        double kelvin = phase.air().temperature();
        Alcohol alcohol = mix.input.alcohol();
        return front.advance(
                alcoholGone,
                dt,
                alcohol.share() * mix.input.rhoDry(),
                mix.poreDiffusivity(alcohol.diffusivity(kelvin)),
                Drying.surface(phase, mix.parameters),
                alcohol.vapourDensity(mix.input.freeWater(), kelvin));
    }

    /**
     * A saved state, to continue from later.
     *
     * @param stretch conditions it lies in
     * @param clock time from pressing, s
     * @param alcoholGone share of the alcohol gone, 0 to 1
     * @param contents what the cells hold
     */
    record Mark(PhaseOnGrid stretch, double clock, double alcoholGone, Contents contents) {}

    /** The present state, to continue from later in the conditions of a stretch. */
    Mark mark(PhaseOnGrid stretch) {
        return new Mark(stretch, clock, alcoholGone, solver.now.copy());
    }

    /**
     * Goes back to a moment and on in the same conditions, without a log, until the piece is ready or a time is over,
     * s.
     */
    void followOn(Mark from, double until) {
        clock = from.clock;
        alcoholGone = from.alcoholGone;
        lay(from.stretch);
        solver.now.take(from.contents);
        following = true;
        advance(from.stretch.lasting(until - clock));
    }

    /** Time so far, s. */
    double clock() {
        return clock;
    }

    /** Whether the piece has been seen ready. */
    boolean ready() {
        return !Double.isNaN(readyAt);
    }

    /** When the piece was ready, s; NaN where it was not. */
    double readyAt() {
        return readyAt;
    }

    /** Whether a piece took up water until a third of its pores were full. */
    boolean soaked() {
        return soaked;
    }

    /** Error of the water balance, relative to the water at the start. */
    double balanceError() {
        return goal.start() > 0 ? Math.abs(grid.sum(solver.now.water) - mobile()) / goal.start() : 0;
    }

    /** The steps so far. */
    ComputedCourse.Log log() {
        return log;
    }
}
