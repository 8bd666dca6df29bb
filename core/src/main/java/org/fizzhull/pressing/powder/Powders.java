package org.fizzhull.pressing.powder;

import java.util.Arrays;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Property;

/**
 * The powders of a blend as a packing model takes them (docs/physics/packing.md, 2 and 4):
 *
 * <pre>
 * beta = (10/9) phi_tapped                 densest packing of one powder alone
 * K0 = phi_loose/(beta - phi_loose)        its compaction index as poured
 * 1/K(P) = sum y_i/(K0_i (1 + P/(s_i Pk))) index of the mix under pressure
 * </pre>
 *
 * phi solid fraction, y_i share of the solid volume, s_i share of the press scale Pk ({@link PowderClass}). Fines under 10 um
 * with a known oil absorption take beta = (10/9) times the solid fraction at the end point of that test and K0 = 1.5,
 * since their aerated loose densities mislead. All of it is assumed and untested as a whole.
 *
 * <p>Arrays have one entry a powder, in the order of {@code Blend.powders()}. Immutable; the size effects are worked out once
 * and shared by all draws ({@link #with}).
 */
public final class Powders {
    /** Compaction index of tapping, K = 9 (de Larrard 1999, from memory). */
    static final double TAPPED_INDEX = 9;

    /** K0 of fines that pack by their oil absorption (assumed). */
    private static final double FINE_INDEX = 1.5;
    /** Density of linseed oil, kg/m3 (docs/physics/packing.md, 2). */
    private static final double LINSEED_OIL = 930;
    /** Largest loose solid fraction of a draw: the densest lattice of equal spheres. */
    private static final double MOST_LOOSE = 0.74;

    /** Largest beta of a draw (assumed). */
    private static final double MOST_BETA = 0.90;
    /** Smallest ratio of tapped to loose density of a draw (assumed). */
    private static final double LEAST_RATIO = 1.02;
    /** Relative spread from which a true density is drawn lognormal. */
    private static final double WIDE = 0.2;
    /** Newton steps at most. */
    private static final int MOST_STEPS = 100;

    /** y, share of the solid volume; sums to 1. */
    final double[] share;
    /** beta, densest packing of each alone, 0 to 1. */
    final double[] beta;
    /** K0, compaction index of each as poured. */
    final double[] index;
    /** s, press scale of each over that of free-flowing powders. */
    final double[] softness;

    /** Grain sizes and how they disturb one another. */
    final SizeEffects sizes;
    /** Of the mix, kg/m3. */
    private final double trueDensity;
    /** K0 of the mix. */
    private final double looseIndex;
    /** Surface mean diameter, m. */
    private final double sauterDiameter;

    private Powders(
            double[] share, double[] beta, double[] index, double[] softness, SizeEffects sizes, double trueDensity) {
        this.share = share;
        this.beta = beta;
        this.index = index;
        this.softness = softness;
        this.sizes = sizes;
        this.trueDensity = trueDensity;
        double inverse = 0;
        double surface = 0;
        for (int i = 0; i < share.length; i++) {
            inverse += share[i] / index[i];
            surface += share[i] / sizes.diameter[i];
        }
        this.looseIndex = 1 / inverse;
        this.sauterDiameter = 1 / surface;
    }

    /**
     * {@return powders given by their numbers, all free-flowing; for checks against published mixes}
     *
     * @param share y, share of the solid volume, sums to 1
     * @param diameter grain size, m, above 0
     * @param beta densest packing of each alone, above 0, at most 1
     * @param index K0 of each, above 0
     * @param trueDensity of the mix, kg/m3, above 0
     * @throws IllegalArgumentException for columns of different length, or a value outside its range
     */
    public static Powders of(double[] share, double[] diameter, double[] beta, double[] index, double trueDensity) {
        int n = share.length;
        if (n == 0 || diameter.length != n || beta.length != n || index.length != n || !(trueDensity > 0)) {
            throw new IllegalArgumentException("powders need equal columns and a true density above 0");
        }
        double sum = 0;
        for (int i = 0; i < n; i++) {
            if (!(share[i] >= 0 && diameter[i] > 0 && beta[i] > 0 && beta[i] <= 1 && index[i] > 0)) {
                throw new IllegalArgumentException("powder " + i + " has no packing");
            }
            sum += share[i];
        }
        if (!(Math.abs(sum - 1) < 1e-9)) {
            throw new IllegalArgumentException("volume shares sum to " + sum);
        }
        return new Powders(share.clone(), beta.clone(), index.clone(), ones(n), new SizeEffects(diameter), trueDensity);
    }

    /**
     * {@return the powders of a blend at the table's values}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public static Powders of(Blend blend) {
        double[] diameter = blend.powders().stream()
                .mapToDouble(powder -> powder.value(Property.GRAIN_SIZE))
                .toArray();
        return build(blend, DensityScores.NONE, new SizeEffects(diameter));
    }

    /**
     * {@return the same powders with other densities, sizes kept: one draw of a forecast}
     *
     * @param blend the same powders, with amounts of the draw
     * @param scores errors of the densities in the draw
     */
    public Powders with(Blend blend, DensityScores scores) {
        return build(blend, scores, sizes);
    }

