package org.fizzhull.uncertainty.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/** Ranking and selection where the answer is closed or published. Each test says where its expected value is from. */
class RankingTest {
    private static final int DRAWS = 1 << 15;

    /** Three standard errors of a chance near a half from so many separate draws; nets of Sobol points err less. */
    private static final double CLOSE = 3 * 0.5 / Math.sqrt(DRAWS);

    private static final NormalDistribution UNIT = new NormalDistribution(0, 1);

    /** Independent standard normal draws, one array for each of {@code count}. */
    private static double[][] normals(int count) {
        double[][] columns = new double[count][DRAWS];
        MonteCarlo run = new MonteCarlo(
                new ArrayList<>(Collections.nCopies(count, Priors.normal(0, 1))), DRAWS, 7, Workers.CALLER);
        run.draws(() -> new org.fizzhull.uncertainty.sampling.Model() {
            private double[] last = new double[0];

            @Override
            public double at(double[] inputs) {
                last = inputs.clone();
                return inputs[0];
            }

            @Override
            public void keep(int draw) {
                for (int i = 0; i < last.length; i++) {
                    columns[i][draw] = last[i];
                }
            }
        });
        return columns;
    }

    private static double[] shifted(double[] values, double by, double scale) {
        return Arrays.stream(values).map(value -> by + scale * value).toArray();
    }

    /** Analytic: P(X > Y) = Phi(delta / sqrt(s1^2 + s2^2)) for independent normals. */
    @Test
    void oneNormalBeatsAnotherAsOftenAsTheirDifferenceIsPositive() {
        double[][] z = normals(2);
        double chance = Ranking.chanceAbove(shifted(z[0], 0.4, 1), shifted(z[1], 0, 2));
        assertThat(chance).isCloseTo(UNIT.cumulativeProbability(0.4 / Math.sqrt(5)), within(CLOSE));
    }

    /** Analytic: of a pair with correlation r the difference has the variance s1^2 + s2^2 - 2 r s1 s2. */
    @Test
    void sharedDrawsShrinkTheErrorOfADifference() {
        double[][] z = normals(2);
        double r = 0.95;
        double[] a = shifted(z[0], 0.1, 1);
        double[] b = new double[DRAWS];
        double[] difference = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            b[i] = r * z[0][i] + Math.sqrt(1 - r * r) * z[1][i];
            difference[i] = a[i] - b[i];
        }
        double variance = Statistics.variance(difference, Statistics.mean(difference));
        assertThat(variance).isCloseTo(2 - 2 * r, within(0.01 * (2 - 2 * r)));
        assertThat(Ranking.chanceAbove(a, b))
                .isCloseTo(UNIT.cumulativeProbability(0.1 / Math.sqrt(2 - 2 * r)), within(CLOSE));
    }

    /** Analytic: unit normal loss, E max(0, Y - X) = s (phi(k) - k Phi(-k)) with k = delta / s, s of the difference. */
    @Test
    void perfectKnowledgeOfTwoNormalsIsWorthTheUnitNormalLoss() {
        double[][] z = normals(2);
        double[] a = shifted(z[0], 0.5, 1);
        double[] b = z[1];
        double s = Math.sqrt(2);
        double k = 0.5 / s;
        double expected = s * (UNIT.density(k) - k * UNIT.cumulativeProbability(-k));
        double[] best = Ranking.best(new double[][] {a, b});
        assertThat(Ranking.opportunityLoss(best, a)).isCloseTo(expected, within(0.005));
        // the worse choice loses the difference of the means on top
        assertThat(Ranking.opportunityLoss(best, b)).isCloseTo(expected + 0.5, within(0.01));
    }

    /**
     * Published, an exercise of a course in engineering economics with its solution (excerpt seen): a new design saves
     * 79,063, 11,042 or -63,781 with chances 0.30, 0.55 and 0.15, the old one nothing; perfect information is worth 9,567.
     */
    @Test
    void aWorkedExampleOfPerfectInformation() {
        double[] saves = new double[20];
        Arrays.fill(saves, 0, 6, 79_063);
        Arrays.fill(saves, 6, 17, 11_042);
        Arrays.fill(saves, 17, 20, -63_781);
        double[] best = Ranking.best(new double[][] {saves, new double[20]});
        assertThat(Ranking.opportunityLoss(best, saves)).isCloseTo(9_567, within(0.5));
        assertThat(Statistics.mean(saves)).isCloseTo(20_225, within(0.5));
    }

    /**
     * R. E. Bechhofer (1954), Ann. Math. Statist. 25, 16, table I (from memory): with these distances of the best mean from
     * all others, in standard errors of a mean, it is selected with the chance 0.95. For two it is sqrt(2) z, analytic.
     */
    @Test
    void theBestOfSeveralNormalMeansIsSelectedAsOftenAsTheTableSays() {
        double[][] table = {{2, 2.3262}, {3, 2.7101}, {4, 2.9162}};
        for (double[] row : table) {
            double[][] means = normals((int) row[0]);
            means[0] = shifted(means[0], row[1], 1);
            double[] chances = Ranking.chancesOfBest(means);
            assertThat(chances[0]).as(row[0] + " means").isCloseTo(0.95, within(3 * 0.218 / Math.sqrt(DRAWS)));
            assertThat(Arrays.stream(chances).sum()).isCloseTo(1, within(1e-9));
        }
    }

    /** By hand. */
    @Test
    void equalsShareAChance() {
        double[][] values = {{1, 0, 1}, {1, 1, 0}, {1, 0, 1}};
        assertThat(Ranking.chanceAbove(values[0], values[2])).isEqualTo(0.5);
        double[] chances = Ranking.chancesOfBest(values);
        assertThat(chances[0]).isCloseTo((1.0 / 3 + 0.5) / 3, within(1e-12));
        assertThat(chances[1]).isCloseTo((1.0 / 3 + 1) / 3, within(1e-12));
        assertThat(List.of(chances[2])).containsExactly(chances[0]);
    }
}
