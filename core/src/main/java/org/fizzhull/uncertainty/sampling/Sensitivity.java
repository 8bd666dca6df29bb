package org.fizzhull.uncertainty.sampling;

/**
 * Draws of an output and its Sobol indices. With f the model, A and B independent rows, AB_i the row A with input i
 * taken from B, and V the variance of f:
 * <pre>
 *   first order   S_i = mean f(B) (f(AB_i) - f(A)) / V        the share of V that goes when input i is known
 *   total         T_i = mean (f(AB_i) - f(A))^2 / (2 V)       the share that stays when only input i is unknown
 * </pre>
 * (A. Saltelli et al., Comput. Phys. Commun. 181 (2010) 259, table 2 b; M. J. W. Jansen, Comput. Phys. Commun. 117
 * (1999) 35; both from memory). S sums to at most 1 over the inputs, T to at least 1; where they agree the inputs do
 * not interact.
 *
 * <p>The inputs must be independent: after a measurement {@link CorrelationRatio} takes its place. Each index has a
 * standard error from the scatter of the blocks; an index may come out a little below 0. Made by {@link
 * MonteCarlo#sensitivity}.
 *
 * @param draws outputs, in the order of {@link MonteCarlo#draws}
 * @param firstOrder first-order index of each input
 * @param total total index of each input
 * @param error standard error of each total index
 * @param firstError standard error of each first-order index
 */
public record Sensitivity(double[] draws, double[] firstOrder, double[] total, double[] error, double[] firstError) {

    /**
     * The indices from the sums that each block has gathered, three for each input: of f(B)(f(AB)-f(A)), of f(AB)-f(A),
     * and of the square of that. The mean of f is taken off f(B) first, which does not change the index and lowers its
     * error.
     *
     * @param y outputs of all draws
     * @param sums of each block
     * @param rows number of rows that each block has summed for each input
     */
    static Sensitivity of(double[] y, double[][] sums, int[] rows) {
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
                firstOfBlock[block] = share(s[3 * i] - mean * s[3 * i + 1], rows[i], variance);
                ofBlock[block] = share(0.5 * s[3 * i + 2], rows[i], variance);
            }
            first[i] = Statistics.mean(firstOfBlock);
            firstError[i] = Statistics.standardError(firstOfBlock);
            total[i] = Statistics.mean(ofBlock);
            error[i] = Statistics.standardError(ofBlock);
        }
        return new Sensitivity(y, first, total, error, firstError);
    }

    /** A sum over the rows as a share of the variance; 0 for an output that does not vary. */
    private static double share(double sum, int rows, double variance) {
        return variance > 0 ? sum / rows / variance : 0;
    }
}
