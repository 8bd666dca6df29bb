package org.fizzhull.uncertainty.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

class MonteCarloTest {
    private static final Workers PARALLEL =
            (count, task) -> IntStream.range(0, count).parallel().forEach(task::run);

    /**
     * Published: Ishigami and Homma (1990) with a = 7, b = 0.1 on (-pi, pi)^3: first order 0.3139, 0.4424, 0; total
     * 0.5576, 0.4424, 0.2437 (Saltelli et al. 2008, Global Sensitivity Analysis, from memory; they also follow from the
     * variances below, analytic).
     */
    @Test
    void sobolIndicesOfTheIshigamiFunction() {
        double a = 7;
        double b = 0.1;
        double pi4 = Math.pow(Math.PI, 4);
        double v1 = 0.5 * Math.pow(1 + b * pi4 / 5, 2);
        double v2 = a * a / 8;
        double v13 = b * b * pi4 * pi4 * (1.0 / 18 - 1.0 / 50);
        double v = v1 + v2 + v13;
        Prior angle = Priors.uniform(-Math.PI, Math.PI);
        Sensitivity found = new MonteCarlo(List.of(angle, angle, angle), 1 << 17, 1, Workers.CALLER)
                .sensitivity(() ->
                        x -> Math.sin(x[0]) + a * Math.pow(Math.sin(x[1]), 2) + b * Math.pow(x[2], 4) * Math.sin(x[0]));
        double[] first = {v1 / v, v2 / v, 0};
        double[] total = {(v1 + v13) / v, v2 / v, v13 / v};
        for (int i = 0; i < 3; i++) {
            assertThat(found.firstOrder()[i]).isCloseTo(first[i], within(0.01));
            assertThat(found.total()[i]).isCloseTo(total[i], within(0.01));
            assertThat(found.error()[i]).isLessThan(0.01);
        }
        assertThat(Statistics.mean(found.draws())).isCloseTo(a / 2, within(0.01));
        assertThat(Statistics.variance(found.draws(), a / 2)).isCloseTo(v, within(0.01 * v));
    }

    /** Analytic: every draw is kept once, under its own number, and no mixed row of the indices is. */
    @Test
    void aModelIsToldWhichOutputsAreDraws() {
        double[] kept = new double[256];
        int[] calls = new int[256];
        double[] y = new MonteCarlo(Collections.nCopies(3, Priors.normal(0, 1)), 256, 3, Workers.CALLER)
                .sensitivity(() -> new Model() {
                    private double last;

                    @Override
                    public double at(double[] inputs) {
                        last = sum(inputs);
                        return last;
                    }

                    @Override
                    public void keep(int draw) {
                        kept[draw] = last;
                        calls[draw]++;
                    }
                })
                .draws();
        assertThat(kept).containsExactly(y);
        assertThat(calls).containsOnly(1);
    }

    /** Analytic: half of a centred normal is above 0; the stated error covers the deviation. */
    @Test
    void theErrorOfAShareIsHonest() {
        List<Prior> priors = Collections.nCopies(6, Priors.normal(0, 1));
        int outside = 0;
        for (int seed = 0; seed < 40; seed++) {
            double[] y = new MonteCarlo(priors, 1024, seed, Workers.CALLER).draws(() -> MonteCarloTest::sum);
            double share = Statistics.shareAbove(y, 1);
            double[] above = Arrays.stream(y).map(x -> x > 1 ? 1 : 0).toArray();
            double error = Statistics.meanError(above, MonteCarlo.BLOCKS);
            double expected = 1 - Normal.cumulative(1 / Math.sqrt(6));
            if (Math.abs(share - expected) > 2 * error) {
                outside++;
            }
        }
        // With seven degrees of freedom 9 % lie outside two errors: 3.4 of 40; more than 10 has a chance below 1e-3.
        assertThat(outside).isLessThanOrEqualTo(10);
    }

    @Test
    void threadsNeverChangeABit() {
        List<Prior> priors = Collections.nCopies(5, Priors.lognormal(1, 1.5));
        Sensitivity alone = new MonteCarlo(priors, 4096, 3, Workers.CALLER).sensitivity(() -> MonteCarloTest::sum);
        Sensitivity many = new MonteCarlo(priors, 4096, 3, PARALLEL).sensitivity(() -> MonteCarloTest::sum);
        assertThat(many.draws()).containsExactly(alone.draws());
        assertThat(many.total()).containsExactly(alone.total());
        assertThat(many.firstOrder()).containsExactly(alone.firstOrder());
        assertThat(new MonteCarlo(priors, 4096, 3, Workers.CALLER).draws(() -> MonteCarloTest::sum))
                .containsExactly(alone.draws());
    }

    /** By hand: the list has four values, their squares about 2.5 sum to 5. */
    @Test
    void quantilesAndMomentsOfAShortListByHand() {
        double[] sorted = {1, 2, 3, 4};
        assertThat(Statistics.quantile(sorted, 0.5)).isEqualTo(2.5);
        assertThat(Statistics.quantile(sorted, 0.125)).isEqualTo(1);
        assertThat(Statistics.quantile(sorted, 0)).isEqualTo(1);
        assertThat(Statistics.quantile(sorted, 1)).isEqualTo(4);
        assertThat(Statistics.variance(sorted, 2.5)).isCloseTo(5.0 / 3, within(1e-15));
    }

    @Test
    void drawsComeInMultiplesOfSixteen() {
        assertThatThrownBy(() -> new MonteCarlo(List.of(Priors.normal(0, 1)), 100, 1, Workers.CALLER))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("16");
    }

    private static double sum(double[] x) {
        double sum = 0;
        for (double each : x) {
            sum += each;
        }
        return sum;
    }
}
