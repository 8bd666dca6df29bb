package org.fizzhull.validation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.question.Factors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * STATISTICS: simulation-based calibration of what is learned, of as many benches as the proof profile allows: {@code mvn -Pproof -pl
 * validation -am test -Dtest=LearnedTruthsTest -Dsurefire.failIfNoSpecifiedTests=false}.
 */
class LearnedTruthsTest {
    private static final int BENCHES = 500;

    /** STATISTICS: of 100 truths of ten benches 95 % lie inside their intervals, to three standard errors of 2.2 %. */
    @Test
    void tenBenchesHoldTheirTruths() {
        assertThat(new LearnedTruths(10).inside()).isGreaterThan(95 - 6.6);
    }

    /**
     * The rank of a truth among its draws is uniform (Talts et al. 2018, arXiv:1804.06788, from memory). Pearson's chi-squared of
     * each of the ten inputs in five classes; the least p-value times ten (Bonferroni) is below 0.1 % once in a thousand runs. Of
     * 5,000 truths 95 % lie inside their intervals, to three standard errors.
     */
    @Test
    @Tag("proof")
    void ranksAreUniform() {
        LearnedTruths truths = new LearnedTruths(BENCHES);
        ChiSquaredDistribution law = new ChiSquaredDistribution(4);
        Map<String, Double> chances = new TreeMap<>();
        double least = 1;
        for (Factor row : Factors.standard().rows()) {
            double chance = 1 - law.cumulativeProbability(truths.ranks(row.input()));
            chances.put(row.input().label(), chance);
            least = Math.min(least, chance);
        }
        double together = Math.min(1, chances.size() * least);
        System.out.println(BENCHES + " benches: p = " + together + " of all inputs together, " + truths.inside()
                + " % inside; p of each: " + chances);
        assertThat(together).as("p-value of uniform ranks, each: %s", chances).isGreaterThan(1e-3);
        assertThat(truths.inside()).isBetween(95 - 0.93, 95 + 0.93);
    }
}
