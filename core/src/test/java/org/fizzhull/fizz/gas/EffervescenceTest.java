package org.fizzhull.fizz.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fizzhull.recipe.Blend;
import org.junit.jupiter.api.Test;

/** Expected values: the chemistry of what is in the mix (no acid, no gas), and the stated limits. */
class EffervescenceTest {
    private static final double MOLAR_BICARBONATE = 0.084007;

    @Test
    void bicarbonateAloneGivesNoGasInWater() {
        // ANALYTIC: without acid, min(bicarbonate, acid groups) = 0
        Effervescence none = Effervescence.of(new Blend.Moles(0, 1 / MOLAR_BICARBONATE, 0));
        assertThat(none).isEqualTo(new Effervescence(Effervescence.Degree.NOT, Effervescence.Cause.ACID));
        assertThat(none.notice().orElseThrow().code()).isEqualTo("no-fizz");
        assertThat(none.notice().orElseThrow().text()).contains("no acid");
    }

    @Test
    void acidAloneGivesNoGas() {
        Effervescence none = Effervescence.of(new Blend.Moles(3 / 0.192124, 0, 0));
        assertThat(none).isEqualTo(new Effervescence(Effervescence.Degree.NOT, Effervescence.Cause.BICARBONATE));
    }

    @Test
    void carbonateThatTakesAllAcidLeavesNoneForGas() {
        // ANALYTIC: CO3 + H -> HCO3 comes first; equal moles leave no acid
        Effervescence none = Effervescence.of(new Blend.Moles(2, 0, 2));
        assertThat(none.cause()).isEqualTo(Effervescence.Cause.ACID);
        assertThat(none.degree()).isEqualTo(Effervescence.Degree.NOT);
    }

    @Test
    void twoPartsToOneFizz() {
        // 5.2 mol CO2 per kg of two parts bicarbonate to one part citric acid, by moles of acid groups
        Blend.Moles usual = new Blend.Moles(3 / 0.192124 / 3, 2 / 3.0 / MOLAR_BICARBONATE, 0);
        Effervescence fizzes = Effervescence.of(usual, 4.6);
        assertThat(fizzes.fizzes()).isTrue();
        assertThat(fizzes.notice()).isEmpty();
    }

    @Test
    void aSpentPieceOfAGoodMixIsCalledSpent() {
        Blend.Moles usual = new Blend.Moles(5.2, 7.9, 0);
        assertThat(Effervescence.of(usual, 0))
                .isEqualTo(new Effervescence(Effervescence.Degree.NOT, Effervescence.Cause.SPENT));
        Effervescence nearly = Effervescence.of(usual, 0.2);
        assertThat(nearly).isEqualTo(new Effervescence(Effervescence.Degree.HARDLY, Effervescence.Cause.SPENT));
        assertThat(nearly.fizzes()).isFalse();
        assertThat(nearly.notice().orElseThrow().code()).isEqualTo("hardly-fizzes");
    }

    @Test
    void anUnknownCapacityIsRefused() {
        Blend.Moles usual = new Blend.Moles(5.2, 7.9, 0);
        assertThatThrownBy(() -> Effervescence.of(usual, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
