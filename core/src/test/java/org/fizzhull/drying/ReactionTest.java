package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.drying.solver.DryingGrid;
import org.fizzhull.drying.solver.FilmReaction;
import org.fizzhull.drying.solver.RecedingFront;
import org.fizzhull.recipe.Additives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reaction before the bath. */
class ReactionTest {
    private static final Wrap JAR = Wrap.named("jar").orElseThrow();

    /** Defaults, but the powders start at the film activity, so that all added water is free. */
    private static DryingParameters wetStart(double yield, double rate, double order, double hydrate) {
        return DryingParameters.standard()
                .but()
                .filmActivity(0.72)
                .startActivity(0.72)
                .promptYield(yield)
                .filmRate(rate)
                .activationEnergy(0)
                .reactionOrder(order)
                .hydrateWaters(hydrate)
                .build();
    }

    private static DryingCourse sealed(DryingParameters parameters, double days) {
        var phase = Mixes.open(0.5, days).in(JAR, 0);
        return Drying.run(Mixes.starch(0.02, 0), List.of(phase), parameters, new Resolution(16, 1, 1e-4));
    }

    /**
     * ANALYTIC: sealed in, with w = w0 + m xi, the film reaction of order 1 has
     * xi = (E - 1)/(m/w0 + E/xi_max), E = exp((m + w0/xi_max) k t).
     */
    @ParameterizedTest
    @CsvSource({"6e-5, 0, 10", "6e-5, 1, 30", "1e-3, 2, 20"})
    void sealedInItFollowsTheLogisticLaw(double rate, double hydrate, double days) {
        double m = 0.018015 * (1 - hydrate / 3);
        double w = 0.02;
        double most = 4.6;
        double e = Math.exp((m + w / most) * rate * days * 86400);
        double exact = (e - 1) / (m / w + e / most);
        DryingCourse.State end = sealed(wetStart(0, rate, 1, hydrate), days).last();
        assertThat(end.extent()).isCloseTo(exact, withinPercentage(0.1));
        assertThat(end.fizzLeft()).isCloseTo(1 - exact / most, within(1e-3));
    }

    /**
     * ANALYTIC: order 2 with little water made (h = 2 leaves a third): between the laws without and with all its water.
     */
    @Test
    void orderTwoLiesBetweenItsBounds() {
        double k = 1e-3;
        double t = 10 * 86400;
        double most = 4.6;
        double end = sealed(wetStart(0, k, 2, 2), 10).last().extent();
        double least = most * (1 - 1 / (1 + k * 0.02 * t / most));
        double water = 0.02 + 0.018015 / 3 * end;
        double largest = most * (1 - 1 / (1 + k * water * t / most));
        assertThat(end).isBetween(least, largest);
    }

    /** ANALYTIC: one implicit step of any order solves its own equation. */
    @ParameterizedTest
    @CsvSource({"0.6667, 0.3", "1, 2", "1.5, 10", "2, 1000", "3, 0.001"})
    void theImplicitStepSolvesItsEquation(double order, double reach) {
        var reaction = new FilmReaction(4.6, order, 1);
        double xi = reaction.implicit(0.4, reach);
        assertThat(0.4 + reach * Math.pow(1 - xi / 4.6, order)).isCloseTo(xi, within(1e-10));
        double h = 1e-5 * reach;
        double slope = (reaction.implicit(0.4, reach + h) - reaction.implicit(0.4, reach - h)) / (2 * h);
        assertThat(reaction.slope(xi, reach)).isCloseTo(slope, withinPercentage(0.01));
    }

    /** ANALYTIC, 100 x 7 w/5.2050: per cent of 5.2050 mol/kg at 1, 2, 3 and 5 % water. */
    @ParameterizedTest
    @CsvSource({"0.01, 1.3", "0.02, 2.7", "0.03, 4.0", "0.05, 6.7"})
    void promptLoss(double water, double percent) {
        var mix = DryingInput.plain(1100, 0.4, water, SorptionMixture.none(), 5.2050);
        DryingCourse.State start = Drying.run(
                        mix, List.of(Mixes.open(0.5, 1)), DryingParameters.standard(), Resolution.COARSE)
                .at(0);
        assertThat(100 * (1 - start.fizzLeft())).isCloseTo(percent, within(0.06));
    }

