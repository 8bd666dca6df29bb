package org.fizzhull.uncertainty.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/** Draws after a measurement against posteriors that are known in closed form (analytic). */
class PosteriorTest {
    private static final Workers PARALLEL =
            (count, task) -> IntStream.range(0, count).parallel().forEach(task::run);

    private static final List<Prior> TWO = List.of(Priors.normal(0, 1), Priors.normal(0, 2));

    /** The sum a + b was measured as 1 with standard deviation 0.5: b is solved, its slope is 1. */
    private static final class Sum implements ExactConditioning {
        @Override
        public int[] solved() {
            return new int[] {1};
        }

        @Override
        public int uniforms() {
            return 1;
        }

        @Override
        public double solve(double[] inputs, double[] u) {
            inputs[1] = 1 + 0.5 * Normal.quantile(u[0]) - inputs[0];
            return TWO.get(1).logDensity(inputs[1]);
        }
    }

    private static Posterior sum(Workers workers) {
        return Posterior.of(TWO, 32768, 1, workers, 4, Sum::new);
    }

    /**
     * ANALYTIC: of independent normals, given their sum with an error: mean 1/5.25, 4/5.25; variances by the rule. Two
     * standard errors of 30,000 effective draws are 0.011.
     */
    @Test
    void twoNormalsAndTheirSum() {
        Posterior after = sum(Workers.CALLER);
        double[] a = after.draws(() -> x -> x[0]);
        double[] b = after.draws(() -> x -> x[1]);
        double[] y = after.draws(() -> x -> x[0] + x[1]);
        assertThat(Statistics.mean(a)).isCloseTo(1 / 5.25, within(0.011));
        assertThat(Statistics.mean(b)).isCloseTo(4 / 5.25, within(0.011));
        assertThat(Statistics.variance(a, Statistics.mean(a))).isCloseTo(1 - 1 / 5.25, within(0.03));
        assertThat(Statistics.variance(y, Statistics.mean(y))).isCloseTo(5 - 25 / 5.25, within(0.01));
        assertThat(after.effective()).isBetween(16000.0, 32768.0);
    }

    /** ANALYTIC: given the sum, knowing a leaves of b only the error: the correlation of the posterior, squared. */
    @Test
    void firstOrderOfDependentInputs() {
        Posterior after = sum(Workers.CALLER);
        CorrelationRatio found = after.ratios(after.draws(() -> x -> x[1]), new int[] {1, 1});
        double covariance = -4 / 5.25;
        double squared = covariance * covariance / ((1 - 1 / 5.25) * (4 - 16 / 5.25));
        assertThat(found.firstOrder()[0]).isCloseTo(squared, within(0.03));
        assertThat(found.firstOrder()[1]).isGreaterThan(0.97);
        assertThat(found.error()[0]).isBetween(1e-5, 0.03);
    }

    /** ANALYTIC: p squared was measured as 1; the roots 1 and -1 weigh as the prior there, 1 to exp(-1). */
    @Test
    void ofTwoRootsEachHasItsShare() {
        List<Prior> one = List.of(Priors.normal(0.5, 1));
        ExactConditioning square = new ExactConditioning() {
            @Override
            public int[] solved() {
                return new int[] {0};
            }

            @Override
            public int uniforms() {
                return 2;
            }

            @Override
            public double solve(double[] inputs, double[] u) {
                double root = Math.sqrt(1 + 1e-3 * Normal.quantile(u[0]));
                double plus = Math.exp(one.get(0).logDensity(root)) / (2 * root);
                double minus = Math.exp(one.get(0).logDensity(-root)) / (2 * root);
                inputs[0] = u[1] * (plus + minus) < plus ? root : -root;
                return Math.log(plus + minus);
            }
        };
        double[] p = Posterior.of(one, 4096, 2, Workers.CALLER, 1, () -> square).draws(() -> x -> x[0]);
        assertThat(Statistics.shareAbove(p, 0)).isCloseTo(1 / (1 + Math.exp(-1)), within(0.01));
    }

    @Test
    void threadsNeverChangeAByteAndThinningKeepsTheMiddle() {
        Posterior alone = sum(Workers.CALLER);
        double[] y = alone.draws(() -> x -> x[0]);
        assertThat(sum(PARALLEL).draws(() -> x -> x[0])).containsExactly(y);
        double[] few = alone.thinned(512).draws(() -> x -> x[0]);
        assertThat(few).hasSize(512);
        assertThat(Statistics.mean(few)).isCloseTo(Statistics.mean(y), within(0.1));
        assertThat(alone.medians()[1]).isCloseTo(4 / 5.25, within(0.05));
    }

    @Test
    void whatNothingAgreesWithIsWorthNoDraw() {
        ExactConditioning never = new ExactConditioning() {
            @Override
            public int[] solved() {
                return new int[] {0};
            }

            @Override
            public int uniforms() {
                return 0;
            }

            @Override
            public double solve(double[] inputs, double[] u) {
                return Double.NEGATIVE_INFINITY;
            }
        };
        Posterior none = Posterior.of(TWO, 128, 1, Workers.CALLER, 2, () -> never);
        assertThat(none.effective()).isZero();
        assertThat(none.proposals()).isEqualTo(256);
    }
}
