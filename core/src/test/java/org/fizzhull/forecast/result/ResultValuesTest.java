package org.fizzhull.forecast.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Interval;
import org.fizzhull.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY DEFINITION: the limits of results; BY HAND: weighted means and spreads of invented weighings. */
class ResultValuesTest {
    private static DryLog.Series series(List<Double> hours, List<Double> grams, double scale) {
        return new DryLog.Series(
                "a",
                hours.stream().map(hour -> 3600 * hour).toList(),
                grams.stream().map(weight -> weight / 1e3).toList(),
                scale);
    }

    private static void refused(List<Double> hours, List<Double> grams, double scale) {
        assertThatThrownBy(() -> series(hours, grams, scale)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Two to a hundred weighings, one after another from the time of pressing on, each above 0 and below a tonne. */
    @Test
    void weighingsOfAPiece() {
        List<Double> two = List.of(130.0, 129.0);
        assertThat(series(List.of(0.0, 1.0), two, 1e-3).times()).containsExactly(0.0, 3600.0);
        refused(List.of(0.0), List.of(130.0), 1e-3);
        refused(List.of(0.0, 1.0), List.of(130.0), 1e-3);
        refused(List.of(0.0, 1.0), two, 0);
        refused(List.of(-1.0, 1.0), two, 1e-3);
        refused(List.of(1.0, 1.0), two, 1e-3);
        refused(List.of(2.0, 1.0), two, 1e-3);
        assertThatThrownBy(() -> new DryLog.Series("a", List.of(0.0, 1e9), two, 1e-3))
                .isInstanceOf(IllegalArgumentException.class);
        refused(List.of(0.0, 1.0), List.of(130.0, 0.0), 1e-3);
        refused(List.of(0.0, 1.0), List.of(130.0, 1e6), 1e-3);
        List<Double> hundred = Collections.nCopies(100, 130.0);
        List<Double> hours = IntStream.range(0, 100).mapToObj(i -> (double) i).toList();
        assertThat(series(hours, hundred, 1e-3).weights()).hasSize(100);
        List<Double> more = IntStream.range(0, 101).mapToObj(i -> (double) i).toList();
        refused(more, Collections.nCopies(101, 130.0), 1e-3);
        assertThatThrownBy(() -> new DryLog(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    /** The end is the latest weighing of all; the gain is the largest rise above what was lightest before. */
    @Test
    void endGainAndScale() {
        DryLog.Series first = series(List.of(0.0, 5.0, 6.0), List.of(130.0, 127.0, 128.5), 5e-4);
        DryLog.Series second = series(List.of(0.0, 9.0), List.of(131.0, 129.0), 1e-3);
        DryLog log = new DryLog(List.of(first, second));
        assertThat(log.end()).isEqualTo(9 * 3600);
        assertThat(log.gain()).isCloseTo(1.5e-3, within(1e-12));
        assertThat(log.scale()).isEqualTo(1e-3);
        assertThat(log.gains()).isFalse(); // 1.5 g against twice a gram
        assertThat(new DryLog(List.of(first)).gains()).isTrue(); // against twice half a gram
        assertThat(new DryLog(List.of(second)).gain()).isCloseTo(-2e-3, within(1e-12));
        DryLog exactly = new DryLog(List.of(new DryLog.Series("b", List.of(0.0, 1.0), List.of(0.25, 0.5), 0.125)));
        assertThat(exactly.gains()).isFalse(); // as much as twice the scale is within it
    }

    /**
     * Weights 130 and 128 g, model losses 0 and 1 g: sums 130 and 129 g. The scale shows to 0.1 g; the model may be off by a
     * tenth of the loss, so variances are 0.01 and 0.01 + 0.04 g^2. Weighted mean (13000 + 2580)/120 = 129.8333 g, squares
     * around it 100/36 + 20 * 25/36 = 16.667.
     */
    @Test
    void misfitOfALog() {
        DryLog.Series piece = series(List.of(0.0, 1.0), List.of(130.0, 128.0), 1e-4);
        assertThat(DryLogFit.deviation(piece, new double[] {0, 1e-3})).isCloseTo(100.0 / 6, within(1e-6));
        assertThat(DryLogFit.deviation(piece, new double[] {0, 2e-3})).isCloseTo(0, within(1e-9));
        Interval open = new Interval(1, 0, 2);
        assertThat(new DryLogFit(open, 2, 100).fits()).isTrue();
        assertThat(new DryLogFit(open, 2.001, 100).fits()).isFalse();
    }

    /** Two of three pieces share their fate where those that are nine of ten up or one of ten down are more than 0.66. */
    @ParameterizedTest
    @CsvSource({"0.4,0.3,true", "0.4,0.26,false", "0.66,0,false", "0,0.67,true"})
    void together(double nine, double one, boolean together) {
        assertThat(new BatchShare(new Interval(0.5, 0.2, 0.8), 0.5, nine, one).together())
                .isEqualTo(together);
    }

    /** Undecided: the interval reaches from below one of ten to above nine of ten. */
    @ParameterizedTest
    @CsvSource({"0.09,0.91,true", "0.1,0.91,false", "0.09,0.9,false"})
    void undecided(double low, double high, boolean undecided) {
        assertThat(new BatchShare(new Interval(0.5, low, high), 0.5, 0, 0).undecided())
                .isEqualTo(undecided);
    }

    /** Each is a probability, and what floats to the end floats at once. */
    @Test
    void probabilities() {
        OptionalDouble no = OptionalDouble.empty();
        assertThat(new Probability(0.5, 0.5, 0, no, no, no).floatsAtOnce()).isEqualTo(0.5);
        assertThat(new Probability(0, 1, 0.1, OptionalDouble.of(1), OptionalDouble.of(0), OptionalDouble.of(1)).error())
                .isEqualTo(0.1);
        bad(0.6, 0.5, 0, no, no, no);
        bad(-0.1, 0.5, 0, no, no, no);
        bad(0, 1.1, 0, no, no, no);
        bad(0, 0.5, -0.1, no, no, no);
        bad(0, 0.5, Double.NaN, no, no, no);
        bad(0, 0.5, 0, OptionalDouble.of(1.1), no, no);
        bad(0, 0.5, 0, no, OptionalDouble.of(-0.1), no);
        bad(0, 0.5, 0, no, no, OptionalDouble.of(Double.NaN));
    }

    private static void bad(
            double end, double once, double error, OptionalDouble later, OptionalDouble down, OptionalDouble sinks) {
        assertThatThrownBy(() -> new Probability(end, once, error, later, down, sinks))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Tippy: less than half a millimetre between centre and metacentre, unless it turns freely. */
    @ParameterizedTest
    @CsvSource({"0.0004,false,true", "0.0005,false,false", "0,true,false"})
    void tippy(double gm, boolean free, boolean tippy) {
        FloatingAttitude attitude = new FloatingAttitude(
                new Vec3(0, 0, 1),
                0.03,
                0.01,
                0.9,
                gm,
                free,
                OptionalDouble.of(1),
                FloatingAttitude.Cavity.NONE,
                FloatingAttitude.Topping.NONE,
                OptionalDouble.empty());
        assertThat(attitude.tippy()).isEqualTo(tippy);
        assertThat(FloatingAttitude.Cavity.FLOODED.word()).isEqualTo("flooded");
        assertThat(FloatingAttitude.Topping.SHOWS.word()).isEqualTo("shows");
    }
}
