package org.fizzhull.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TridiagonalTest {
    /** ANALYTIC: -u'' = 1 on three inner points of (0, 1), step 1/4; differences are exact for u = x(1 - x)/2. */
    @Test
    void givesTheParabola() {
        double[] lower = {0, -1, -1};
        double[] diagonal = {2, 2, 2};
        double[] upper = {-1, -1, 0};
        double[] right = {1 / 16.0, 1 / 16.0, 1 / 16.0};
        Tridiagonal.solve(lower, diagonal, upper, right, 3);
        assertThat(right).containsExactly(new double[] {3 / 32.0, 4 / 32.0, 3 / 32.0}, within(1e-16));
    }

    /** ANALYTIC: the product of a matrix and a known vector gives the vector back; entries beyond n are untouched. */
    @Test
    void givesBackAKnownVector() {
        int n = 50;
        double[] lower = new double[n + 1];
        double[] diagonal = new double[n + 1];
        double[] upper = new double[n + 1];
        double[] right = new double[n + 1];
        right[n] = 7;
        for (int i = 0; i < n; i++) {
            lower[i] = -1 - 0.1 * Math.sin(i);
            upper[i] = -1 - 0.1 * Math.cos(2 * i);
            diagonal[i] = 3 + Math.sin(3 * i) * 0.5;
        }
        for (int i = 0; i < n; i++) {
            right[i] = diagonal[i] * value(i)
                    + (i > 0 ? lower[i] * value(i - 1) : 0)
                    + (i < n - 1 ? upper[i] * value(i + 1) : 0);
        }
        Tridiagonal.solve(lower, diagonal, upper, right, n);
        for (int i = 0; i < n; i++) {
            assertThat(right[i]).isCloseTo(value(i), within(1e-13));
        }
        assertThat(right[n]).isEqualTo(7);
    }

    private static double value(int i) {
        return Math.exp(0.05 * i) * Math.cos(i);
    }
}
