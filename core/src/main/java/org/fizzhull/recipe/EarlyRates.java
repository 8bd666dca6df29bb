package org.fizzhull.recipe;

import org.fizzhull.evidence.PhysicalConstants;

/**
 * Standard numbers of drying and of the reaction between mixing and bath (docs/physics/drying.md, 7), shared
 * by the mix in the bowl (pressing) and the piece on the rack (drying). All but the transfer are assumed; no published
 * rate of the reaction in such mixes was found.
 */
public final class EarlyRates {
    /** Y: CO2 that goes off when liquid meets powder, mol per kg of water; x/÷2. */
    public static final double PROMPT_YIELD = 7;

    /** k at 25 C: slow reaction in the films, mol of CO2 per kg of free water and second; x/÷4. */
    public static final double FILM_RATE = 6e-5;

    /** p: how the slow reaction fades with what is left. */
    public static final double ORDER = 1;

    /** h: water that each citrate binds as it crystallises, 0 to 2. */
    public static final double HYDRATE_WATERS = 1;

    /** Factor on k where oil coats the grains. */
    public static final double OIL_FACTOR = 0.7;

    /** Factor on k where the acid goes in last. */
    public static final double ACID_LAST_FACTOR = 0.7;

    /** a_film: water activity of the film solution; 0.72 +- 0.08. */
    public static final double FILM_ACTIVITY = 0.72;

    /** h_m: vapour from the skin to still air, m/s; x/÷1.5 [computed for a 65 mm ball]. */
    public static final double SKIN_TRANSFER = 2.5e-3;

    /** Oil and butter that coat all grains, kg per kg of dry powder. */
    private static final double COATING = 0.02;

    private EarlyRates() {}

    /**
     * {@return the factor on k of a mix: less oil than 2 % coats a share of the grains}
     *
     * @param oil oils and butters, kg per kg of dry powder
     * @param acidLast whether the acid goes in last
     * @param oilFactor factor of full coating
     * @param acidLastFactor factor of the order of mixing
     */
    public static double slowing(double oil, boolean acidLast, double oilFactor, double acidLastFactor) {
        double coated = Math.min(1, oil / COATING);
        return (1 - (1 - oilFactor) * coated) * (acidLast ? acidLastFactor : 1);
    }

    /**
     * {@return the free water made, kg per mol of CO2, with h of three waters bound}
     *
     * @param hydrateWaters waters bound per citrate, h, 0 to 2
     */
    public static double waterPerMole(double hydrateWaters) {
        return PhysicalConstants.WATER_MOLAR_MASS * (1 - hydrateWaters / 3);
    }
}