    /** ANALYTIC: never more than there is. */
    @Test
    void aPasteLosesAllItsFizzAndNoMore() {
        var mix = DryingInput.plain(1100, 0.6, 0.3, SorptionMixture.none(), 1.5);
        DryingCourse.State end = Drying.run(
                        mix, List.of(Mixes.open(0.5, 1)), DryingParameters.standard(), Resolution.COARSE)
                .last();
        assertThat(end.fizzLeft()).isCloseTo(0, within(1e-12));
    }

    /** ANALYTIC: the mean stay of water under a receding front in a ball is w R^2/(30 D drop) + w R/(6 h drop). */
    @Test
    void reactionNumberIsRateTimesMeanStay() {
        var front = new RecedingFront(new DryingGrid(new Opening(Profiles.ball(0.03), 1), 2000, 1));
        double exact = 20 * 0.0009 / (30 * 7e-6 * 4e-3) + 20 * 0.03 / (6 * 2e-3 * 4e-3);
        assertThat(front.meanStay(20, 7e-6, 2e-3, 4e-3)).isCloseTo(exact, withinPercentage(0.2));
    }

    /** Oil, and acid put in last, spare fizz; damp rooms cost it. */
    @Test
    void whatSparesFizz() {
        var plain = Mixes.starch(0.03, 0);
        var oily = new DryingInput(
                1100,
                0.40,
                0.345,
                0.03,
                Alcohol.NONE,
                0.03,
                0.03,
                SorptionMixture.none(),
                4.6,
                false,
                1,
                Hydrates.NONE,
                Additives.NONE);
        var last = new DryingInput(
                1100,
                0.40,
                0.367,
                0.03,
                Alcohol.NONE,
                0,
                0,
                SorptionMixture.none(),
                4.6,
                true,
                1,
                Hydrates.NONE,
                Additives.NONE);
        assertThat(left(last, 0.5)).isGreaterThan(left(plain, 0.5));
        assertThat(left(oily, 0.5)).isGreaterThan(left(plain, 0.5) - 0.01);
        assertThat(left(plain, 0.4)).isGreaterThan(left(plain, 0.6));
    }

    private static double left(DryingInput mix, double humidity) {
        return Drying.run(mix, List.of(Mixes.open(humidity, 7)), DryingParameters.standard(), Resolution.COARSE)
                .last()
                .fizzLeft();
    }

    /**
     * With a quarter of starch and 1 % water nothing stays free: the buffer stops the slow reaction.
     */
    @Test
    void starchBuffersTheSlowReaction() {
        var course = Drying.run(
                Mixes.starch(0.01, 0.25), List.of(Mixes.open(0.5, 3)), DryingParameters.standard(), Resolution.FINE);
        assertThat(course.reactionNumber().orElseThrow()).isZero();
        assertThat(course.last().extent()).isCloseTo(course.promptExtent(), within(1e-12));
    }

    /**
     * ANALYTIC: R T xi rho phi / p, docs/physics/drying.md, 7: xi 0.14 mol/kg, phi 0.003 at 25 C, 1 atm, 1100 kg/m3.
     */
    @Test
    void swelling() {
        assertThat(DryingCourse.Swelling.growth(0.14, 1100, 0.05, 298.15, 1))
                .isCloseTo(0.003 * 0.14 * 0.02447 * 1100, within(1e-5));
        assertThat(DryingCourse.Swelling.growth(0.14, 1100, 0.9, 298.15, 1))
                .isCloseTo(0.05 * 0.14 * 0.02447 * 1100, within(1e-4));
        assertThat(DryingCourse.Swelling.of(0.011)).isEqualTo(DryingCourse.Swelling.NONE);
        assertThat(DryingCourse.Swelling.of(0.18)).isEqualTo(DryingCourse.Swelling.PUFFS);
    }
}
