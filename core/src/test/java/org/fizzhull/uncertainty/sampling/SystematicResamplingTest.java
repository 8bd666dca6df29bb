package org.fizzhull.uncertainty.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SystematicResamplingTest {
    /** ANALYTIC: equal shares take every draw once; all the weight on one draw takes it alone; halves take halves. */
    @Test
    void sharesAreKept() {
        for (long seed = 1; seed <= 20; seed++) {
            assertThat(SystematicResampling.places(new double[] {0.25, 0.25, 0.25, 0.25}, 4, seed))
                    .containsExactly(0, 1, 2, 3);
            assertThat(SystematicResampling.copies(new double[] {0, 1, 0}, 3, seed))
                    .containsExactly(0, 3, 0);
            assertThat(SystematicResampling.places(new double[] {0.5, 0, 0.5, 0}, 4, seed))
                    .containsExactly(0, 0, 2, 2);
        }
    }

    /** ANALYTIC: systematic resampling takes each draw n w times, rounded down or up. */
    @Test
    void noDrawIsTakenMuchMoreOrLessThanItsShare() {
        double[] shares = new double[1000];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = (i + 0.5) / (shares.length * shares.length / 2.0);
        }
        int[] copies = SystematicResampling.copies(shares, 4096, 3);
        assertThat(Arrays.stream(copies).sum()).isEqualTo(4096);
        for (int i = 0; i < shares.length; i++) {
            assertThat(Math.abs(copies[i] - 4096 * shares[i])).isLessThan(1 + 1e-9);
        }
    }

    /**
     * ANALYTIC: weights w = u of points u evenly spread make the mean 2/3, also where neighbours alternate between the lower
     * and the upper half, as those of a Sobol sequence do. The standard error of 8,192 draws is 0.0026.
     */
    @Test
    void theOrderOfThePointsDoesNotShow() {
        SobolBlock points = new SobolBlock(1, 4, 0);
        double[] u = new double[8192];
        double[] one = new double[1];
        double sum = 0;
        for (int i = 0; i < u.length; i++) {
            points.next(one);
            u[i] = one[0];
            sum += u[i];
        }
        double[] shares = new double[u.length];
        for (int i = 0; i < u.length; i++) {
            shares[i] = u[i] / sum;
        }
        double mean = 0;
        for (int place : SystematicResampling.places(shares, u.length, 1)) {
            mean += u[place] / u.length;
        }
        assertThat(mean).isCloseTo(2.0 / 3, within(0.005));
    }
}
