package org.fizzhull.quantity.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** By definition: the decimal numerals that people write, and none of the literals of a programming language. */
class BareNumberTest {
    @Test
    void numeralsAreRead() {
        assertThat(BareNumber.of("141.5").orElseThrow()).isEqualTo(141.5);
        assertThat(BareNumber.of("-3").orElseThrow()).isEqualTo(-3);
        assertThat(BareNumber.of("+.5").orElseThrow()).isEqualTo(0.5);
        assertThat(BareNumber.of("1.5E+2").orElseThrow()).isEqualTo(150);
        assertThat(BareNumber.of("7.").orElseThrow()).isEqualTo(7);
        assertThat(BareNumber.read("price", " 3.10 ")).isEqualTo(3.1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                ".",
                "NaN",
                "Infinity",
                "0x1p7",
                "141f",
                "141d",
                "1e999",
                "1e",
                "1,5",
                "1_000",
                "\u0663",
                "--1",
                "1e1e1"
            })
    void whatIsNoNumeralIsNotRead(String text) {
        assertThat(BareNumber.of(text)).isEmpty();
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> BareNumber.read("price", text));
        assertThat(refusal.code()).isEqualTo("not-a-number");
    }
}
