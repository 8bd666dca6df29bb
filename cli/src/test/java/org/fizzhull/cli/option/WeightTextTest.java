package org.fizzhull.cli.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;

class WeightTextTest {
    /** HAND: mean (167 + 168 + 169)/3 = 168; deviations -1, 0, 1, so the sample's variance is 2/(3 - 1) = 1. */
    @Test
    void severalWeightsAreTheirMeanAndTheSpreadOfTheSample() {
        Amount weights = WeightText.read("--mass", "167 g, 168 g,169 g");

        assertThat(weights.value()).isCloseTo(0.168, within(1e-12));
        assertThat(weights.standardDeviation()).isCloseTo(0.001, within(1e-12));
        assertThat(WeightText.step("--mass", "167.5 g, 168 g")).isCloseTo(1e-4, within(1e-12));
    }

    @Test
    void aDecimalCommaIsNoListAndEachWeightIsOne() {
        assertThatThrownBy(() -> WeightText.read("--mass", "138,5 g")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> WeightText.read("--mass", "138 g, -5 g")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> WeightText.read("--mass", "138 g, 5 mm")).isInstanceOf(Refusal.class);
    }
}
