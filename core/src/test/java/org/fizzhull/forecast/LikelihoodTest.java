package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fizzhull.forecast.result.Probability;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Table 1 of the IPCC guidance note of 2010 (from memory): the class that is narrowest. */
class LikelihoodTest {
    @ParameterizedTest
    @CsvSource({
        "1, virtually certain",
        "0.995, virtually certain",
        "0.99, very likely",
        "0.91, very likely",
        "0.9, likely",
        "0.67, likely",
        "0.66, about as likely as not",
        "0.5, about as likely as not",
        "0.33, about as likely as not",
        "0.32, unlikely",
        "0.1, unlikely",
        "0.09, very unlikely",
        "0.01, very unlikely",
        "0.009, exceptionally unlikely",
        "0, exceptionally unlikely"
    })
    void words(double probability, String expected) {
        assertThat(Probability.Likelihood.of(probability).words()).isEqualTo(expected);
    }

    @Test
    void onlyProbabilities() {
        for (double p : new double[] {-0.01, 1.01, Double.NaN}) {
            assertThatThrownBy(() -> Probability.Likelihood.of(p)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
