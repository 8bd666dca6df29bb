package org.fizzhull.medium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.litres;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;

/** The bath as a value. Numbers of the relations themselves are held in the validation module. */
class BathTest {
    private static final Bath WARM = Bath.at(celsius(38));

    /** OTHER PROGRAM: IAPWS-95 and IAPWS releases by the open-source Python package iapws 1.5.3. */
    @Test
    void freshWaterAt38CMeetsTheReferenceFormulations() {
        assertThat(WARM.density()).isCloseTo(992.966264, within(0.004));
        assertThat(WARM.viscosity()).isCloseTo(678.04e-6, within(0.01e-6));
        assertThat(WARM.surfaceTension()).isCloseTo(69.920e-3, within(0.001e-3));
        assertThat(WARM.vapourPressure()).isCloseTo(6633, within(1.0));
        assertThat(WARM.notices()).isEmpty();
    }

    /** ANALYTIC: 5 kg in 150 L of water of known mass; the solution holds both. */
    @Test
    void saltIsStirredIntoTheFreshWater() {
        Bath salty = WARM.withSalt(5);
        double water = WARM.density() * 0.150;
        assertThat(salty.saltFraction()).isCloseTo(5 / (5 + water), within(1e-15));
        assertThat(salty.density()).isGreaterThan(WARM.density() + 20);
        assertThat(salty.densityAt(celsius(20))).isGreaterThan(salty.density());
        assertThat(salty.notices()).extracting(Notice::code).containsExactly("salt-in-bath");
        assertThat(salty.withSalt(0)).isEqualTo(WARM);
    }

    @Test
    void eachPartIsChangedAlone() {
        assertThat(WARM.withDepth(0.2)
                        .withVolume(litres(80))
                        .withTemperature(celsius(36))
                        .withSalt(0.5))
                .isEqualTo(new Bath(celsius(36), 0.2, 0.08, 0.5));
    }

    @Test
    void whatIsNoBathIsRefusedWithAMend() {
        assertThat(refusal(() -> Bath.at(celsius(100))))
                .hasMessageContaining("read 100 C")
                .hasMessageContaining("100 F?");
        assertThat(refusal(() -> Bath.at(38)).hint()).contains("kelvin");
        assertThat(refusal(() -> Bath.at(celsius(4000))).hint()).isEqualTo("Check the number and its unit.");
        assertThat(refusal(() -> WARM.withDepth(35)).field()).isEqualTo("bath depth");
        assertThat(refusal(() -> WARM.withVolume(0)).field()).isEqualTo("bath volume");
        assertThat(refusal(() -> WARM.withSalt(500)).hint()).isEqualTo("Did you mean 500 g?");
        assertThat(refusal(() -> WARM.withSalt(-1)).field()).isEqualTo("bath salt");
    }

    @Test
    void notANumberIsRefusedEverywhere() {
        assertThat(refusal(() -> Bath.at(Double.NaN)).code()).isEqualTo("out-of-range");
        assertThat(refusal(() -> WARM.withDepth(Double.NaN)).field()).isEqualTo("bath depth");
        assertThat(refusal(() -> WARM.withVolume(Double.NaN)).field()).isEqualTo("bath volume");
        assertThat(refusal(() -> WARM.withSalt(Double.NaN)).field()).isEqualTo("bath salt");
    }

    @Test
    void icyWaterLiesJustBelowTheVapourPressureRelation() {
        assertThat(Bath.at(celsius(0)).notices()).extracting(Notice::code).containsExactly("outside-validity");
    }

    private static Refusal refusal(ThrowingCallable call) {
        Refusal refusal = catchThrowableOfType(Refusal.class, call);
        assertThat(refusal).isNotNull();
        return refusal;
    }
}
