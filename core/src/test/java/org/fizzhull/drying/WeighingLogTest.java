package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Is it dry yet, from weighings. */
class WeighingLogTest {
    private static final DryingCourse COURSE =
            Drying.run(Mixes.starch(0.03, 0.05), List.of(Mixes.open(0.5, 30)), Mixes.inert(), Resolution.FINE);
    private static final double READY = COURSE.readyAfter().orElseThrow();

    /** Weights of a piece that dries {@code stretch} times slower than the recipe says and is 3 g heavier. */
    private static double[] weights(double stretch, double... times) {
        double[] weights = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            weights[i] = 3e-3 + COURSE.at(times[i] / stretch).mass();
        }
        return weights;
    }

    /** ANALYTIC: data made with a known stretch give it back; with a good scale within a few per cent. */
    @Test
    void findsTheStretchOfAMadeUpPiece() {
        double[] times = {0, 0.3 * READY, 0.7 * READY, 1.1 * READY};
        for (double stretch : new double[] {0.7, 1, 1.6}) {
            var log = WeighingLog.fit(COURSE, times, weights(stretch, times), 0.02e-3);
            assertThat(log.stretch().median()).isCloseTo(stretch, withinPercentage(4));
            assertThat(log.readyAfter().median()).isCloseTo(stretch * READY, withinPercentage(4));
            assertThat(log.misfit()).isLessThan(2);
        }
    }

    /** A coarser scale says less; a piece whose weight stands still is ready. */
    @Test
    void aCoarseScaleSaysLess() {
        double[] times = {0, 0.2 * READY, 0.4 * READY};
        var fine = WeighingLog.fit(COURSE, times, weights(1, times), 0.05e-3);
        var coarse = WeighingLog.fit(COURSE, times, weights(1, times), 1e-3);
        assertThat(coarse.readyAfter().high() / coarse.readyAfter().low())
                .isGreaterThan(
                        1.5 * fine.readyAfter().high() / fine.readyAfter().low());
        double truth = COURSE.at(0.4 * READY).mass() - COURSE.at(READY).mass();
        assertThat(fine.stillToGo().median()).isCloseTo(truth, withinPercentage(10));
        double[] late = {0, READY, 2 * READY, 3 * READY};
        var ready = WeighingLog.fit(COURSE, late, weights(1, late), 0.1e-3);
        assertThat(ready.stillToGo().median()).isZero();
    }

    /** A piece that gains weight is not on this course. */
    @Test
    void saysWhenTheCourseIsAnother() {
        double[] times = {0, 0.3 * READY, 0.6 * READY};
        var log = WeighingLog.fit(COURSE, times, new double[] {0.150, 0.153, 0.156}, 0.2e-3);
        assertThat(log.misfit()).isGreaterThan(2);
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> WeighingLog.fit(COURSE, new double[] {0}, new double[] {0.1}, 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WeighingLog.fit(COURSE, new double[] {0, 0}, new double[] {0.1, 0.1}, 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WeighingLog.fit(COURSE, new double[] {0, 1}, new double[] {0.1, Double.NaN}, 1e-4))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
