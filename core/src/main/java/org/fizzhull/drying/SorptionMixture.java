package org.fizzhull.drying;

import java.util.Arrays;

/**
 * Water held by the sorbents of a dry mix at a water activity, as the sum of their GAB isotherms,
 * {@code X = sum f_i Xm_i C_i K_i a / ((1 - K_i a)(1 - K_i a + C_i K_i a))}, kg of water per kg of dry mix.
 *
 * <p>GAB: Guggenheim, Anderson, de Boer [from memory]. That the sum of the parts is the sorption of a powder blend
 * below mutual deliquescence: Dalton and Hancock (1997), Int. J. Pharm. 156, 143 [abstract seen]. Valid for activities
 * from 0 to the film activity, at most 0.95. Glycerin as an ideal solution is the case C = K = 1, Xm = M_water /
 * M_glycerin.
 */
public final class SorptionMixture {
    /** Moles ratio of water and glycerin, kg/kg: 18.015 / 92.09. */
    public static final double GLYCERIN_MONOLAYER = 18.015 / 92.09;

    private static final SorptionMixture NONE =
            new SorptionMixture(new double[0], new double[0], new double[0], new double[0]);

    private final double[] fraction;
    private final double[] monolayer;
    private final double[] strength;
    private final double[] multilayer;

    /**
     * @param fraction kg of each sorbent, free of water, per kg of dry mix
     * @param monolayer Xm, kg/kg
     * @param strength C, no unit
     * @param multilayer K, no unit, at most 1
     */
    public SorptionMixture(double[] fraction, double[] monolayer, double[] strength, double[] multilayer) {
        int n = fraction.length;
        if (monolayer.length != n || strength.length != n || multilayer.length != n) {
            throw new IllegalArgumentException("sorption constants need equal columns");
        }
        for (int i = 0; i < n; i++) {
            boolean sound = fraction[i] >= 0
                    && fraction[i] <= 1
                    && monolayer[i] >= 0
                    && strength[i] > 0
                    && multilayer[i] > 0
                    && multilayer[i] <= 1;
            if (!sound) {
                throw new IllegalArgumentException("sorbent " + i + " has constants out of range");
            }
        }
        this.fraction = fraction.clone();
        this.monolayer = monolayer.clone();
        this.strength = strength.clone();
        this.multilayer = multilayer.clone();
    }

    /** A mix that holds no water but its films. */
    public static SorptionMixture none() {
        return NONE;
    }

    /** One sorbent: its share of the dry mix and its GAB constants. */
    public static SorptionMixture of(double fraction, double monolayer, double strength, double multilayer) {
        return new SorptionMixture(
                new double[] {fraction}, new double[] {monolayer}, new double[] {strength}, new double[] {multilayer});
    }

    /** This mixture with one more sorbent. */
    public SorptionMixture and(double share, double xm, double c, double k) {
        return new SorptionMixture(
                longer(fraction, share), longer(monolayer, xm), longer(strength, c), longer(multilayer, k));
    }

    /** Water held at activity a (0 to 0.95), kg per kg of dry mix. */
    public double water(double a) {
        double sum = 0;
        for (int i = 0; i < fraction.length; i++) {
            double ka = multilayer[i] * a;
            sum += fraction[i] * monolayer[i] * strength[i] * ka / ((1 - ka) * (1 - ka + strength[i] * ka));
        }
        return sum;
    }

    private static double[] longer(double[] column, double value) {
        double[] next = Arrays.copyOf(column, column.length + 1);
        next[column.length] = value;
        return next;
    }
}
