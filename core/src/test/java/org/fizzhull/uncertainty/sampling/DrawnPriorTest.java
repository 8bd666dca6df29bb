package org.fizzhull.uncertainty.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** ANALYTIC: quantiles of a normal law taken as its draws, and laws times a factor. */
class DrawnPriorTest {
    private static final NormalDistribution NORMAL = new NormalDistribution(5, 2);

    @Test
    void drawsOfALawGiveItsQuantilesAndItsDensity() {
        double[] draws = IntStream.range(0, 2000)
                .mapToDouble(i -> NORMAL.inverseCumulativeProbability((i + 0.5) / 2000))
                .toArray();
        DrawnPrior prior = DrawnPrior.of(draws);
        assertThat(prior.median()).isCloseTo(5, within(0.01));
        assertThat(prior.quantile(0.975)).isCloseTo(NORMAL.inverseCumulativeProbability(0.975), within(0.02));
        assertThat(prior.cumulative(6)).isCloseTo(NORMAL.cumulativeProbability(6), within(0.002));
        assertThat(Math.exp(prior.logDensity(5))).isCloseTo(NORMAL.density(5), within(0.02 * NORMAL.density(5)));
        assertThat(prior.logDensity(50)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void drawsThatSayNothingAreRefused() {
        assertThatThrownBy(() -> new DrawnPrior(List.of(2.0, 1.0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DrawnPrior.of(new double[] {3, 3})).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aLawTimesAFactorIsTheLawOfTheProduct() {
        Prior twice = new ScaledPrior(Priors.normal(5, 2), 2);
        NormalDistribution product = new NormalDistribution(10, 4);
        assertThat(twice.quantile(0.9)).isCloseTo(product.inverseCumulativeProbability(0.9), within(1e-9));
        assertThat(twice.cumulative(13)).isCloseTo(product.cumulativeProbability(13), within(1e-10));
        assertThat(twice.logDensity(13)).isCloseTo(product.logDensity(13), within(1e-12));
        assertThatThrownBy(() -> new ScaledPrior(Priors.normal(5, 2), 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
