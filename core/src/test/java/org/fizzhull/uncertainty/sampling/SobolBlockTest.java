package org.fizzhull.uncertainty.sampling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

class SobolBlockTest {
    private static final int DIMENSIONS = 60;

    /** Other program: the generator of Apache Commons Math 3.6.1, in Gray-code order from the origin. */
    @Test
    void directionNumbersGiveTheReferenceLibrarysPoints() {
        SobolSequenceGenerator reference = new SobolSequenceGenerator(DIMENSIONS);
        int[][] directions = JoeKuo2008.directions(DIMENSIONS);
        int[] state = new int[DIMENSIONS];
        for (int i = 1; i <= 1024; i++) {
            double[] expected = reference.nextVector();
            for (int d = 0; d < DIMENSIONS; d++) {
                assertThat((state[d] & 0xFFFFFFFFL) * 0x1p-32).isEqualTo(expected[d]);
                state[d] ^= directions[d][Integer.numberOfTrailingZeros(i)];
            }
        }
    }

    /** Analytic: a linear scramble and a shift keep a (0, m, 1) net, one point in each of 2^m equal parts. */
    @Test
    void everyCoordinateOfAScrambledBlockIsStratified() {
        SobolBlock block = new SobolBlock(DIMENSIONS, 7, 3);
        int n = 256;
        double[] point = new double[DIMENSIONS];
        boolean[][] met = new boolean[DIMENSIONS][n];
        for (int i = 0; i < n; i++) {
            block.next(point);
            for (int d = 0; d < DIMENSIONS; d++) {
                assertThat(point[d]).isGreaterThan(0).isLessThan(1);
                int part = (int) (point[d] * n);
                assertThat(met[d][part]).isFalse();
                met[d][part] = true;
            }
        }
    }

    /** Analytic: with m = 8, each pair of the first two dimensions is a (0, 8, 2) net: 16 x 16 boxes hold one each. */
    @Test
    void theFirstTwoDimensionsFillThePlaneEvenly() {
        SobolBlock block = new SobolBlock(2, 1, 0);
        double[] point = new double[2];
        Set<Integer> boxes = new HashSet<>();
        for (int i = 0; i < 256; i++) {
            block.next(point);
            int column = (int) (16 * point[0]);
            int row = (int) (16 * point[1]);
            boxes.add(16 * column + row);
        }
        assertThat(boxes).hasSize(256);
    }

    @Test
    void blocksAndSeedsDifferAndRepeat() {
        double[] first = firstPoint(1, 0);
        assertThat(firstPoint(1, 0)).containsExactly(first);
        Set<Double> seen = new HashSet<>();
        for (long seed = 0; seed < 5; seed++) {
            for (int block = 0; block < 8; block++) {
                seen.add(firstPoint(seed, block)[4]);
            }
        }
        assertThat(seen).hasSize(40);
    }

    private static double[] firstPoint(long seed, int block) {
        double[] point = new double[5];
        new SobolBlock(5, seed, block).next(point);
        return point;
    }
}
