package org.fizzhull.medium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoomAirTest {
    private static RoomAir air(double celsius, double percent) {
        return RoomAir.of(celsius + 273.15, percent / 100);
    }

    /**
     * OTHER PROGRAM: header example of psychrolib, 25 C and 80 % give 21.3094 C [second-hand]; its formula differs 0.02
     * %.
     */
    @Test
    void dewPoint() {
        assertThat(air(25, 80).dewPoint() - 273.15).isCloseTo(21.3094, within(1e-3));
    }

    /** OTHER PROGRAM: validation/reference/air.py, with the vapour pressure of Hyland and Wexler. */
    @ParameterizedTest
    @CsvSource({"20, 50, 13.784", "25, 50, 17.889", "25, 80, 22.380"})
    void wetBulb(double celsius, double percent, double expected) {
        assertThat(air(celsius, percent).wetBulb() - 273.15).isCloseTo(expected, within(5e-3));
    }

    /** ANALYTIC: in saturated air wick, dew and air are alike. */
    @Test
    void saturatedAirIsItsOwnWetBulbAndDewPoint() {
        assertThat(air(18, 100).wetBulb()).isCloseTo(291.15, within(1e-6));
        assertThat(air(18, 100).dewPoint()).isCloseTo(291.15, within(1e-6));
    }

    /** OTHER PROGRAM: validation/reference/air.py. */
    @ParameterizedTest
    @CsvSource({"20, 17.2895, 0.00726", "25, 23.0360, 0.00988"})
    void absoluteHumidity(double celsius, double saturated, double ratioAtHalf) {
        assertThat(1e3 * air(celsius, 30).saturationDensity()).isCloseTo(saturated, withinPercentage(0.03));
        assertThat(air(celsius, 50).humidityRatio()).isCloseTo(ratioAtHalf, within(6e-6));
    }

    /** OTHER PROGRAM: validation/reference/air.py, from the coefficients of Massman (1998). */
    @ParameterizedTest
    @CsvSource({"10, 2.3245e-5", "20, 2.4752e-5", "25, 2.5521e-5", "30, 2.6301e-5"})
    void diffusivity(double celsius, double expected) {
        assertThat(air(celsius, 50).diffusivity()).isCloseTo(expected, withinPercentage(0.01));
    }

    /** FROM MEMORY: Marrero and Mason (1972), another fit of other data; 2 to 3 % between them. */
    @Test
    void diffusivityAgreesWithMarreroAndMason() {
        double other = 1.87e-10 * Math.pow(293.15, 2.072);
        assertThat(air(20, 50).diffusivity()).isCloseTo(other, withinPercentage(3));
    }

    /**
     * PUBLISHED vapour pressures, Smithsonian tables as WMO uses them [from memory]: 1072.4 Pa at 8 C, 2486.5 at 21 C.
     */
    @Test
    void coldDampAirHeatedIsDryAir() {
        RoomAir room = RoomAir.heated(281.15, 0.85, 294.15);
        assertThat(room.humidity()).isCloseTo(0.85 * 1072.4 / 2486.5, withinPercentage(0.2));
        assertThat(room.dewPoint()).isCloseTo(RoomAir.of(281.15, 0.85).dewPoint(), within(1e-6));
    }

    /** PUBLISHED: 125.40 Pa over supercooled water at -20 C, Smithsonian tables [from memory]. */
    @Test
    void frostOutsideIsTakenOverSupercooledWater() {
        RoomAir room = RoomAir.heated(253.15, 1, 293.15);
        assertThat(room.vapourPressure()).isCloseTo(125.40, withinPercentage(0.5));
    }

    /** By hand: 70 F is 294.261 K; air of -5 C and 90 % has 0.36 kPa, which is 16 % of the 2.34 kPa at 20 C. */
    @Test
    void readsTheTwoForms() {
        assertThat(RoomAir.parse("air", "21 C, 55 %")).isEqualTo(RoomAir.of(294.15, 0.55));
        assertThat(RoomAir.parse("air", " 70 F ,  40 %").temperature()).isCloseTo(294.261, within(1e-3));
        assertThat(RoomAir.parse("air", "outside 8 C, 85 %, heated to 21 C"))
                .isEqualTo(RoomAir.heated(281.15, 0.85, 294.15));
        assertThat(RoomAir.parse("air", "Outside -5 C, 90 %, heated to 20 C").humidity())
                .isBetween(0.1, 0.2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "21 C",
                "21 C, 55",
                "21, 55 %",
                "55 %, 21 C",
                "21 C, 155 %",
                "21 C, -5 %",
                "90 C, 5 %",
                "outside 8 C, 85 %",
                "outside 8 C, 85 %, 21 C",
                "outside 20 C, 95 %, heated to 10 C",
                "21 C, 55 %, heated to 25 C",
                "",
                ",",
                "NaN C, 55 %"
            })
    void refusesTheRest(String text) {
        assertThatThrownBy(() -> RoomAir.parse("air", text))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("air");
    }

    @Test
    void aDecimalCommaIsMendedInItsPart() {
        assertThatThrownBy(() -> RoomAir.parse("air", "20,5 C, 50 %"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.hint()).isEqualTo("Write 20.5 C, with a point."));
    }

    @Test
    void refusesNaN() {
        assertThatThrownBy(() -> RoomAir.of(Double.NaN, 0.5)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> RoomAir.of(293, Double.NaN)).isInstanceOf(Refusal.class);
    }
}
