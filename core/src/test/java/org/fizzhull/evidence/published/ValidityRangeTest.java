package org.fizzhull.evidence.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;

class ValidityRangeTest {
    private static final ValidityRange WARM = ValidityRange.ofTemperature("Warm water", celsius(0), celsius(60));
    private static final ValidityRange WALL = ValidityRange.of("Wall", 0.004, 0.045, "mm", 1e-3);

    @Test
    void bothEndsBelongToTheRange() {
        assertThat(WARM.notice(celsius(0))).isEmpty();
        assertThat(WARM.require("bath", celsius(60))).isEqualTo(celsius(60));
    }

    @Test
    void outsideItSaysSoInTheUnitForPeople() {
        assertThat(WARM.notice(celsius(60.5)))
                .contains(new Notice("outside-validity", "Warm water holds from 0 to 60 C; 60.5 C lies outside."));
        Refusal refusal =
                catchThrowableOfType(Refusal.class, () -> WALL.require("wall", 0.048, "Did you mean 4.8 mm?"));
        assertThat(refusal).hasMessage("wall: read 48 mm; allowed is 4 to 45 mm. Did you mean 4.8 mm?");
        assertThat(refusal.code()).isEqualTo("out-of-range");
    }

    @Test
    void anUnknownNumberIsOutside() {
        for (double x : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThat(WALL.notice(x)).isPresent();
            assertThatThrownBy(() -> WALL.require("wall", x)).isInstanceOf(Refusal.class);
        }
    }

    @Test
    void aRangeOfNoMeaningIsAProgrammerError() {
        assertThatThrownBy(() -> ValidityRange.of("x", Double.NaN, 1, "", 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ValidityRange.of("x", 0, 1, "", 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
