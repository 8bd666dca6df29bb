package org.fizzhull.drying;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.recipe.EarlyRates;

/** One computation of {@link Drying}: lays out the phases, steps the solver through them and keeps the log. */
final class DryingRun {
    /** Share of the pores in liquid at which a stored piece counts as soaked and the course ends. */
    private static final double SOAKED = 0.3;

    private static final double FIRST_STEP = 30;
    private static final double WATER_DENSITY = 1000;

    private final DryingInput input;
    private final DryingParameters parameters;
    private final Resolution resolution;
    private final boolean stopWhenReady;

    /** Time until which a piece that is not ready by the end of its drying is followed on, s; 0 for not at all. */
    private final double wait;

    private final WaterActivity isotherm;

    /** Water of hydrates that moves, kg per kg of dry mix. */
    private final double hydrate;

    private final FilmReaction reaction;
    private final DryingSolver solver;
    private final DryingCourse.Log log;

    private double clock;
    private double alcoholGone;
    private double readyAt = Double.NaN;
    private boolean soaked;

    /** Whether the course is behind and only the time until ready is sought. */
    private boolean following;

    DryingRun(
            DryingInput input, DryingParameters parameters, Resolution resolution, boolean stopWhenReady, double wait) {
        this.input = input;
        this.parameters = parameters;
        this.resolution = resolution;
        this.stopWhenReady = stopWhenReady;
        this.wait = wait;
        hydrate = parameters.hydrateShare() * input.hydrate();
        isotherm = new WaterActivity(input.sorbents(), input.rhoDry(), Drying.filmActivity(input, parameters), hydrate);
        reaction = new FilmReaction(input.capacity(), parameters.reactionOrder(), parameters.hydrateWaters());
        solver = new DryingSolver(isotherm, reaction, input.rhoDry());
        log = new DryingCourse.Log();
        log.waterPerMole = reaction.waterPerMole();
    }

