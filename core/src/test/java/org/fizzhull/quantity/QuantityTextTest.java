package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Dimension.DENSITY;
import static org.fizzhull.quantity.Dimension.DURATION;
import static org.fizzhull.quantity.Dimension.FRACTION;
import static org.fizzhull.quantity.Dimension.LENGTH;
import static org.fizzhull.quantity.Dimension.MASS;
import static org.fizzhull.quantity.Dimension.PRESSURE;
import static org.fizzhull.quantity.Dimension.TEMPERATURE;
import static org.fizzhull.quantity.Dimension.VOLUME;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What may be written, against the defined value of each unit (analytic: definitions of inch, pound and gallon). */
class QuantityTextTest {
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double FLUID_OUNCE = 231 * INCH * INCH * INCH / 128;

    static Object[][] accepted() {
        return new Object[][] {
            {"65 mm", LENGTH, 0.065},
            {"65mm", LENGTH, 0.065},
            {"6.5 cm", LENGTH, 0.065},
            {" 65\u00a0mm ", LENGTH, 0.065},
            {".5 m", LENGTH, 0.5},
            {"2 1/2 in", LENGTH, 2.5 * INCH},
            {"2½ in", LENGTH, 2.5 * INCH},
            {"2 ½ inches", LENGTH, 2.5 * INCH},
            {"3\u20444 in", LENGTH, 0.75 * INCH},
            {"1 ft 2 in", LENGTH, 14 * INCH},
            {"1.2e2 mm", LENGTH, 0.12},
            {"138g", MASS, 0.138},
            {"138 grams", MASS, 0.138},
            {"+20 g", MASS, 0.02},
            {"\u221220 g", MASS, -0.02},
            {"- 20 g", MASS, -0.02},
            {"-0 g", MASS, 0.0},
            {"1.2 kg", MASS, 1.2},
            {"250 mg", MASS, 0.00025},
            {"4.6 oz", MASS, 4.6 * POUND / 16},
            {"1 lb 2 oz", MASS, 18 * POUND / 16},
            {"1lb2oz", MASS, 18 * POUND / 16},
            {"1 kg 20 g", MASS, 1.02},
            {"20 mL", VOLUME, 20e-6},
            {"20 ml", VOLUME, 20e-6},
            {"2 cL", VOLUME, 20e-6},
            {"150 L", VOLUME, 0.15},
            {"143 cm3", VOLUME, 143e-6},
            {"143 cm\u00b3", VOLUME, 143e-6},
            {"25 m3", VOLUME, 25},
            {"2 fl oz", VOLUME, 2 * FLUID_OUNCE},
            {"1/2 cup", VOLUME, 120e-6},
            {"\u2153 cup", VOLUME, 80e-6},
            {"2 tsp", VOLUME, 10e-6},
            {"1 tbsp", VOLUME, 15e-6},
            {"1 cup 1 tbsp", VOLUME, 255e-6},
            {"12 drops", VOLUME, 0.6e-6},
            {"1 drop", VOLUME, 0.05e-6},
            {"0.95 g/cm3", DENSITY, 950},
            {"0.95 g/mL", DENSITY, 950},
            {"950 kg/m\u00b3", DENSITY, 950},
            {"30 kPa", PRESSURE, 30e3},
            {"0.2 MPa", PRESSURE, 0.2e6},
            {"0.3 bar", PRESSURE, 30e3},
            {"101325 Pa", PRESSURE, 101325},
            {"1 psi", PRESSURE, POUND * 9.80665 / (INCH * INCH)},
            {"38 C", TEMPERATURE, 311.15},
            {"38 \u00b0C", TEMPERATURE, 311.15},
            {"38\u2103", TEMPERATURE, 311.15},
            {"100 F", TEMPERATURE, 311.15 - 2 / 9.0},
            {"212 degF", TEMPERATURE, 373.15},
            {"-40 F", TEMPERATURE, 233.15},
            {"311.15 K", TEMPERATURE, 311.15},
            {"36 h", DURATION, 129_600},
            {"3 d", DURATION, 259_200},
            {"1d", DURATION, 86_400},
            {"4 min 10 s", DURATION, 250},
            {"1h30min", DURATION, 5_400},
            {"2 weeks", DURATION, 1_209_600},
            {"45 %", FRACTION, 0.45},
            {"45%", FRACTION, 0.45},
            {"0.5 percent", FRACTION, 0.005},
        };
    }

