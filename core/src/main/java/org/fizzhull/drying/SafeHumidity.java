package org.fizzhull.drying;

import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;

/**
 * Air in which a dry piece keeps. Its films stay solid below the film activity; the margin covers how badly that is
 * known. For a plain mix it is 50 % RH, ± 5 % (docs/physics/drying.md, 9).
 *
 * @param below relative humidity to stay below
 * @param above relative humidity to stay above, 0 for none: drier air takes the water of hydrated salts into the mix
 */
public record SafeHumidity(double below, double above) {
    /** a_film 0.72 less 50 %: 2.75 standard uncertainties of a_film. */
    private static final double MARGIN = 0.22;

    /** Driest air that is told, relative humidity (judgement). */
    private static final double LEAST = 0.05;

    /**
     * {@return the safe humidity of a mix; where hydrate and salts leave no range, {@code above} is at least {@code
     * below}}
     *
     * @param input the mix as drying sees it
     * @param parameters uncertain parameters of drying
     */
    public static SafeHumidity of(DryingInput input, DryingParameters parameters) {
        double film = Drying.filmActivity(input, parameters);
        Hydrates hydrates = input.hydrates();
        double most = hydrates.takes() > 0 ? Hydrates.TAKING_HUMIDITY : 1;
        double below = Math.max(LEAST, Math.min(most, film - MARGIN));
        return new SafeHumidity(below, hydrates.gives() > 0 ? Math.min(Hydrates.GIVING_HUMIDITY, film) : 0);
    }

    /** {@return whether any air suits the mix} */
    public boolean possible() {
        return above < below;
    }
}
