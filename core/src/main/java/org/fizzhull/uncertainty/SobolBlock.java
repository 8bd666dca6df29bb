package org.fizzhull.uncertainty;

import java.util.SplittableRandom;

/**
 * One scrambled block of Sobol points: a random linear scramble and a digital shift (Matousek 1998, On the
 * L2-discrepancy for anchored boxes, J. Complexity 14, 527; from memory). Blocks of the same seed and different number
 * are independent, each point is uniform on the open unit cube, and the scatter of the blocks' means gives the standard
 * error. Dimensions beyond the 256 of the table are drawn at random: unbiased as the rest, without the faster
 * convergence.
 */
public final class SobolBlock {
    private static final double UNIT = 0x1p-32;

    private final int[][] directions;
    private final int[] state;
    private final int dimensions;
    private final SplittableRandom rest;
    private int index;

    /**
     * @param dimensions 1 or more
     * @param seed any number
     * @param block number of the block from 0
     */
    public SobolBlock(int dimensions, long seed, int block) {
        this.dimensions = dimensions;
        int tabled = Math.min(dimensions, JoeKuo2008.DIMENSIONS);
        directions = JoeKuo2008.directions(tabled);
        state = new int[tabled];
        SplittableRandom random = ofBlock(seed, block);
        int[] rows = new int[JoeKuo2008.BITS];
        for (int d = 0; d < tabled; d++) {
            for (int bit = 0; bit < rows.length; bit++) {
                int own = 1 << (rows.length - 1 - bit);
                rows[bit] = own | (random.nextInt() & ~(own | (own - 1)));
            }
            for (int k = 0; k < rows.length; k++) {
                directions[d][k] = times(rows, directions[d][k]);
            }
            state[d] = random.nextInt();
        }
        rest = random.split();
    }

    /**
     * Fills {@code point} with the next point of the block; each coordinate lies strictly between 0 and 1.
     *
     * @param point one coordinate for each dimension; filled
     */
    public void next(double[] point) {
        for (int d = 0; d < state.length; d++) {
            point[d] = ((state[d] & 0xFFFFFFFFL) + 0.5) * UNIT;
        }
        for (int d = state.length; d < dimensions; d++) {
            point[d] = ((rest.nextInt() & 0xFFFFFFFFL) + 0.5) * UNIT;
        }
        int bit = Integer.numberOfTrailingZeros(++index);
        for (int d = 0; d < state.length; d++) {
            state[d] ^= directions[d][bit];
        }
    }

    /** Seeds of neighbouring seeds and blocks are mixed first: added, they would only shift one stream. */
    private static SplittableRandom ofBlock(long seed, int block) {
        SplittableRandom root = new SplittableRandom(seed);
        long own = root.nextLong();
        for (int i = 0; i < block; i++) {
            own = root.nextLong();
        }
        return new SplittableRandom(own);
    }

    private static int times(int[] rows, int vector) {
        int product = 0;
        for (int row : rows) {
            product = (product << 1) | (Integer.bitCount(row & vector) & 1);
        }
        return product;
    }
}
