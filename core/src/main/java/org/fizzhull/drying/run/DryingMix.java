package org.fizzhull.drying.run;

import java.util.List;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.solver.AcidHydration;
import org.fizzhull.drying.solver.DryingGrid;
import org.fizzhull.drying.solver.FilmReaction;
import org.fizzhull.drying.solver.RecedingFront;
import org.fizzhull.drying.solver.WaterActivity;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.powder.EarlyRates;

/**
 * A mix as it dries: its isotherm, its slow reaction, what it starts with, and which air can dry it. SI.
 *
 * <p>Water is counted per volume of the piece (kg/m3) once drying has begun, per kg of dry mix before. Equations:
 * docs/physics/drying.md, 2 and 7. Immutable.
 *
 * <p>Everything here is fixed by the mix and the parameters of a draw; places, air and time come from the phases. Water
 * at the start, kg per kg of dry mix: that of the liquid plus what the prompt reaction makes, shared out with the
 * sorbents at once (docs/physics/drying.md, 6).
 */
final class DryingMix {
    final DryingInput input;
    final DryingParameters parameters;
    final WaterActivity isotherm;
    final FilmReaction reaction;
    final AcidHydration hydration;

    /** Water of hydrates that moves, kg per kg of dry mix. */
    private final double hydrate;

    /** Prepares the isotherm and the reaction of a draw. */
    DryingMix(DryingInput input, DryingParameters parameters) {
        this.input = input;
        this.parameters = parameters;
        hydrate = parameters.hydrateShare() * input.hydrates().gives();
        isotherm = new WaterActivity(input.sorbents(), input.rhoDry(), Drying.filmActivity(input, parameters), hydrate);
        hydration = new AcidHydration(input.hydrates().takes(), parameters.acidHydration(), isotherm);
        reaction = new FilmReaction(input.capacity(), parameters.reactionOrder(), parameters.hydrateWaters());
    }

    /**
     * CO2 made when the liquid meets the powders, mol per kg of dry mix: the prompt yield times its water, at most all
     * there is.
     */
    double prompt() {
        return Math.min(parameters.promptYield() * input.freeWater(), input.capacity());
    }

    /** Water after the prompt reaction, that of the powders left out, kg per kg of dry mix. */
    double wet() {
        return input.freeWater() + prompt() * reaction.waterPerMole();
    }

    /** Powders as bought, salts in their higher hydrate, humectants without water, plus all the water, kg/m3. */
    double startContent() {
        double a = Math.min(parameters.startActivity(), isotherm.film());
        // what the isotherm counts at this activity but was not in the powders: humectants come without water
        double bottled = input.sorbents().water(a) - input.sorbents().waterAsBought(a);
        double bound = hydrate * (1 - isotherm.hydrated(a));
        return isotherm.contentAt(a) + (wet() - bottled + bound) * input.rhoDry();
    }

    /** Whether this air can never dry this mix; a dehumidifier in a closed room may. */
    boolean damp(DryingPhase phase) {
        boolean helped = phase.room().isPresent() && phase.room().get().dehumidifier() > 0;
        return phase.air().humidity() >= isotherm.film() && !helped;
    }

    /** The phase meant for drying: the longest one that is open, not storage, and in air that can dry it. */
    DryingPhase airing(List<DryingPhase> phases) {
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

    /** k(T) with the factors of oil and order of mixing, mol/(kg s); 0 for a mix without fizz. */
    double filmRate(RoomAir air) {
        if (input.capacity() == 0) {
            return 0;
        }
        double slowing =
                EarlyRates.slowing(input.oil(), input.acidLast(), parameters.oilFactor(), parameters.acidLastFactor());
        return parameters.filmRateAt(air.temperature()) * slowing;
    }

    /** Effective diffusivity through the pores of what has this one in air, m2/s. */
    double poreDiffusivity(double inAir) {
        return Drying.poreDiffusivity(inAir, input, parameters);
    }

    /**
     * The reaction number of a phase, see {@link DryingCourse#reactionNumber}.
     *
     * @param grid cells from the faces that are open in this phase
     */
    double reactionNumber(DryingPhase phase, DryingGrid grid) {
        RoomAir air = phase.air();
        double free = Math.max(0, startContent() - isotherm.filmContent());
        double rate = filmRate(air);
        if (free == 0 || rate == 0) {
            return 0;
        }
        // Da: the rate, the water made with each mole, and the mean stay of the free water by the receding front
        double drop = (isotherm.film() - air.humidity()) * air.saturationDensity();
        double stay = new RecedingFront(grid)
                .meanStay(free, poreDiffusivity(air.diffusivity()), Drying.surface(phase, parameters), drop);
        return rate * reaction.waterPerMole() * stay;
    }
}
