package org.fizzhull.uncertainty.sampling;

import java.util.Arrays;

/**
 * First-order sensitivity indices from given draws: the variance between the means of an output y over equally filled
 * classes of one input, over its whole variance (Pearson's correlation ratio; E. Plischke, E. Borgonovo and C. L.
 * Smith, Eur. J. Oper. Res. 226 (2013) 536; from memory).
 * <pre>
 *   eta^2 = SUM_c n_c (mean_c - mean)^2 / SUM (y - mean)^2
 *   index = eta^2 - (1 - eta^2) (k - 1)/(n_eff - k)        less what chance alone puts between k classes
 * </pre>
 * It is the share of the variance that goes when that input is known, and unlike the pick-and-freeze estimators of
 * {@link Sensitivity} it holds where inputs depend on one another, as after a measurement; a total index does not exist
 * then. An index may come out a little below 0.
 *
 * <p>Classes: up to 16, of at least 16 draws each. Error: {@code error}, by leaving out one block at a time
 * (jackknife); a dependence that is the same within every class is not seen. Cost: one sort an input. Called by {@link
 * Posterior#ratios}.
 *
 * @param firstOrder index of each input; of a group the sum over its columns
 * @param error standard error of each, from leaving out one block at a time
 */
public record CorrelationRatio(double[] firstOrder, double[] error) {
    /** Draws beyond this add nothing that is read. */
    static final int MOST_DRAWS = 16_384;

    /** Most classes of an input. */
    private static final int CLASSES = 16;

    /** Draws a class should hold in the whole; fewer draws make fewer classes. */
    private static final int FILLED = 16;

    /**
     * {@return the share of the variance of an output that goes when one other output of the same independent draws is
     * known, 0 to 1 but for chance} The draws are in blocks, as {@link Draws#draws} gives them.
     *
     * @param x draws of what is known
     * @param y draws of the output, as many and in the same order
     */
    public static double of(double[] x, double[] y) {
        return of(x, Statistics.sorted(x), y);
    }

    /**
     * {@return the same where what is known has been sorted already}
     *
     * @param x draws of what is known
     * @param sorted the same in ascending order
     * @param y draws of the output, as many as of x and in the same order
     */
    public static double of(double[] x, double[] sorted, double[] y) {
        return column(x, sorted, y, classes(y), y.length, new double[MonteCarlo.BLOCKS]);
    }

    /** Classes for an output: as many as can be filled. */
    private static int classes(double[] y) {
        return Math.max(2, Math.min(CLASSES, y.length / FILLED));
    }

    /**
     * The indices of inputs that stand for one or more columns each.
     *
     * @param x draws of each column
     * @param groups number of columns of each input, in order
     * @param y draws of the output
     * @param effective number of independent draws that these are worth
     */
    static CorrelationRatio of(double[][] x, int[] groups, double[] y, double effective) {
        int classes = classes(y);
        double[] first = new double[groups.length];
        double[] error = new double[groups.length];
        double[] left = new double[MonteCarlo.BLOCKS];
        int column = 0;
        for (int i = 0; i < groups.length; i++) {
            Arrays.fill(left, 0);
            for (int k = 0; k < groups[i]; k++) {
                first[i] += column(x[column], Statistics.sorted(x[column]), y, classes, effective, left);
                column++;
            }
            // jackknife: the scatter of the indices that each leave out one block
            double mean = Statistics.mean(left);
            double n = left.length;
            error[i] = Math.sqrt((n - 1) * (n - 1) / n * Statistics.variance(left, mean));
        }
        return new CorrelationRatio(first, error);
    }

    /** The index of one column; adds to each place of {@code left} the index without that block. */
    private static double column(
            double[] x, double[] sorted, double[] y, int classes, double effective, double[] left) {
        // the borders of equally filled classes
        double[] edges = new double[classes - 1];
        for (int c = 0; c < edges.length; c++) {
            edges[c] = sorted[(c + 1) * x.length / classes];
        }
        // number, sum and sum of squares of y by block and class; the last row is the whole
        int blocks = left.length;
        double[][] count = new double[blocks + 1][classes];
        double[][] sum = new double[blocks + 1][classes];
        double[] squares = new double[blocks + 1];
        int length = y.length / blocks;
        for (int at = 0; at < y.length; at++) {
            int block = at / length;
            int c = classOf(x[at], edges);
            count[block][c]++;
            sum[block][c] += y[at];
            squares[block] += y[at] * y[at];
        }
        for (int block = 0; block < blocks; block++) {
            add(count[blocks], count[block], 1);
            add(sum[blocks], sum[block], 1);
            squares[blocks] += squares[block];
        }
        for (int block = 0; block < blocks; block++) {
            double[] n = count[blocks].clone();
            double[] s = sum[blocks].clone();
            add(n, count[block], -1);
            add(s, sum[block], -1);
            left[block] += index(n, s, squares[blocks] - squares[block], effective * (blocks - 1) / blocks);
        }
        return index(count[blocks], sum[blocks], squares[blocks], effective);
    }

    /** The number of borders, in ascending order, that a value reaches, by halving. */
    private static int classOf(double value, double[] edges) {
        int c = 0;
        int above = edges.length;
        while (c < above) {
            int middle = (c + above) >>> 1;
            if (value >= edges[middle]) {
                c = middle + 1;
            } else {
                above = middle;
            }
        }
        return c;
    }

    /** Adds so many times one array to another. */
    private static void add(double[] to, double[] what, double times) {
        for (int i = 0; i < to.length; i++) {
            to[i] += times * what[i];
        }
    }

    /**
     * The index from the numbers and sums of the classes, and the sum of squares in the whole; 0 for an output that
     * does not vary.
     */
    private static double index(double[] count, double[] sum, double squares, double effective) {
        double n = 0;
        double all = 0;
        double between = 0;
        int filled = 0;
        for (int c = 0; c < count.length; c++) {
            n += count[c];
            all += sum[c];
            if (count[c] > 0) {
                between += sum[c] * sum[c] / count[c];
                filled++;
            }
        }
        double variance = squares - all * all / n;
        if (!(variance > 0)) {
            return 0;
        }
        double share = (between - all * all / n) / variance;
        double chance = (filled - 1) / Math.max(filled, effective - filled);
        return share - (1 - share) * chance;
    }
}
