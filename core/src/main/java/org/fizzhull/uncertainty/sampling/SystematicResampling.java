package org.fizzhull.uncertainty.sampling;

import java.util.SplittableRandom;

/**
 * Draws of equal weight from weighted ones, by systematic resampling (G. Kitagawa, J. Comput. Graph. Statist. 5 (1996) 1;
 * from memory): the weights are summed up one after the other, and a draw is taken for each of n evenly spaced marks that
 * its part of the sum holds,
 *
 * <pre>  c_i = floor(n S_i + 1/2) - floor(n S_(i-1) + 1/2),   S_i = w_1 + ... + w_i</pre>
 *
 * <p>The order of the sum is drawn by chance, from a seed. In the order of Sobol points neighbours differ in a regular way,
 * so that the marks would meet one kind of point more often than another: of two normals with a known sum the mean was off
 * by 0.01 to 0.02 standard deviations, however many draws were taken. Cost: one pass over the weights. Stateless.
 */
public final class SystematicResampling {
    private SystematicResampling() {}

    /**
     * {@return how often each draw is taken; the sum is the number of draws asked for} Equal weights of as many draws take
     * each once.
     *
     * @param shares weight of each draw, 0 or more; they sum to 1 but for rounding
     * @param draws number of draws to take, 1 or more
     * @param seed decides the order; the same seed gives the same draws
     */
    public static int[] copies(double[] shares, int draws, long seed) {
        int[] order = shuffled(shares.length, new SplittableRandom(seed));
        int[] copies = new int[shares.length];
        // the last draw of any weight takes what rounding left over
        int last = 0;
        for (int k = 0; k < order.length; k++) {
            last = shares[order[k]] > 0 ? k : last;
        }
        double sum = 0;
        int taken = 0;
        for (int k = 0; k <= last; k++) {
            sum += shares[order[k]];
            int until = k == last ? draws : (int) Math.min(draws, Math.max(taken, Math.floor(sum * draws + 0.5)));
            copies[order[k]] = until - taken;
            taken = until;
        }
        return copies;
    }

    /**
     * {@return the places of the draws taken, smallest first, each as often as it is taken}
     *
     * @param shares weight of each draw, 0 or more; they sum to 1 but for rounding
     * @param draws number of draws to take, 1 or more
     * @param seed decides the order; the same seed gives the same draws
     */
    public static int[] places(double[] shares, int draws, long seed) {
        int[] copies = copies(shares, draws, seed);
        int[] places = new int[draws];
        int at = 0;
        for (int place = 0; place < copies.length; place++) {
            for (int copy = 0; copy < copies[place]; copy++) {
                places[at++] = place;
            }
        }
        return places;
    }

    /** The numbers below a count in random order. */
    private static int[] shuffled(int count, SplittableRandom random) {
        int[] order = new int[count];
        for (int k = 0; k < count; k++) {
            int other = random.nextInt(k + 1);
            order[k] = order[other];
            order[other] = k;
        }
        return order;
    }
}
