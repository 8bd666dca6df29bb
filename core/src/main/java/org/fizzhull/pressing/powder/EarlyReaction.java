package org.fizzhull.pressing.powder;

import org.fizzhull.recipe.Blend;

/**
 * Fizz lost while the mix waits in the bowl (docs/physics/drying.md, 7): a prompt step on all the water, then a slow
 * reaction in the water films. Rates have the widest prior of all; results are for bands, not digits.
 *
 * <pre>  at once: min(Y w, xi);   then dxi/dt = k w (1 - xi/xi_max)^p</pre>
 *
 * <p>Y prompt yield (mol of CO2 per kg of water), w free water (kg per kg of dry powder), xi carbon dioxide (mol/kg), k
 * rate of the film reaction (mol per kg of water and second), p order. Error: the working time within a factor of 2 to
 * 4. Left out: heat of the reaction, mixing that is uneven. The same reaction on the drying rack is in {@code drying}.
 * Immutable.
 *
 * @param promptYield Y, mol CO2 per kg of water, 0 or more
 * @param filmRate k at the bowl's temperature, factors for oil and acid-last included, mol per kg of water and second
 * @param order p, above 0
 * @param waterPerMole free water made, kg per mol CO2
 */
public record EarlyReaction(double promptYield, double filmRate, double order, double waterPerMole) {
    /**
     * Share of the fizz that a mix may lose while it is being pressed; sets the working time (assumed,
     * docs/physics/packing.md, 8).
     */
    private static final double MAY_LOSE = 0.02;

    /**
     * Share of the fizz that may go off as the liquid goes in; above it the mix foams in the bowl and no press holds
     * it. Makers put in 0.3 to 2 % of water and call a mix spoiled that foams while it is stirred, at some 4 % (common
     * practice, no source): with Y = 7 mol/kg and a usual capacity that is about 5 % of the fizz.
     */
    public static final double FOAMS = 0.05;

    /**
     * Checks the rates.
     *
     * @param promptYield Y, mol CO2 per kg of water
     * @param filmRate k at the bowl's temperature, factors for oil and acid-last included, mol per kg of water and
     *     second
     * @param order p
     * @param waterPerMole free water made, kg per mol CO2
     * @throws IllegalArgumentException for a negative value, an order of 0 or NaN
     */
    public EarlyReaction {
        if (!(promptYield >= 0 && filmRate >= 0 && order > 0 && waterPerMole >= 0)) {
            throw new IllegalArgumentException("reaction rates out of range");
        }
    }

    /**
     * {@return the defaults for a blend: oil and acid put in last slow the film}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public static EarlyReaction standard(Blend blend) {
        double slowing = EarlyRates.slowing(
                Math.min(blend.liquid().staying(), blend.oil()),
                blend.recipe().acidLast(),
                EarlyRates.OIL_FACTOR,
                EarlyRates.ACID_LAST_FACTOR);
        return new EarlyReaction(
                EarlyRates.PROMPT_YIELD,
                EarlyRates.FILM_RATE * slowing,
                EarlyRates.ORDER,
                EarlyRates.waterPerMole(EarlyRates.HYDRATE_WATERS));
    }

    /**
     * {@return the same with both rates multiplied, for one draw or the ends of a band}
     *
     * @param yieldFactor factor on the prompt yield, 0 or more
     * @param rateFactor factor on the rate of the film reaction, 0 or more
     */
    public EarlyReaction scaled(double yieldFactor, double rateFactor) {
        return new EarlyReaction(promptYield * yieldFactor, filmRate * rateFactor, order, waterPerMole);
    }

    /**
     * {@return the CO2 gone at once, mol per kg of dry powder}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public double prompt(Blend blend) {
        return Math.min(promptYield * blend.liquid().water(), blend.moles().gas());
    }

    /**
     * {@return the share of the fizz that goes off as the liquid goes in, Y w/xi, 1 at most; 0 where nothing reacts}
     *
     * @param water w, kg of free water per kg of dry powder
     * @param gas xi, most carbon dioxide, mol per kg of dry powder
     */
    public double promptShare(double water, double gas) {
        return gas == 0 ? 0 : Math.min(1, promptYield * water / gas);
    }

    /**
     * {@return the time until 2 % of the fizz is gone, s; 0 where the prompt step takes that much at once, infinite where
     * nothing reacts} The time that powders need to soak up water from the films is neglected, so it errs to the short side.
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public double workingTime(Blend blend) {
        double most = blend.moles().gas();
        double gone = prompt(blend);
        if (most == 0 || blend.liquid().water() == 0) {
            return Double.POSITIVE_INFINITY;
        }
        if (gone >= MAY_LOSE * most) {
            return 0;
        }
        double water = blend.liquid().water() + waterPerMole * gone;
        double rate = filmRate * water / most;
        double from = 1 - gone / most;
        double to = 1 - MAY_LOSE;
        // integral of d(share left)/(share left)^p
        double reach =
                order == 1 ? Math.log(from / to) : (Math.pow(to, 1 - order) - Math.pow(from, 1 - order)) / (order - 1);
        return reach / rate;
    }

    /**
     * {@return the Damkoehler number Da = k (water per mole) tau: the rate at which the film reaction makes water over the rate
     * at which the room removes it; from 1 on the piece never dries}
     *
     * @param dryingTime tau, mean stay of the water in the piece, s
     */
    public double reactionNumber(double dryingTime) {
        return filmRate * waterPerMole * dryingTime;
    }
}
