package org.fizzhull.drying.mix;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.quantity.Refusal;

/**
 * Water held by the sorbents of a dry mix at a water activity, as the sum of their GAB isotherms,
 * {@code X = sum f_i Xm_i C_i K_i a / ((1 - K_i a)(1 - K_i a + C_i K_i a))}, kg of water per kg of dry mix.
 *
 * <p>GAB: Guggenheim, Anderson, de Boer [from memory]. That the sum of the parts is the sorption of a powder blend
 * below mutual deliquescence: Dalton and Hancock (1997), Int. J. Pharm. 156, 143 [abstract seen]. Valid for activities
 * from 0 to the film activity, at most 0.95. Glycerin as an ideal solution is the case C = K = 1, Xm = M_water /
 * M_glycerin.
 *
 * <p>f_i share of the sorbent (kg per kg of dry mix), Xm_i monolayer (kg/kg), C_i and K_i no unit, a water activity.
 * Constants and their errors of 15 to 50 %: docs/physics/drying.md, 2. Used by
 * {@link org.fizzhull.drying.solver.WaterActivity}, which tabulates it. Immutable; each method returns a changed copy.
 */
public final class SorptionMixture {
    /** Mass of water per mass of glycerin (92.09 g/mol), mole by mole, kg/kg. */
    public static final double GLYCERIN_MONOLAYER = PhysicalConstants.WATER_MOLAR_MASS / 0.09209;

    /** No sorbents. */
    private static final SorptionMixture NONE =
            new SorptionMixture(new double[0], new double[0], new double[0], new double[0], 0);

    /** f_i, kg of sorbent per kg of dry mix; the powders first. */
    private final double[] fraction;
    /** Xm_i, kg of water per kg of sorbent. */
    private final double[] monolayer;
    /** C_i, no unit. */
    private final double[] strength;
    /** K_i, no unit, at most 1. */
    private final double[] multilayer;

    /** The first so many were bought as powders in equilibrium with air; the rest came without water from a bottle. */
    private final int powders;

    private SorptionMixture(
            double[] fraction, double[] monolayer, double[] strength, double[] multilayer, int powders) {
        for (int i = 0; i < fraction.length; i++) {
            boolean sound = fraction[i] >= 0
                    && fraction[i] <= 1
                    && monolayer[i] >= 0
                    && strength[i] > 0
                    && multilayer[i] > 0
                    && multilayer[i] <= 1;
            if (fraction[i] > 1) {
                throw new Refusal(
                        "out-of-range",
                        "what holds water per dry mix",
                        fraction[i] + " kg/kg",
                        "0 to 1 kg/kg",
                        "More glycerin than powder is no mix that dries in one piece: check the amounts under wet.");
            }
            if (!sound) {
                throw new IllegalArgumentException("sorbent " + (i + 1) + " has constants out of range");
            }
        }
        this.fraction = fraction;
        this.monolayer = monolayer;
        this.strength = strength;
        this.multilayer = multilayer;
        this.powders = powders;
    }

    /** {@return a mix that holds no water but its films} */
    public static SorptionMixture none() {
        return NONE;
    }

    /**
     * {@return one powder; see {@link #and}}
     *
     * @param share mass of the powder over that of the dry mix
     * @param xm monolayer Xm, kg of water per kg of powder
     * @param c GAB constant C
     * @param k GAB constant K
     */
    public static SorptionMixture of(double share, double xm, double c, double k) {
        return NONE.and(share, xm, c, k);
    }

    /**
     * {@return this mixture with one more powder, which brings along the water it held in the air where it was bought}
     *
     * @param share kg of it, free of water, per kg of dry mix
     * @param xm monolayer, kg/kg
     * @param c C, no unit
     * @param k K, no unit, at most 1
     * @throws Refusal {@code out-of-range} for a share above 1
     * @throws IllegalArgumentException for constants out of range
     */
    public SorptionMixture and(double share, double xm, double c, double k) {
        return with(powders, powders + 1, share, xm, c, k);
    }

    /**
     * {@return this mixture with a humectant that comes without water, glycerin for example; constants as in {@link
     * #and}}
     *
     * @param share mass of the humectant over that of the dry mix
     * @param xm monolayer Xm, kg of water per kg of humectant
     * @param c GAB constant C
     * @param k GAB constant K
     */
    public SorptionMixture andLiquid(double share, double xm, double c, double k) {
        return with(fraction.length, powders, share, xm, c, k);
    }

    /**
     * {@return the water held at activity a (0 to 0.95), kg per kg of dry mix}
     *
     * @param a water activity, 0 to 0.95
     */
    public double water(double a) {
        return sum(a, fraction.length);
    }

    /**
     * {@return the water the powders brought along from air of humidity a, kg per kg of dry mix}
     *
     * @param a relative humidity of the air where the powders were kept, 0 to 0.95
     */
    public double waterAsBought(double a) {
        return sum(a, powders);
    }

    /** Water held by the first so many sorbents, kg per kg of dry mix. */
    private double sum(double a, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double ka = multilayer[i] * a;
            sum += fraction[i] * monolayer[i] * strength[i] * ka / ((1 - ka) * (1 - ka + strength[i] * ka));
        }
        return sum;
    }

    /** The mixture with one sorbent more at a place, of which so many are powders. */
    private SorptionMixture with(int place, int powderCount, double share, double xm, double c, double k) {
        return new SorptionMixture(
                inserted(fraction, place, share),
                inserted(monolayer, place, xm),
                inserted(strength, place, c),
                inserted(multilayer, place, k),
                powderCount);
    }

    /** A column with one value more at a place. */
    private static double[] inserted(double[] column, int place, double value) {
        double[] next = new double[column.length + 1];
        System.arraycopy(column, 0, next, 0, place);
        next[place] = value;
        System.arraycopy(column, place, next, place + 1, column.length - place);
        return next;
    }
}
