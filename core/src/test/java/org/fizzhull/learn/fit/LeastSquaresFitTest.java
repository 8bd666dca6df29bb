package org.fizzhull.learn.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.junit.jupiter.api.Test;

/** The fit by least squares and the law around it, against certified values. */
class LeastSquaresFitTest {
    private static final double[] X = {
        77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
    };
    private static final double[] Y = {
        10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
    };

    /**
     * HANDBOOK: NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b1 (1 - exp(-b2 x)), certified b1 =
     * 2.3894212918E+02, b2 = 5.5015643181E-04, deviations 2.7070075241E+00 and 7.2668688436E-06, residual sum of squares
     * 1.2455138894E-01; data and values from memory. Start 1: b1 = 500, b2 = 1e-4. Six digits of the values and four of the
     * deviations are asked, whose slopes are taken by differences.
     */
    @Test
    void misra1a() {
        LeastSquaresFit.Residuals residuals = b -> {
            double[] off = new double[X.length];
            for (int i = 0; i < X.length; i++) {
                off[i] = Y[i] - b[0] * (1 - Math.exp(-1e-4 * b[1] * X[i]));
            }
            return off;
        };
        Laplace law = LeastSquaresFit.find(residuals, new double[] {500, 1}, new double[] {1e-3, 1e-5});
        assertThat(law.mean[0]).isCloseTo(2.3894212918e2, within(2e-4));
        assertThat(law.mean[1]).isCloseTo(5.5015643181, within(5e-6));
        double sum = 0;
        for (double off : residuals.at(law.mean)) {
            sum += off * off;
        }
        assertThat(sum).isCloseTo(1.2455138894e-1, within(1e-9));
        double variance = sum / (X.length - 2);
        assertThat(Math.sqrt(variance * law.covariance.get(0, 0))).isCloseTo(2.7070075241, within(3e-4));
        assertThat(1e-4 * Math.sqrt(variance * law.covariance.get(1, 1))).isCloseTo(7.2668688436e-6, within(1e-9));
    }

    /** By definition: residuals that jump at every look never let a search end; the least that was met is the guess. */
    @Test
    void aSearchWithoutAnEndGivesTheNearestPoint() {
        double[] start = {-5};
        double[] steps = {0.02};
        assertThatThrownBy(() -> LeastSquaresFit.optimum(jumping(), start, steps))
                .isInstanceOf(TooManyEvaluationsException.class);
        Laplace law = LeastSquaresFit.find(jumping(), start, steps);
        assertThat(law.mean()[0]).isCloseTo(2, within(0.5));
    }

    /** Least near 2, and less at every look: no step is the last one. */
    private static LeastSquaresFit.Residuals jumping() {
        int[] looks = {0};
        return point -> new double[] {point[0] - 2, 3 + 100.0 / ++looks[0]};
    }
}
