package org.fizzhull.decide.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is worth saying of an effect, by its definition: a twentieth of a time, half an hour of drying at least. */
class EffectTest {
    @ParameterizedTest
    @CsvSource({"6, 5.6, false", "6, 5.4, true", "40, 38.5, false", "40, 37.5, true"})
    void aQuarterOfAnHourOfDryingIsNotSaid(double before, double after, boolean said) {
        Effect effect = new Effect(Effect.What.READY, OptionalDouble.of(before), OptionalDouble.of(after), "h");

        assertThat(effect.worthSaying()).isEqualTo(said);
    }
}
