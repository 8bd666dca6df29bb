package org.fizzhull.pressing.powder;

import org.fizzhull.quantity.check.Given;

/**
 * One draw of the errors of ingredient densities, in standard deviations of each ingredient's own spread. Half of the
 * variance is shared by all (grade of the bags, way of filling), half belongs to each ingredient (assumed,
 * docs/physics/packing.md, 1):
 *
 * <pre>
 * score of powder i = sqrt(1/2) (shared + own_i)
 * </pre>
 *
 * <p>A score of 0 leaves the table's value. Used by {@link Powders#with}. Immutable.
 */
public final class DensityScores {
    /** One standard deviation of the ratio of tapped to loose density, without unit (assumed). */
    public static final double RATIO_SIGMA = 0.07;

    /** The table's values. */
    public static final DensityScores NONE = shared(0, 0, 0);

    /** Weight of each half of the variance. */
    private static final double HALF = Math.sqrt(0.5);
    /** Shared scores, standard normal. */
    private final double trueShared;

    private final double looseShared;
    private final double ratioShared;
    /** Own scores by powder, standard normal; empty where all are 0. */
    private final double[] trueOwn;

    private final double[] looseOwn;
    private final double[] ratioOwn;

    private DensityScores(double t, double l, double r, double[] tOwn, double[] lOwn, double[] rOwn) {
        this.trueShared = t;
        this.looseShared = l;
        this.ratioShared = r;
        this.trueOwn = tOwn;
        this.looseOwn = lOwn;
        this.ratioOwn = rOwn;
    }

    /**
     * {@return only the shared half of each error, standard normal scores; the own halves at their median}
     *
     * @param trueDensity score of the true densities
     * @param looseDensity score of the loose densities
     * @param tappedRatio score of the ratios of tapped to loose density
     */
    public static DensityScores shared(double trueDensity, double looseDensity, double tappedRatio) {
        Given.finite("true density", trueDensity);
        Given.finite("loose density", looseDensity);
        Given.finite("tapped ratio", tappedRatio);
        return new DensityScores(trueDensity, looseDensity, tappedRatio, new double[0], new double[0], new double[0]);
    }

    /**
     * {@return the same with the own half of each powder, standard normal scores in the order of {@code
     * Blend.powders()}}
     *
     * @param trueDensity score of each powder's true density
     * @param looseDensity score of each powder's loose density
     * @param tappedRatio score of each powder's ratio of tapped to loose density
     */
    public DensityScores withOwn(double[] trueDensity, double[] looseDensity, double[] tappedRatio) {
        return new DensityScores(
                trueShared, looseShared, ratioShared, trueDensity.clone(), looseDensity.clone(), tappedRatio.clone());
    }

    /** Score of the true density of powder i. */
    double trueDensity(int i) {
        return HALF * (trueShared + own(trueOwn, i));
    }

    /** Score of the loose density of powder i. */
    double looseDensity(int i) {
        return HALF * (looseShared + own(looseOwn, i));
    }

    /** Score of the ratio of tapped to loose density of powder i. */
    double tappedRatio(int i) {
        return HALF * (ratioShared + own(ratioOwn, i));
    }

    private static double own(double[] scores, int i) {
        return scores.length == 0 ? 0 : scores[i];
    }
}
