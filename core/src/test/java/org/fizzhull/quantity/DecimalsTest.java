package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "138, 138",
        "4.80, 4.8",
        "0.30000000000000004, 0.3",
        "-0.0652, -0.0652",
        "123456789, 123457000",
        "999999.5, 1000000",
        "1234565, 1234560", // a tie goes to the even digit
        "1234575, 1234580",
        "0.000001, 0.000001",
        "0.0000001, 1e-7",
        "0.0000001234567, 1.23457e-7",
        "1e14, 100000000000000",
        "1e15, 1e15",
        "-6.02214076e23, -6.02214e23",
        "4.9e-324, 4.94066e-324",
        "1.7976931348623157e308, 1.79769e308",
    })
    void writesSixDigits(double value, String expected) {
        assertThat(Decimals.json(value)).isEqualTo(expected);
    }

    /** By hand. */
    @ParameterizedTest
    @CsvSource({"3, 3", "2.96, 3", "0.25, 0.3", "0.04, 0", "12.34, 12.3", "-1.26, -1.3"})
    void writesTenths(double value, String expected) {
        assertThat(Decimals.tenths(value)).isEqualTo(expected);
    }

    @Test
    void writesFewerDigitsForPeople() {
        assertThat(Decimals.text(137.6, 2)).isEqualTo("140");
        assertThat(Decimals.text(9.96, 2)).isEqualTo("10");
        assertThat(Decimals.text(0.0996, 1)).isEqualTo("0.1");
        assertThat(Decimals.text(Math.PI, 17)).isEqualTo("3.1415926535897931");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void jsonHasNoWordForThese(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> Decimals.json(value));
    }
}