    @ParameterizedTest
    @MethodSource("accepted")
    void readsOneValue(String text, Dimension dimension, double si) {
        double read = QuantityText.parseExact("x", text, dimension);
        assertThat(read).isCloseTo(si, within(4 * Math.ulp(si))); // the expectation itself is a few roundings
    }

    static Object[][] spreads() {
        return new Object[][] {
            {"138 g +- 4 g", Amount.normal(MASS, 0.138, 0.004)},
            {"138 g \u00b1 4 g", Amount.normal(MASS, 0.138, 0.004)},
            {"138 +- 4 g", Amount.normal(MASS, 0.138, 0.004)},
            {"138g+/-4g", Amount.normal(MASS, 0.138, 0.004)},
            {"138 g +- 0 g", Amount.exact(MASS, 0.138)},
            {"0.138 kg +- 4000 mg", Amount.normal(MASS, 0.138, 0.004)},
            {"4 to 8 g", Amount.between(MASS, 0.004, 0.008)},
            {"4 g to 8 g", Amount.between(MASS, 0.004, 0.008)},
            {"4 g to 0.008 kg", Amount.between(MASS, 0.004, 0.008)},
            {"4 to 4 g", Amount.exact(MASS, 0.004)},
            {"-2 to 3 C", Amount.between(TEMPERATURE, 271.15, 276.15)},
            {"1/2 to 1 1/2 cup", Amount.between(VOLUME, 120e-6, 360e-6)},
            {"2 to 3 d", Amount.between(DURATION, 172_800, 259_200)},
            {"45 +- 3 %", Amount.normal(FRACTION, 0.45, 0.03)},
        };
    }

    @ParameterizedTest
    @MethodSource("spreads")
    void readsSpreadsAndRanges(String text, Amount expected) {
        assertThat(QuantityText.parse("x", text, expected.dimension())).isEqualTo(expected);
    }

    @Test
    void aSpreadOfATemperatureIsADifference() {
        assertThat(QuantityText.parse("bath", "38 C +- 1 C", TEMPERATURE).standardDeviation())
                .isEqualTo(1);
        Amount fahrenheit = QuantityText.parse("bath", "100 +- 2 F", TEMPERATURE);
        assertThat(fahrenheit.standardDeviation()).isEqualTo(10.0 / 9);
        assertThat(fahrenheit.value()).isCloseTo(310.927777777777, within(1e-11));
    }

    @Test
    void aRangeIsRectangular() {
        // JCGM 101:2008, 6.4.2: mean (a + b)/2, variance (b - a)^2/12
        Amount range = QuantityText.parse("water", "4 to 8 g", MASS);
        assertThat(range.value()).isCloseTo(0.006, within(1e-18));
        assertThat(range.standardDeviation()).isCloseTo(0.004 / Math.sqrt(12), within(1e-18));
        assertThat(range.low()).isEqualTo(0.004);
        assertThat(range.high()).isEqualTo(0.008);
    }

