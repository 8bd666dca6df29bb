package org.fizzhull.uncertainty.sampling;

import java.util.Arrays;

/**
 * Reductions over draws, always in index order, so that threads never change a byte: means, standard errors from
 * blocks, quantiles.
 *
 * <p>Stateless. NaN is not looked for: draws that carry it must be left out before. Blocks are equally long and follow
 * one another, as {@link Draws#draws} gives them; a remainder that fills no block is left out of their errors.
 */
public final class Statistics {
    private Statistics() {}

    /**
     * {@return the arithmetic mean}
     *
     * @param y at least one value
     */
    public static double mean(double[] y) {
        double sum = 0;
        for (double value : y) {
            sum += value;
        }
        return sum / y.length;
    }

    /**
     * {@return the sample variance about a known mean (n - 1 in the divisor)}
     *
     * @param y at least two values
     * @param mean their mean
     */
    public static double variance(double[] y, double mean) {
        double sum = 0;
        for (double value : y) {
            sum += (value - mean) * (value - mean);
        }
        return sum / (y.length - 1);
    }

    /**
     * {@return the standard error of the mean of independent values}
     *
     * @param y at least two independent values
     */
    public static double standardError(double[] y) {
        return Math.sqrt(variance(y, mean(y)) / y.length);
    }

    /**
     * {@return the share of the draws above a threshold}
     *
     * @param y draws
     * @param threshold in the unit of the draws; a draw equal to it does not count
     */
    public static double shareAbove(double[] y, double threshold) {
        int count = 0;
        for (double value : y) {
            if (value > threshold) {
                count++;
            }
        }
        return (double) count / y.length;
    }

    /**
     * {@return the standard error of the mean of draws, from the scatter of equally long blocks}
     *
     * @param y draws, in equally long blocks
     * @param blocks number of blocks, at least two
     */
    public static double meanError(double[] y, int blocks) {
        int length = y.length / blocks;
        double[] means = new double[blocks];
        for (int block = 0; block < blocks; block++) {
            for (int i = block * length; i < (block + 1) * length; i++) {
                means[block] += y[i] / length;
            }
        }
        return standardError(means);
    }

    /**
     * {@return a sorted copy}
     *
     * @param y draws; left as they are
     */
    public static double[] sorted(double[] y) {
        double[] copy = y.clone();
        Arrays.sort(copy);
        return copy;
    }

    /**
     * {@return the quantile of sorted draws, linear between order statistics at the cumulative probabilities (i -
     * 1/2)/n of JCGM 101:2008, 7.5 (from memory)}
     *
     * @param sorted draws in ascending order, at least one
     * @param p cumulative probability, 0 to 1; beyond the outermost draws their value is returned
     */
    public static double quantile(double[] sorted, double p) {
        double at = p * sorted.length - 0.5;
        int low = (int) Math.floor(at);
        if (low < 0) {
            return sorted[0];
        }
        if (low >= sorted.length - 1) {
            return sorted[sorted.length - 1];
        }
        // kept between its neighbours, which rounding could leave
        double between = sorted[low] + (at - low) * (sorted[low + 1] - sorted[low]);
        return Math.max(sorted[low], Math.min(sorted[low + 1], between));
    }
}
