package org.fizzhull.pressing.powder;

import org.fizzhull.evidence.published.PhysicalConstants;

/**
 * Standard values of the reaction between mixing and bath, and of the drying that competes with it (docs/physics/drying.md,
 * 7). They stand here, below both users, since the mix in the bowl ({@link EarlyReaction}) and the piece on the rack
 * ({@code drying}) must take the same numbers.
 *
 * <pre>
 * prompt  xi_0 = min(Y w_water, xi_max)                     mol of CO2 per kg of dry powder
 * film    dxi/dt = k s_oil s_acidlast w_free (1 - xi/xi_max)^p
 * water   0.018015 (1 - h/3) kg of free water for each mol of CO2
 * </pre>
 *
 * w_water water as mixed, w_free free water, both kg per kg of dry powder; xi_max the gas that the mix can give, mol/kg.
 * All but the skin transfer are assumed, since no published rate of the reaction in such mixes was found; "x/÷ 2" is one
 * standard deviation as a factor. The forecast draws around them (docs/physics/uncertainty.md, 2).
 */
public final class EarlyRates {
    /**
     * Y: CO2 set free as the liquid meets the powder, mol per kg of water; x/÷ 2. Three for each trisodium citrate that the
     * water can dissolve, 2.2 mol/kg (from memory), rounded up.
     */
    public static final double PROMPT_YIELD = 7;

    /** k at 25 C: rate of the slow reaction in the films between grains, mol of CO2 per kg of free water and second; x/÷ 4. */
    public static final double FILM_RATE = 6e-5;

    /** p: order of the slow reaction in the share of gas still to come, without unit; 2/3 to 2. */
    public static final double ORDER = 1;

    /** h: molecules of water that each citrate binds as it crystallises, 0 to 2; three are formed with it. */
    public static final double HYDRATE_WATERS = 1;

    /** s_oil: factor on k where oil coats all grains, 0.3 to 1. */
    public static final double OIL_FACTOR = 0.7;

    /** s_acidlast: factor on k where the acid goes in after the liquids, 0.3 to 1. */
    public static final double ACID_LAST_FACTOR = 0.7;

    /**
     * a_film: water activity of the film solution, 0.72 +- 0.08; Ross's product of citric acid 0.75 and bicarbonate 0.96
     * (docs/physics/drying.md, 2).
     */
    public static final double FILM_ACTIVITY = 0.72;

    /**
     * h_m: mass transfer coefficient of water vapour from the surface to still air, m/s; x/÷ 1.5. Computed for a 65 mm ball
     * from free convection (docs/physics/drying.md, 5).
     */
    public static final double SKIN_TRANSFER = 2.5e-3;

    /** Oil and butter that are enough to coat all grains, kg per kg of dry powder (assumed). */
    private static final double COATING = 0.02;

    private EarlyRates() {}

    /**
     * {@return s_oil s_acidlast, the factor on k of a mix, 0 to 1; less oil than 2 % of the powder coats grains in proportion}
     *
     * @param oil oils and butters, kg per kg of dry powder, 0 or more
     * @param acidLast whether the acid goes in after the liquids
     * @param oilFactor s_oil where all grains are coated, as {@link #OIL_FACTOR} or a draw around it
     * @param acidLastFactor s_acidlast, as {@link #ACID_LAST_FACTOR} or a draw around it
     */
    public static double slowing(double oil, boolean acidLast, double oilFactor, double acidLastFactor) {
        double coated = Math.min(1, oil / COATING);
        return (1 - (1 - oilFactor) * coated) * (acidLast ? acidLastFactor : 1);
    }

    /**
     * {@return the free water that the reaction leaves, kg per mol of CO2: each mol forms one mol of water, of which the
     * crystallising citrate binds h of every three}
     *
     * @param hydrateWaters h, water bound per citrate, 0 to 2
     */
    public static double waterPerMole(double hydrateWaters) {
        return PhysicalConstants.WATER_MOLAR_MASS * (1 - hydrateWaters / 3);
    }
}
