package org.fizzhull.uncertainty.sampling;

import java.util.SplittableRandom;

/**
 * One scrambled block of Sobol points: the direction numbers of {@link JoeKuo2008}, each dimension multiplied by a
 * random lower triangular bit matrix with ones on its diagonal and shifted by a random number, bit by bit without carry
 * (a random linear scramble and a digital shift; J. Matousek, J. Complexity 14 (1998) 527; from memory). Blocks of the
 * same seed and different number are independent, each point is uniform on the open unit cube, and the scatter of the
 * blocks' means gives the standard error.
 * <pre>{@code
 * SobolBlock block = new SobolBlock(3, 42, 0);
 * double[] u = new double[3];
 * block.next(u);
 * }</pre>
 *
 * <p>Points have 32 bits and lie on the middles of the 2^32 cells. The first 2^k points of a block are a net.
 * Dimensions beyond the 256 of the table are drawn at random: unbiased as the rest, without the faster convergence.
 * Cost of a point: one exclusive or for each
 * dimension. Not for use by several threads.
 */
public final class SobolBlock {
    /** Width of a cell. */
    private static final double UNIT = 0x1p-32;

    /** Scrambled direction numbers, {@code [dimension][bit]}. */
    private final int[][] directions;
    /** The point to come, 32 bits a dimension. */
    private final int[] state;
    /** Dimensions, those beyond the table included. */
    private final int dimensions;
    /** Draws the dimensions beyond the table. */
    private final SplittableRandom rest;
    /** Number of points given so far. */
    private int index;

    /**
     * A block at its first point.
     *
     * @param dimensions 1 or more
     * @param seed any number; the same seed and block give the same points
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
                // row of the matrix: a one on the diagonal, random bits for the more significant digits, none for the
                // less
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
        // in the order of the Gray code each point differs from the last by one direction number
        int bit = Integer.numberOfTrailingZeros(++index);
        for (int d = 0; d < state.length; d++) {
            state[d] ^= directions[d][bit];
        }
    }

    /**
     * The generator of a block. Seeds of neighbouring seeds and blocks are mixed first: added, they would only shift
     * one stream.
     */
    private static SplittableRandom ofBlock(long seed, int block) {
        SplittableRandom root = new SplittableRandom(seed);
        long own = root.nextLong();
        for (int i = 0; i < block; i++) {
            own = root.nextLong();
        }
        return new SplittableRandom(own);
    }

    /** Product of a bit matrix and a bit vector. */
    private static int times(int[] rows, int vector) {
        int product = 0;
        for (int row : rows) {
            product = (product << 1) | (Integer.bitCount(row & vector) & 1);
        }
        return product;
    }
}
