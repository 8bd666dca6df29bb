package org.fizzhull.medium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.litres;

import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BathTextTest {
    @Test
    void temperatureAloneTakesTheUsualTub() {
        assertThat(Bath.parse("--bath", "38 C")).isEqualTo(Bath.at(celsius(38)));
    }

    @Test
    void depthAndVolumeFollowInAnyOrder() {
        Bath bath = Bath.at(celsius(38)).withDepth(0.2).withVolume(litres(80));
        assertThat(Bath.parse("--bath", "38 C, 20 cm, 80 L")).isEqualTo(bath);
        assertThat(Bath.parse("--bath", " 38C ,80 L,20 cm ")).isEqualTo(bath);
        assertThat(Bath.parse("--bath", "38 C, 80 L")).isEqualTo(bath.withDepth(Bath.DEFAULT_DEPTH));
    }

    /** ANALYTIC: 100 F is (100 - 32)/1.8 C. */
    @Test
    void degreesFahrenheitAreRead() {
        assertThat(Bath.parse("--bath", "100 F").temperature()).isCloseTo(celsius(68 / 1.8), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                   | missing-value",
                "38                   | missing-unit",
                "38 C,                | missing-value",
                "38 C, , 80 L         | missing-value",
                "35 cm, 38 C          | wrong-dimension",
                "38 C, 35 g           | wrong-dimension",
                "38,5 C               | comma-decimal",
                "38 C, 1,5 m          | comma-decimal",
                "38 C, 35 cm, 20 cm   | repeated-part",
                "38 C, 80 L, 20 L     | repeated-part",
                "38 C, 80 L, 1 m, 9 C | wrong-dimension",
                "36 to 38 C           | spread-not-allowed",
                "38 C, 30 to 35 cm    | spread-not-allowed",
                "100 C                | out-of-range",
                "38 C, 35 m           | out-of-range",
                "38 C, 0 L            | out-of-range",
                "38 C, -35 cm         | out-of-range"
            })
    void whatIsNoBathIsRefusedUnderTheNameOfTheOption(String text, String code) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> Bath.parse("--bath", text));
        assertThat(refusal.code()).isEqualTo(code);
        assertThat(refusal.field()).isEqualTo("--bath");
    }

    @ParameterizedTest
    @CsvSource({"104 C, Did you mean 104 F?", "'38 C, 35 m', Did you mean 35 cm?", "'38 C, -35 cm', Did you mean 35 cm?"
    })
    void theLikelySlipIsTold(String text, String hint) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> Bath.parse("--bath", text));
        assertThat(refusal.hint()).isEqualTo(hint);
    }
}
