package org.fizzhull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AllowedTest {
    private static final Allowed DIAMETER = Allowed.between(5, 500, Unit.MILLIMETRE);
    private static final Allowed WALL = Allowed.between(0, 45, Unit.MILLIMETRE);
    private static final Allowed BATH = Allowed.between(5, 45, Unit.CELSIUS);
    private static final Allowed MASS = Allowed.aboveUpTo(0, 5, Unit.KILOGRAM);

    /** By hand, from the units of the texts. */
    @Test
    void givesBackWhatLiesInside() {
        assertThat(DIAMETER.parseExact("diameter", "6.5 cm")).isEqualTo(0.065);
        assertThat(DIAMETER.parseExact("diameter", "5 mm")).isEqualTo(0.005);
        assertThat(DIAMETER.parseExact("diameter", "50 cm")).isEqualTo(0.5);
        assertThat(DIAMETER.parse("diameter", "60 to 70 mm").high()).isEqualTo(0.07);
        assertThat(BATH.parseExact("bath", "100 F")).isBetween(310.9, 311.0);
        assertThat(DIAMETER.check("diameter", 0.1)).isEqualTo(0.1);
    }

    @ParameterizedTest
    @CsvSource({
        "65 cm, Did you mean 65 mm?",
        "65 m, Did you mean 65 mm?",
        "2 mm, Did you mean 2 cm?",
        "650 mm, Did you mean 65 mm?",
        "-65 mm, Did you mean 65 mm?",
        "0 mm, Check the number and its unit.",
        "65000 m, Check the number and its unit.",
        "60 to 700 mm, Check the number and its unit.",
        "1 to 70 mm, Check the number and its unit.",
        "1 m 2 cm, Check the number and its unit."
    })
    void offersAMendOnlyWhereItLiesInside(String text, String hint) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> DIAMETER.parse("diameter", text));
        assertThat(refusal.code()).isEqualTo("out-of-range");
        assertThat(refusal.field()).isEqualTo("diameter");
        assertThat(refusal.read()).isEqualTo(text);
        assertThat(refusal.allowed()).isEqualTo("between 5 mm and 500 mm");
        assertThat(refusal.hint()).isEqualTo(hint);
    }

    @Test
    void slipsOfThePointAndOfTheScale() {
        assertThat(hint(WALL, "48 mm")).isEqualTo("Did you mean 4.8 mm?");
        assertThat(hint(BATH, "100 C")).isEqualTo("Did you mean 100 F?");
        assertThat(hint(BATH, "38 F")).isEqualTo("Did you mean 38 C?");
        assertThat(hint(MASS, "138 kg")).isEqualTo("Did you mean 138 g?");
    }

    @Test
    void halfOpenRanges() {
        assertThat(MASS.words()).isEqualTo("more than 0 kg and at most 5 kg");
        assertThat(MASS.contains(0)).isFalse();
        assertThat(MASS.contains(5)).isTrue();
        assertThat(Allowed.above(0, Unit.GRAM).words()).isEqualTo("more than 0 g");
        assertThat(Allowed.above(0, Unit.GRAM).contains(0)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> Allowed.between(5, Double.NaN, Unit.GRAM));
    }

    @Test
    void aNumberWithoutText() {
        Refusal large = catchThrowableOfType(Refusal.class, () -> DIAMETER.check("diameter", 0.65));
        assertThat(large.getMessage())
                .isEqualTo("diameter: read 650 mm; allowed is between 5 mm and 500 mm. Did you mean 65 mm?");
        Refusal none = catchThrowableOfType(Refusal.class, () -> DIAMETER.check("diameter", Double.NaN));
        assertThat(none.read()).isEqualTo("NaN");
        assertThat(none.hint()).isEqualTo("Check the number and its unit.");
    }

    @Test
    void aSpreadIsNotOneValue() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> DIAMETER.parseExact("diameter", "60 to 70 mm"));
        assertThat(refusal.code()).isEqualTo("spread-not-allowed");
    }

    private static String hint(Allowed allowed, String text) {
        return catchThrowableOfType(Refusal.class, () -> allowed.parseExact("x", text))
                .hint();
    }
}
