package org.fizzhull.fizz;

import org.fizzhull.recipe.Additives;

/**
 * What oil, foaming powder and starch do to a fizzing surface; all assumed (docs/physics/fizz.md, 5). Shares are per kg
 * of dry powder.
 *
 * <ul>
 *   <li>Speed: {@code factor^(share / reference share)}, the references 5 % of oil, 5 % of surfactant, 10 % of starch.
 *       With 0.6 at 5 % of oil the law gives 0.90 at 1 %.
 *   <li>Oil makes the surface shed water: bubbles grow to 1.5 times their size above 2 %: between no change, where pits
 *       hold them, and the doubling of Fritz (1935) from 20 to 40 degrees. Between 2 and 3 % the
 *       diameter grows evenly in its logarithm, so that a drop of oil never makes the forecast jump.
 *   <li>Surfactant makes bubbles small, 0.63 times, and lets foam cling, 1.6 times as thick, both at 5 %;
 *       below it in proportion to the share in the logarithm, above it no more.
 * </ul>
 */
public final class MixEffects {
    /** Share of oil or surfactant up to which effects are assumed; beyond, speeds are extrapolated. */
    public static final double KNOWN_SHARE = 0.05;

    /** Share of starch to which {@code starchFactor} belongs. */
    private static final double STARCH_SHARE = 0.10;
    /** Share of oil from which bubbles grow (assumed). */
    private static final double OILY = 0.02;
    /** Share of oil from which they grow no more (assumed). */
    private static final double WHOLLY_OILY = 0.03;
    /** Diameter of bubbles on an oily face over that on a plain one. */
    private static final double OIL_BUBBLES = 1.2 / 0.8;
    /** Diameter of bubbles with 5 % of foaming powder over that without. */
    private static final double FOAM_BUBBLES = 0.5 / 0.8;
    /** Layer of clinging gas with 5 % of foaming powder over that without, in bubble diameters. */
    private static final double FOAM_LAYER = 1.6;

    private MixEffects() {}

    /** The parameters of the mix from those of plain acid and bicarbonate. */
    static FizzParameters of(FizzParameters p, Additives mix) {
        double foam = Math.min(1, mix.surfactant() / KNOWN_SHARE);
        return new FizzParameters(
                p.recession38() * speed(p, mix),
                p.porositySlope(),
                p.activationEnergy(),
                p.reactiveExponent(),
                p.bubbleDiameter() * bubbles(mix),
                p.layerRatio() * Math.pow(FOAM_LAYER, foam),
                p.undersideExcess(),
                p.gasShare(),
                p.oilFactor(),
                p.surfactantFactor(),
                p.starchFactor());
    }

    /**
     * {@return the recession of the mix over that of plain acid and bicarbonate}
     *
     * @param p parameters of fizzing
     * @param mix additives of the mix, kg per kg of dry powder
     */
    public static double speed(FizzParameters p, Additives mix) {
        return Math.pow(p.oilFactor(), mix.oil() / KNOWN_SHARE)
                * Math.pow(p.surfactantFactor(), mix.surfactant() / KNOWN_SHARE)
                * Math.pow(p.starchFactor(), mix.starch() / STARCH_SHARE);
    }

    /**
     * {@return the diameter of the clinging bubbles of the mix over that of plain acid and bicarbonate}
     *
     * @param mix additives of the mix, kg per kg of dry powder
     */
    public static double bubbles(Additives mix) {
        double oily = Math.max(0, Math.min(1, (mix.oil() - OILY) / (WHOLLY_OILY - OILY)));
        double foam = Math.min(1, mix.surfactant() / KNOWN_SHARE);
        return Math.pow(OIL_BUBBLES, oily) * Math.pow(FOAM_BUBBLES, foam);
    }
}
