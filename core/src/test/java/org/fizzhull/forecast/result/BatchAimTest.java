package org.fizzhull.forecast.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.result.CriticalWeights.Met;
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
        Shares shares = new Shares(below, bent, above, OptionalDouble.of(0.125), OptionalDouble.of(0.130));
        assertThat(BatchAim.of(shares).isPresent()).isEqualTo(aim);
        if (aim) {
            assertThat(BatchAim.of(shares)).hasValue(new BatchAim(0.125, 0.130));
        }
        assertThat(BatchAim.bent(shares)).isEqualTo(bent > 0.1);
    }

    /** The aim never lies above the weight that no single piece should pass. */
    @Test
    void theAimIsNotAboveTheLimit() {
        Shares shares = new Shares(0, 0, 0, OptionalDouble.of(0.135), OptionalDouble.of(0.130));
        assertThat(BatchAim.of(shares)).hasValue(new BatchAim(0.130, 0.130));
        assertThat(BatchAim.of(new Shares(0, 0, 0, OptionalDouble.empty(), OptionalDouble.of(1))))
                .isEmpty();
        assertThat(BatchAim.of(new Shares(0, 0, 0, OptionalDouble.of(1), OptionalDouble.empty())))
                .isEmpty();
        assertThat(BatchAim.bent(new Shares(0, 0.1, 0, OptionalDouble.empty(), OptionalDouble.empty())))
                .isTrue();
    }

    /** Weights of which only the shares and the two aims matter. */
    private record Shares(double below, double bent, double above, OptionalDouble aim, OptionalDouble most)
            implements CriticalWeights {
        @Override
        public double share(Met what) {
            return Map.of(Met.BELOW_RANGE, below, Met.NOT_MONOTONE, bent, Met.ABOVE_RANGE, above)
                    .getOrDefault(what, 0.0);
        }

        @Override
        public OptionalDouble aim(double chance) {
            return aim;
        }

        @Override
        public OptionalDouble single(double chance) {
            return most;
        }

        @Override
        public int draws() {
            throw new UnsupportedOperationException();
        }

        @Override
        public int count(Met what) {
            throw new UnsupportedOperationException();
        }

        @Override
        public double[] toTheEnd() {
            throw new UnsupportedOperationException();
        }

        @Override
        public double[] atOnce() {
            throw new UnsupportedOperationException();
        }

        @Override
        public Interval interval() {
            throw new UnsupportedOperationException();
        }

        @Override
        public double chanceAt(double weight) {
            throw new UnsupportedOperationException();
        }

        @Override
        public double chanceAtOnce(double weight) {
            throw new UnsupportedOperationException();
        }

        @Override
        public double heaviest(double chance) {
            throw new UnsupportedOperationException();
        }

        @Override
        public double heaviestAtOnce(double chance) {
            throw new UnsupportedOperationException();
        }

        @Override
        public BatchShare batch() {
            throw new UnsupportedOperationException();
        }

        @Override
        public BatchShare batchAt(double entered) {
            throw new UnsupportedOperationException();
        }

        @Override
        public double[] shares() {
            throw new UnsupportedOperationException();
        }

        @Override
        public double[] sharesAtOnce() {
            throw new UnsupportedOperationException();
        }
    }
}
