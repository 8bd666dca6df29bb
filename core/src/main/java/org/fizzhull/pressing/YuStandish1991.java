package org.fizzhull.pressing;

import java.util.Arrays;

/**
 * Linear-mixture packing model: Yu and Standish (1991), Ind. Eng. Chem. Res. 30, 1372, with the interaction functions
 * used by Yu, Zou and Standish (1996) 35, 3730 (second-hand, docs/physics/packing.md, 9). The second opinion beside
 * {@link DeLarrard1999}: each powder alone packs by the same law of pressure, then they are mixed. Jumps slightly where
 * the size ratio passes 0.154, so it is not used inside a solver.
 */
public final class YuStandish1991 implements PackingModel {
    /** Below this ratio of sizes the small grain fits between the large ones. */
    private static final double ENTRANCE = 0.154;

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
     * @param share share of the solid volume
     * @param diameter grain size, m
     * @param alone solid fraction of each powder alone
     */
    public double mixed(double[] share, double[] diameter, double[] alone) {
        int n = share.length;
        int[] order = coarseFirst(diameter);
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

    private static double controlledBy(int i, double[] x, double[] d, double[] v) {
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

    private static double mixing(int first, int last, double part, double[] x, double[] d, double[] v) {
        double mean = 0;
        for (int j = first; j <= last; j++) {
            mean += x[j] * v[j];
        }
        mean /= part;
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

    static double filling(double r) {
        return Math.pow(1 - r, 3.3) + 2.8 * r * Math.pow(1 - r, 2.7);
    }

    static double occupation(double r) {
        return Math.pow(1 - r, 2.0) + 0.4 * r * Math.pow(1 - r, 3.7);
    }

    static double symmetric(double r, double density) {
        if (r > LAST_MIXING) {
            return 0;
        }
        return 10.288
                * Math.pow(10, -1.4566 * density)
                * (-1.0002 + r * (0.1126 + r * (5.8455 + r * (-7.9488 + r * 3.1222))));
    }

    static double skew(double r, double density) {
        if (r > LAST_MIXING) {
            return 0;
        }
        double p = density;
        return (-1.3092 + p * (15.039 + p * (-37.453 + p * (40.869 + p * -17.110))))
                * (-1.0029 + r * (0.3589 + r * (10.970 + r * (-22.197 + r * 12.434))));
    }

    private static int[] coarseFirst(double[] diameter) {
        Integer[] order = new Integer[diameter.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        Arrays.sort(order, (a, b) -> Double.compare(diameter[b], diameter[a]));
        int[] plain = new int[order.length];
        for (int i = 0; i < plain.length; i++) {
            plain[i] = order[i];
        }
        return plain;
    }
}
