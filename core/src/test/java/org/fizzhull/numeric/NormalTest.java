package org.fizzhull.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against Apache Commons Math 3.6.1 (other program) and the check values printed with AS 241. */
class NormalTest {
    private static final NormalDistribution REFERENCE = new NormalDistribution();

    /** Wichura (1988), table of test values: PPND16 at p = 0.25, 0.001, 1e-20 (from memory). */
    @ParameterizedTest
    @CsvSource({"0.25, -0.6744897501960817", "0.001, -3.090232306167814", "1e-20, -9.262340089798408"})
    void quantileMeetsThePublishedTestValues(double p, double expected) {
        assertThat(Normal.quantile(p)).isCloseTo(expected, within(1e-14 * Math.abs(expected)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.001, 0.0249, 0.074, 0.076, 0.3, 0.5, 0.71, 0.925, 0.99, 1 - 1e-9})
    void quantileMeetsTheReferenceLibrary(double p) {
        double expected = REFERENCE.inverseCumulativeProbability(p);
        assertThat(Normal.quantile(p)).isCloseTo(expected, within(1e-8 * (1 + Math.abs(expected))));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, -9, -3.1, -1.281, -1.279, -0.2, 0, 0.7, 1.5, 4, 8, 39})
    void cumulativeMeetsTheReferenceLibrary(double z) {
        assertThat(Normal.cumulative(z)).isCloseTo(REFERENCE.cumulativeProbability(z), within(1e-9));
    }

    @Test
    void anythingButAProbabilityIsAMistake() {
        for (double p : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> Normal.quantile(p)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
