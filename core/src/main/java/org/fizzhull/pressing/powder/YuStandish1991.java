package org.fizzhull.pressing.powder;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Linear-mixture packing model: A. B. Yu and N. Standish, Ind. Eng. Chem. Res. 30 (1991) 1372, with the interaction
 * functions of Yu, Zou and Standish, 35 (1996) 3730 (second-hand, docs/physics/packing.md, 9). The second opinion beside
 * {@link DeLarrard1999}: its difference is printed and does not move a forecast.
 *
 * <p>Each powder alone packs by the same law of pressure; then, for every size taken as the one that controls the packing,
 * sizes within a ratio of 0.154 are mixed, larger grains occupy and smaller ones fill, and the largest specific volume of
 * the bed counts. Jumps slightly where a ratio of sizes passes 0.154, so it is not used inside a solver. Error not known for such powders; on
 * bath mixes it packs 0.05 denser (docs/physics/packing.md, 10). Stateless.
 */
public final class YuStandish1991 implements PackingModel {
    /** Ratio of sizes below which the small grain fits between the large ones. */
    private static final double ENTRANCE = 0.154;

    /** Ratio of sizes above which two sizes mix without a gain in density: the fitted functions end there. */
    private static final double LAST_MIXING = 0.741;

    /** The model, which holds nothing. */
    public YuStandish1991() {}

    @Override
    public double solidFraction(Powders powders, double squeeze) {
        int n = powders.share.length;
        double[] alone = new double[n];
        for (int i = 0; i < n; i++) {
            double k = powders.index[i] * (1 + squeeze / powders.softness[i]);
            alone[i] = powders.beta[i] * k / (k + 1);
        }
        return mixed(powders.share, powders.sizes.diameter, alone);
    }

    /**
     * {@return the solid fraction of a mix of powders}
     *
     * @param share share of the solid volume, sums to 1
     * @param diameter grain size, m
     * @param alone solid fraction of each powder alone
     */
    public double mixed(double[] share, double[] diameter, double[] alone) {
        int n = share.length;
        int[] order = coarseFirst(diameter);
        // coarse to fine: volume share, size, specific volume 1/phi of each alone
        double[] x = new double[n];
        double[] d = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = share[order[i]];
            d[i] = diameter[order[i]];
            v[i] = 1 / alone[order[i]];
        }
        double largest = 0;
        for (int i = 0; i < n; i++) {
            if (x[i] > 0) {
                largest = Math.max(largest, controlledBy(i, x, d, v));
            }
        }
        return 1 / largest;
    }

    /** Volume of the bed over solid volume if size i controls it; arrays from coarse to fine. */
    private static double controlledBy(int i, double[] x, double[] d, double[] v) {
        // first to last: sizes near enough to i to mix with it
        int first = i;
        while (first > 0 && d[i] / d[first - 1] >= ENTRANCE) {
            first--;
        }
        int last = i;
        while (last < d.length - 1 && d[last + 1] / d[i] >= ENTRANCE) {
            last++;
        }
        double part = 0;
        for (int j = first; j <= last; j++) {
            part += x[j];
        }
        // larger grains take part of the mixed bed's place, smaller ones fill its gaps
        double mix = mixing(first, last, part, x, d, v);
        double volume = mix * part;
        for (int j = 0; j < first; j++) {
            volume += (mix - (mix - 1) * occupation(d[i] / d[j])) * x[j];
        }
        for (int j = last + 1; j < d.length; j++) {
            volume += mix * (1 - filling(d[j] / d[i])) * x[j];
        }
        return volume;
    }

    /**
     * Specific volume of the sizes from {@code first} to {@code last} as they mix with each other; {@code part} is their share of
     * the solid volume.
     */
    private static double mixing(int first, int last, double part, double[] x, double[] d, double[] v) {
        double mean = 0;
        for (int j = first; j <= last; j++) {
            mean += x[j] * v[j];
        }
        mean /= part;
        // solid fraction of the sizes side by side, which the fitted coefficients depend on
        double density = 1 / mean;
        double volume = mean;
        for (int h = first; h <= last; h++) {
            for (int l = h + 1; l <= last; l++) {
                double r = d[l] / d[h];
                double product = x[h] * x[l] / (part * part);
                volume += symmetric(r, density) * product + skew(r, density) * product * (x[h] - x[l]) / part;
            }
        }
        return volume;
    }

    /** f: filling of gaps between large grains by small ones, r small over large size. */
    static double filling(double r) {
        return Math.pow(1 - r, 3.3) + 2.8 * r * Math.pow(1 - r, 2.7);
    }

    /** g: occupation of volume in a bed of small grains by large ones, r small over large size. */
    static double occupation(double r) {
        return Math.pow(1 - r, 2.0) + 0.4 * r * Math.pow(1 - r, 3.7);
    }

    /** Coefficient of x_h x_l in the specific volume of two mixed sizes, r small over large size. */
    static double symmetric(double r, double density) {
        if (r > LAST_MIXING) {
            return 0;
        }
        // fitted polynomials of the publication (second-hand)
        return 10.288
                * Math.pow(10, -1.4566 * density)
                * (-1.0002 + r * (0.1126 + r * (5.8455 + r * (-7.9488 + r * 3.1222))));
    }

    /** Coefficient of x_h x_l (x_h - x_l) in the specific volume of two mixed sizes, r small over large size. */
    static double skew(double r, double density) {
        if (r > LAST_MIXING) {
            return 0;
        }
        double p = density;
        return (-1.3092 + p * (15.039 + p * (-37.453 + p * (40.869 + p * -17.110))))
                * (-1.0029 + r * (0.3589 + r * (10.970 + r * (-22.197 + r * 12.434))));
    }

    /** Indices of the sizes from the largest to the smallest. */
    private static int[] coarseFirst(double[] diameter) {
        return IntStream.range(0, diameter.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -diameter[i]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
