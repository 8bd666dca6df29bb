package org.fizzhull.uncertainty;

/**
 * Draws of an output and its Sobol indices: the share of the variance that goes when one input is known (first order;
 * estimator of Saltelli et al. 2010, Computer Physics Communications 181, 259, table 2 b) and the share that stays when
 * only that input is unknown (total; Jansen 1999, Computer Physics Communications 117, 35). Both from memory. Each
 * index has a standard error from the scatter of the blocks.
 *
 * @param draws outputs, in the order of {@link MonteCarlo#draws}
 * @param firstOrder first-order index of each input
 * @param total total index of each input
 * @param error standard error of each total index
 * @param firstError standard error of each first-order index
 */
public record Sensitivity(double[] draws, double[] firstOrder, double[] total, double[] error, double[] firstError) {

    /** From the sums of f(B)(f(AB)-f(A)), f(AB)-f(A) and its square that each block has gathered. */
    static Sensitivity of(double[] y, double[][] sums, int rows) {
        int blocks = sums.length;
        int width = sums[0].length / 3;
        double mean = Statistics.mean(y);
        double variance = Statistics.variance(y, mean);
        double[] first = new double[width];
        double[] total = new double[width];
        double[] error = new double[width];
        double[] firstError = new double[width];
        double[] ofBlock = new double[blocks];
        double[] firstOfBlock = new double[blocks];
        for (int i = 0; i < width; i++) {
            for (int block = 0; block < blocks; block++) {
                double[] s = sums[block];
                firstOfBlock[block] = share(s[3 * i] - mean * s[3 * i + 1], rows, variance);
                ofBlock[block] = share(0.5 * s[3 * i + 2], rows, variance);
            }
            first[i] = Statistics.mean(firstOfBlock);
            firstError[i] = Statistics.standardError(firstOfBlock);
            total[i] = Statistics.mean(ofBlock);
            error[i] = Statistics.standardError(ofBlock);
        }
        return new Sensitivity(y, first, total, error, firstError);
    }

    private static double share(double sum, int rows, double variance) {
        return variance > 0 ? sum / rows / variance : 0;
    }
}
