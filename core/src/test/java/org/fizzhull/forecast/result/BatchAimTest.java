package org.fizzhull.forecast.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.fizzhull.forecast.result.CriticalWeights.BatchAim;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY DEFINITION: a batch has an aim where at most a tenth of the draws tells that no weight is right. */
class BatchAimTest {
    /** Below the range and bent together at most a tenth; above the range at most nine tenths. */
    @ParameterizedTest
    @CsvSource({
        "0,0,0,true",
        "0.0625,0.03125,0,true",
        "0.0625,0.0625,0,false",
        "0.125,0,0,false",
        "0,0.125,0,false",
        "0,0,0.9,true",
        "0,0,0.91,false"
    })
    void whereThereIsAnAim(double below, double bent, double above, boolean aim) {
        CriticalShares shares =
                new CriticalShares(below, bent, above, OptionalDouble.of(0.125), OptionalDouble.of(0.130));
        assertThat(BatchAim.of(shares).isPresent()).isEqualTo(aim);
        if (aim) {
            assertThat(BatchAim.of(shares)).hasValue(new BatchAim(0.125, 0.130));
        }
        assertThat(BatchAim.bent(shares)).isEqualTo(bent > 0.1);
    }

    /** The aim never lies above the weight that no single piece should pass. */
    @Test
    void theAimIsNotAboveTheLimit() {
        CriticalShares shares = new CriticalShares(0, 0, 0, OptionalDouble.of(0.135), OptionalDouble.of(0.130));
        assertThat(BatchAim.of(shares)).hasValue(new BatchAim(0.130, 0.130));
        assertThat(BatchAim.of(new CriticalShares(0, 0, 0, OptionalDouble.empty(), OptionalDouble.of(1))))
                .isEmpty();
        assertThat(BatchAim.of(new CriticalShares(0, 0, 0, OptionalDouble.of(1), OptionalDouble.empty())))
                .isEmpty();
        assertThat(BatchAim.bent(new CriticalShares(0, 0.1, 0, OptionalDouble.empty(), OptionalDouble.empty())))
                .isTrue();
    }
}