    DryingCourse course(List<DryingPhase> phases) {
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("a drying course needs at least one phase");
        }
        DryingPhase first = phases.get(0);
        DryingPhase airing = airing(phases);
        double prompt = Math.min(parameters.promptYield() * input.freeWater(), input.capacity());
        double wet = input.freeWater() + prompt * reaction.waterPerMole();
        double content = startContent(wet);
        var grid = new DryingGrid(first.opening(), resolution.cells(), resolution.grading());
        double start = content * grid.total;
        double equilibrium = isotherm.contentAt(airing.air().humidity()) * grid.total;
        double removable = Math.max(0, start - equilibrium);
        double readyExcess = (1 - Drying.READY) * removable;
        if (removable <= 0) {
            readyAt = 0;
        }
        double free = Math.max(0, content - isotherm.filmContent());
        double number = reactionNumber(airing, free, first.opening(), grid);
        DryingPhase onward = lastDrying(phases);
        Waiting waiting = null;
        boolean filled = false;
        Opening before = first.opening();
        for (DryingPhase phase : phases) {
            DryingGrid old = grid;
            if (!phase.opening().equals(before)) {
                grid = new DryingGrid(phase.opening(), resolution.cells(), resolution.grading());
                before = phase.opening();
            }
            boolean closedIn = damp(phase) && !phase.storage();
            prepare(phase, grid, closedIn);
            if (!filled) {
                Arrays.fill(solver.water, content);
                Arrays.fill(solver.extent, prompt);
                log.add(0, start, prompt, 0, solver.room);
                filled = true;
            } else if (grid != old) {
                VolumeRank.carry(old, grid, solver.water);
                VolumeRank.carry(old, grid, solver.extent);
            }
            boolean goesOn = advance(phase, grid, closedIn, start, equilibrium, readyExcess);
            if (phase.equals(onward)) {
                boolean waits = Double.isNaN(readyAt) && clock < wait && !damp(airing);
                waiting = waits ? new Waiting(grid, closedIn, clock, alcoholGone, solver.state()) : null;
            }
            if (!goesOn) {
                break;
            }
        }
        double balance = balanceError(grid, start);
        double saturation = wet * input.rhoDry() / (WATER_DENSITY * input.porosity());
        double growth = Swelling.growth(
                log.lastExtent(), input.rhoDry(), saturation, first.air().temperature(), parameters.retainedGas());
        double dryMass = grid.total * input.rhoDry();
        if (waiting != null && Double.isNaN(readyAt)) {
            waitOn(onward, waiting, start, equilibrium, readyExcess);
        }
        return new DryingCourse(
                input,
                dryMass,
                log,
                new DryingCourse.Ends(
                        removable,
                        readyAt,
                        damp(airing),
                        isotherm.film(),
                        airing.air().humidity(),
                        prompt,
                        number,
                        growth,
                        soaked,
                        balance),
                phases);
    }

    /** Powders as bought, salts in their higher hydrate, humectants without water, plus all the water, kg/m3. */
    private double startContent(double wet) {
        double a = Math.min(parameters.startActivity(), isotherm.film());
        double bottled = input.sorbents().water(a) - input.sorbents().waterAsBought(a);
        double bound = hydrate * (1 - isotherm.hydrated(a));
        return isotherm.contentAt(a) + (wet - bottled + bound) * input.rhoDry();
    }

    /** Whether this air can never dry this mix; a dehumidifier in a closed room may. */
    private boolean damp(DryingPhase phase) {
        boolean helped = phase.room().isPresent() && phase.room().get().dehumidifier() > 0;
        return phase.air().humidity() >= isotherm.film() && !helped;
    }

    /** The phase meant for drying: the longest one that is open, not storage, and in air that can dry it. */
    private DryingPhase airing(List<DryingPhase> phases) {
        DryingPhase best = phases.get(0);
        double longest = 0;
        for (DryingPhase phase : phases) {
            boolean open = !phase.storage() && !phase.wrap().present() && !damp(phase);
            if (open && phase.duration() > longest) {
                longest = phase.duration();
                best = phase;
            }
        }
        return best;
    }

    /** The phase before storage, which a piece that is not ready is left in; the first where all is storage. */
    private static DryingPhase lastDrying(List<DryingPhase> phases) {
        DryingPhase last = phases.get(0);
        for (DryingPhase phase : phases) {
            last = phase.storage() ? last : phase;
        }
        return last;
    }

    /** Goes back to the end of drying and on from there until the piece is ready or the wait is over. */
    private void waitOn(DryingPhase phase, Waiting from, double start, double equilibrium, double readyExcess) {
        clock = from.clock;
        alcoholGone = from.alcoholGone;
        prepare(phase, from.grid, from.closedIn);
        solver.resume(from.state);
        following = true;
        DryingPhase on = phase.lasting(wait - clock);
        advance(on, from.grid, from.closedIn, start, equilibrium, readyExcess);
    }

    /** Where the drying ended. */
    private record Waiting(
            DryingGrid grid, boolean closedIn, double clock, double alcoholGone, DryingSolver.State state) {}

    private double reactionNumber(DryingPhase phase, double free, Opening opening, DryingGrid first) {
        RoomAir air = phase.air();
        double rate = filmRate(air);
        if (free == 0 || rate == 0) {
            return 0;
        }
        double diffusivity = Drying.poreDiffusivity(air.diffusivity(), input, parameters);
        double drop = (isotherm.film() - air.humidity()) * air.saturationDensity();
        DryingGrid grid = phase.opening().equals(opening)
                ? first
                : new DryingGrid(phase.opening(), resolution.cells(), resolution.grading());
        double stay = new RecedingFront(grid).meanStay(free, diffusivity, phase.surface(parameters), drop);
        return rate * reaction.waterPerMole() * stay;
    }

    /** k(T) with the factors of oil and order of mixing, mol/(kg s); 0 for a mix without fizz. */
    private double filmRate(RoomAir air) {
        if (input.capacity() == 0) {
            return 0;
        }
        double slowing =
                EarlyRates.slowing(input.oil(), input.acidLast(), parameters.oilFactor(), parameters.acidLastFactor());
        return parameters.filmRateAt(air.temperature()) * slowing;
    }

    private void prepare(DryingPhase phase, DryingGrid grid, boolean closedIn) {
        RoomAir air = phase.air();
        double saturation = air.saturationDensity();
        double vapour = Drying.poreDiffusivity(air.diffusivity(), input, parameters) * saturation;
        double surface = closedIn ? 0 : phase.surface(parameters) * saturation;
        solver.lay(grid, vapour, surface, filmRate(air));
        if (phase.room().isEmpty()) {
            solver.fixedRoom(air.humidity());
            return;
        }
        ClosedRoom room = phase.room().get();
        double capacity = room.volume() * saturation / room.pieces();
        if (clock == 0) {
            solver.room = air.humidity();
        }
        solver.closedRoom(
                capacity,
                capacity * room.airChanges(),
                air.humidity(),
                room.dehumidifier() / room.pieces(),
                room.setPoint(),
                ClosedRoom.RAMP);
    }

    /** Steps through a phase; false where the course ends with it. */
    private boolean advance(
            DryingPhase phase,
            DryingGrid grid,
            boolean closedIn,
            double start,
            double equilibrium,
            double readyExcess) {
        RoomAir air = phase.air();
        var front = input.alcohol().share() > 0 ? new RecedingFront(grid) : null;
        double scale = toMove(air, grid, start);
        double soakedWater =
                SOAKED * WATER_DENSITY * input.porosity() * grid.total + isotherm.filmContent() * grid.total;
        double end = clock + phase.duration();
        double next = Math.min(FIRST_STEP, phase.duration());
        double excess = start + solver.made - solver.lost - equilibrium;
        while (clock < end) {
            double dt = Math.min(next, end - clock);
            boolean settled = solver.step(dt);
            double error = settled ? dt * Math.abs(solver.fluxChange) / (resolution.tolerance() * scale) : 9;
            if (!settled || (error > 4 && dt > 1)) {
                if (settled) {
                    solver.undo();
                }
                next = dt * Math.max(0.1, 0.8 / Math.sqrt(error));
                if (!(next > 1e-6)) {
                    throw new IllegalStateException("the drying course does not settle at " + clock + " s");
                }
                continue;
            }
            double from = clock;
            clock = dt == end - from ? end : from + dt;
            next = dt * Math.min(2, 0.9 / Math.sqrt(Math.max(error, 0.01)));
            if (front != null) {
                alcoholGone = evaporate(front, dt, air, phase.surface(parameters));
            }
            double water = start + solver.made - solver.lost;
            double was = excess;
            excess = water - equilibrium;
            if (Double.isNaN(readyAt) && excess <= readyExcess && !closedIn) {
                readyAt = from + dt * (was - readyExcess) / (was - excess);
            }
            if (!following) {
                log.add(clock, water, meanExtent(grid), alcoholGone, solver.room);
            }
            if ((stopWhenReady || following) && !Double.isNaN(readyAt)) {
                return false;
            }
            if (phase.storage() && !following && water > soakedWater) {
                soaked = true;
                return false;
            }
        }
        return true;
    }

    /** Water this phase has to move, kg: what the step control measures errors against. */
    private double toMove(RoomAir air, DryingGrid grid, double start) {
        double here = start + solver.made - solver.lost;
        double there = isotherm.contentAt(air.humidity()) * grid.total;
        double least = air.humidity() < isotherm.film() ? 1e-3 : 0.1;
        return Math.max(Math.abs(here - there), least * start + 1e-9 * grid.total);
    }

    private double evaporate(RecedingFront front, double dt, RoomAir air, double surface) {
        double kelvin = air.temperature();
        Alcohol alcohol = input.alcohol();
        return front.advance(
                alcoholGone,
                dt,
                alcohol.share() * input.rhoDry(),
                Drying.poreDiffusivity(alcohol.diffusivity(kelvin), input, parameters),
                surface,
                alcohol.vapourDensity(input.freeWater(), kelvin));
    }

    private double meanExtent(DryingGrid grid) {
        double sum = 0;
        for (int i = 0; i < grid.cells; i++) {
            sum += grid.volume[i] * solver.extent[i];
        }
        return sum / grid.total;
    }

    private double balanceError(DryingGrid grid, double start) {
        double sum = 0;
        for (int i = 0; i < grid.cells; i++) {
            sum += grid.volume[i] * solver.water[i];
        }
        return start > 0 ? Math.abs(sum - (start + solver.made - solver.lost)) / start : 0;
    }
}