    @Test
    void aNormalSpreadReachesTheCoverageInterval() {
        // 97.5 % point of the normal distribution: 1.959964 (published tables)
        Amount normal = QuantityText.parse("mass", "138 g +- 4 g", MASS);
        assertThat(normal.high()).isCloseTo(0.138 + 1.959964 * 0.004, within(1e-9));
        assertThat(normal.low()).isCloseTo(0.138 - 1.959964 * 0.004, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "us-legal, 240, 15, 5", // 21 CFR 101.9(b)(5)(viii)
        "metric, 250, 15, 5", // common practice
        "us-customary, 236.588, 14.787, 4.929" // command line contract
    })
    void cupsAndSpoonsFollowTheMeasures(String name, double cup, double tablespoon, double teaspoon) {
        Measures measures = Measures.named("--cups", name);
        assertThat(measures.text()).isEqualTo(name);
        double millilitre = 1e-6;
        assertThat(QuantityText.parseExact("x", "1 cup", VOLUME, measures)).isCloseTo(cup * millilitre, within(1e-18));
        assertThat(QuantityText.parseExact("x", "1 tbsp", VOLUME, measures))
                .isCloseTo(tablespoon * millilitre, within(1e-18));
        assertThat(QuantityText.parseExact("x", "1 tsp", VOLUME, measures))
                .isCloseTo(teaspoon * millilitre, within(1e-18));
        double half = QuantityText.parseExact("x", "1/2 cup", VOLUME, measures);
        assertThat(QuantityText.format(half, Unit.CUP, measures)).isEqualTo("0.5 cup");
    }

    @Test
    void customaryMeasuresAreTheGallonOf231CubicInches() {
        double gallon = 231 * INCH * INCH * INCH;
        assertThat(Unit.CUP.toSi(16, Measures.US_CUSTOMARY)).isCloseTo(gallon, within(2e-5 * gallon));
        assertThat(Unit.TEASPOON.toSi(768, Measures.US_CUSTOMARY)).isCloseTo(gallon, within(2e-5 * gallon));
    }

    @Test
    void oneOfSeveralDimensions() {
        assertThat(QuantityText.parseAny("corn starch", "1/2 cup", Measures.METRIC, MASS, VOLUME))
                .isEqualTo(Amount.exact(VOLUME, 125e-6));
        assertThat(QuantityText.parseAny("corn starch", "60 g", Measures.METRIC, MASS, VOLUME))
                .isEqualTo(Amount.exact(MASS, 0.06));
    }

    @Test
    void theSameAmountHasTheSameBitsInEveryMetricUnit() {
        for (int tenths = 1; tenths < 3000; tenths++) {
            double millimetres = QuantityText.parseExact("x", tenths / 10 + "." + tenths % 10 + " mm", LENGTH);
            double metres = QuantityText.parseExact("x", tenths + "e-4 m", LENGTH);
            assertThat(millimetres).isEqualTo(metres).isEqualTo(tenths / 1e4);
        }
    }

    @Test
    void unitsByName() {
        assertThat(QuantityText.unit("unit", "mm", LENGTH)).isEqualTo(Unit.MILLIMETRE);
        assertThat(QuantityText.isUnit("oz")).isTrue();
        assertThat(QuantityText.isUnit("%")).isTrue();
        assertThat(QuantityText.isUnit("fl oz")).isTrue();
        assertThat(QuantityText.isUnit("--json")).isFalse();
        assertThat(QuantityText.isUnit("g of salt")).isFalse();
    }

    static Arguments[] writtenBack() {
        return new Arguments[] {
            Arguments.of("65 mm", LENGTH, Unit.CENTIMETRE, "6.5 cm"),
            Arguments.of("2 1/2 in", LENGTH, Unit.INCH, "2.5 in"),
            Arguments.of("38 C", TEMPERATURE, Unit.CELSIUS, "38 C"),
            Arguments.of("212 F", TEMPERATURE, Unit.CELSIUS, "100 C"),
            Arguments.of("138 g +- 4 g", MASS, Unit.GRAM, "138 g +- 4 g"),
            Arguments.of("4 to 8 g", MASS, Unit.GRAM, "4 to 8 g"),
            Arguments.of("-20 g", MASS, Unit.GRAM, "-20 g"),
            Arguments.of("0 g", MASS, Unit.GRAM, "0 g"),
            Arguments.of("1 h 30 min", DURATION, Unit.MINUTE, "90 min"),
        };
    }

    @ParameterizedTest
    @MethodSource
    void writtenBack(String text, Dimension dimension, Unit unit, String expected) {
        assertThat(QuantityText.format(QuantityText.parse("x", text, dimension), unit))
                .isEqualTo(expected);
    }
}
