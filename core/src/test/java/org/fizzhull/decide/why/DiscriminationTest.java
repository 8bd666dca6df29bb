package org.fizzhull.decide.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.evidence.Interval;
import org.junit.jupiter.api.Test;

/** Expected information of a normal reading about two causes. */
class DiscriminationTest {
    private static Interval normal(double mean, double deviation) {
        return new Interval(mean, mean - 1.959964 * deviation, mean + 1.959964 * deviation);
    }

    /** Analytic: what reads the same under both tells nothing. */
    @Test
    void alikeReadingsTellNothing() {
        assertThat(Discrimination.bits(0.4, normal(2, 0.5), normal(2, 0.5))).isCloseTo(0, within(1e-12));
    }

    /** Analytic: readings that never overlap tell all there is to know, the entropy of the choice. */
    @Test
    void distantReadingsTellTheEntropy() {
        double entropy = -(0.25 * Math.log(0.25) + 0.75 * Math.log(0.75)) / Math.log(2);
        assertThat(Discrimination.bits(0.25, normal(0, 1), normal(100, 2))).isCloseTo(entropy, within(1e-6));
    }

    /**
     * Other program: adaptive quadrature of the same integral by SciPy 1.17.1, {@code scipy.integrate.quad} to 1e-12; the
     * first is the capacity of a binary channel with normal noise of the amplitude.
     */
    @Test
    void halfOverlappingReadings() {
        assertThat(Discrimination.bits(0.5, normal(-1, 1), normal(1, 1))).isCloseTo(0.485944154, within(1e-6));
        assertThat(Discrimination.bits(0.3, normal(0, 1), normal(2, 0.5))).isCloseTo(0.620127029, within(1e-6));
    }
}
