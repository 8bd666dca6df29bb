package org.fizzhull.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.fizzhull.numeric.Normal;
import org.junit.jupiter.api.Test;

/** Quantiles against Apache Commons Math 3.6.1 (other program) or by hand (analytic). */
class PriorsTest {
    private static final double[] U = {0.001, 0.025, 0.2, 0.5, 0.77, 0.975, 0.9999};

    @Test
    void normalLognormalAndBetaMeetTheReferenceLibrary() {
        NormalDistribution normal = new NormalDistribution(3, 0.5);
        LogNormalDistribution lognormal = new LogNormalDistribution(Math.log(0.8), Math.log(1.7));
        for (double u : U) {
            assertThat(Priors.normal(3, 0.5).quantile(u))
                    .isCloseTo(normal.inverseCumulativeProbability(u), within(1e-8));
            assertThat(Priors.lognormal(0.8, 1.7).quantile(u))
                    .isCloseTo(lognormal.inverseCumulativeProbability(u), within(1e-8));
        }
    }

    /** ANALYTIC: the density is one over the slope of the quantile. */
    @Test
    void densitiesAreOneOverTheSlopeOfTheQuantile() {
        List<Prior> all = List.of(
                Priors.normal(3, 0.5),
                Priors.cutNormal(1, 0.5, 0, 1.2),
                Priors.lognormal(0.8, 1.7),
                Priors.uniform(-1, 3),
                Priors.splitUniform(5, 20, 60));
        for (Prior prior : all) {
            for (double u : new double[] {0.03, 0.2, 0.45, 0.77, 0.97}) {
                double slope = (prior.quantile(u + 1e-6) - prior.quantile(u - 1e-6)) / 2e-6;
                assertThat(Math.exp(prior.logDensity(prior.quantile(u))) * slope)
                        .isCloseTo(1, within(1e-5));
            }
            assertThat(Math.exp(prior.logDensity(1e3))).isLessThan(1e-9);
        }
    }

    /** ANALYTIC: all probability at one point; nothing below it, all above. */
    @Test
    void withoutWidthAPriorIsItsValue() {
        for (Prior prior : List.of(Priors.normal(3, 0), Priors.uniform(3, 3), Priors.lognormal(3, 1))) {
            assertThat(prior.quantile(0.1)).isEqualTo(3);
            assertThat(prior.median()).isEqualTo(3);
            assertThat(prior.atScore(-2)).isEqualTo(3);
            assertThat(prior.logDensity(3)).isZero();
            assertThat(prior.logDensity(3.1)).isEqualTo(Double.NEGATIVE_INFINITY);
            assertThat(prior.cumulative(2.9)).isZero();
            assertThat(prior.cumulative(3.1)).isEqualTo(1);
        }
    }

    @Test
    void rectanglesAreStraightLines() {
        assertThat(Priors.uniform(-1, 3).quantile(0.25)).isEqualTo(0);
        Prior split = Priors.splitUniform(0.35, 0.65, 0.9);
        assertThat(split.quantile(0.25)).isCloseTo(0.5, within(1e-15));
        assertThat(split.median()).isEqualTo(0.65);
        assertThat(split.quantile(0.75)).isCloseTo(0.775, within(1e-15));
    }

    /** Analytic: a normal cut at its mean minus one sigma has P(x below the mean) = (1/2 - Phi(-1))/(1 - Phi(-1)). */
    @Test
    void aCutNormalStaysWithinItsLimits() {
        Prior cut = Priors.cutNormal(5, 1, 4, 100);
        double below = Normal.cumulative(-1);
        assertThat(cut.quantile((0.5 - below) / (1 - below))).isCloseTo(5, within(1e-7));
        assertThat(cut.quantile(1e-12)).isGreaterThanOrEqualTo(4 - 1e-6);
    }

    @Test
    void everyPriorRises() {
        for (Prior prior : List.of(
                Priors.normal(0, 1),
                Priors.cutNormal(0, 1, -1, 2),
                Priors.lognormal(1, 2),
                Priors.uniform(0, 1),
                Priors.splitUniform(0, 0.2, 1))) {
            for (int i = 1; i < U.length; i++) {
                assertThat(prior.quantile(U[i])).isGreaterThan(prior.quantile(U[i - 1]));
            }
        }
    }

    @Test
    void impossibleArgumentsAreMistakes() {
        double nan = Double.NaN;
        assertThatThrownBy(() -> Priors.normal(nan, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Priors.normal(0, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Priors.cutNormal(0, 1, 0, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Priors.lognormal(0, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Priors.uniform(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Priors.splitUniform(0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