    /** The powders of a blend with their densities moved by the scores, each within its physical limits. */
    private static Powders build(Blend blend, DensityScores scores, SizeEffects sizes) {
        double[] mass = blend.massFractions();
        int n = mass.length;
        double[] share = new double[n];
        double[] beta = new double[n];
        double[] index = new double[n];
        double[] softness = new double[n];
        double specificVolume = 0;
        for (int i = 0; i < n; i++) {
            Ingredient powder = blend.powders().get(i);
            double solid = powder.value(Property.TRUE_DENSITY)
                    * ofMedian(scores.trueDensity(i), powder.relativeSigma(Property.TRUE_DENSITY, 0));
            share[i] = mass[i] / solid;
            softness[i] = PowderClass.of(powder).pressScaleShare();
            specificVolume += share[i];
            // loose density, or solid fraction at the oil end point, over the table's
            double lift = 1 + scores.looseDensity(i) * powder.relativeSigma(Property.LOOSE_DENSITY, 0);
            if (powder.packsByOil()) {
                double oil = powder.value(Property.OIL_ABSORPTION);
                double atEndPoint = 1 / (1 + oil * solid / LINSEED_OIL);
                beta[i] = Math.min(MOST_BETA, atEndPoint * (1 + 1 / TAPPED_INDEX) * lift);
                index[i] = FINE_INDEX;
            } else {
                double looseNominal = powder.value(Property.LOOSE_DENSITY);
                double ratioNominal = powder.value(Property.TAPPED_DENSITY) / looseNominal;
                double ratio = ratioNominal + scores.tappedRatio(i) * ratioSigma(powder, ratioNominal);
                double loose = Math.min(MOST_LOOSE, looseNominal * Math.max(0.1, lift) / solid);
                double tapped = loose * Math.max(LEAST_RATIO, ratio);
                beta[i] = Math.min(MOST_BETA, tapped * (1 + 1 / TAPPED_INDEX));
                index[i] = loose / (beta[i] - loose);
            }
        }
        for (int i = 0; i < n; i++) {
            share[i] /= specificVolume;
        }
        return new Powders(share, beta, index, softness, sizes, 1 / specificVolume);
    }

    /**
     * A true density over its median, from its score: normal where the spread is small. A spread of a fifth or more (petals,
     * buds) would reach densities below 0 in one draw of some thousands if it were normal; it is lognormal with the same relative
     * standard deviation.
     */
    private static double ofMedian(double score, double relativeSigma) {
        return relativeSigma < WIDE
                ? 1 + score * relativeSigma
                : Math.exp(score * Math.sqrt(Math.log1p(relativeSigma * relativeSigma)));
    }

    /** Standard deviation of the ratio of tapped to loose density: 0.07, or less where the powder's own cup was weighed both ways. */
    private static double ratioSigma(Ingredient powder, double ratio) {
        double own = Math.hypot(
                powder.relativeSigma(Property.LOOSE_DENSITY, 1), powder.relativeSigma(Property.TAPPED_DENSITY, 1));
        return Math.min(DensityScores.RATIO_SIGMA, ratio * own);
    }

    /**
     * {@return the same powders, all with the press scale of free-flowing ones: Kawakita's law with one constant}
     */
    public Powders withOnePressScale() {
        return new Powders(share, beta, index, ones(share.length), sizes, trueDensity);
    }

    private static double[] ones(int n) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }

    /**
     * Compaction index of the mix under a squeeze x = P/Pk of free-flowing powders: 1/K = sum y_i/(K0_i (1 + x/s_i)),
     * with s_i the share of {@link PowderClass}. For one class it is K0 (1 + x/s).
     */
    double indexAt(double squeeze) {
        double inverse = 0;
        for (int i = 0; i < share.length; i++) {
            inverse += share[i] / (index[i] * (1 + squeeze / softness[i]));
        }
        return 1 / inverse;
    }

    /**
     * The squeeze x = P/Pk that gives a compaction index; negative below the loose index, where it only says that. Newton's
     * method on 1/K, which falls and is convex, so that every step from 0 stays below the answer.
     */
    double squeezeAt(double wanted) {
        if (!(wanted > looseIndex) || Double.isInfinite(wanted)) {
            return wanted / looseIndex - 1;
        }
        double x = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double inverse = 0;
            double slope = 0;
            for (int i = 0; i < share.length; i++) {
                double squeezed = 1 + x / softness[i];
                double term = share[i] / (index[i] * squeezed);
                inverse += term;
                slope -= term / (squeezed * softness[i]);
            }
            double move = (1 / wanted - inverse) / slope;
            x += move;
            if (!(Math.abs(move) > 1e-14 * (1 + x))) {
                break;
            }
        }
        return x;
    }

    /** {@return the true density of the mix, kg/m3} */
    public double trueDensity() {
        return trueDensity;
    }

    /** {@return K0, the compaction index of the mix as poured, 1/sum(y_i/K0_i): exact for one powder, assumed for more} */
    public double looseIndex() {
        return looseIndex;
    }

    /** {@return the surface mean diameter, 1/sum(y/d), m} */
    public double sauterDiameter() {
        return sauterDiameter;
    }
}
