package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.recipe.Additives;
import org.junit.jupiter.api.Test;

/**
 * Crystals that stand between two hydrates: water comes and goes at one humidity, 51 % for Epsom salt, 60 % for
 * anhydrous citric acid. ANALYTIC.
 */
class HydrateTest {
    private static final double HYDRATE = 0.01;
    private static final double ACID = 0.0313;

    private static DryingInput mix(double gives, double saltActivity) {
        return mix(new Hydrates(gives, 0), saltActivity);
    }

    private static DryingInput mix(Hydrates hydrates, double saltActivity) {
        return new DryingInput(
                1100,
                0.4,
                0.378,
                0.02,
                Alcohol.NONE,
                0,
                0,
                SorptionMixture.of(0.1, 0.088, 20, 0.72),
                4.6,
                false,
                saltActivity,
                hydrates,
                Additives.NONE);
    }

    private static DryingParameters moving(double share) {
        return Mixes.inert().but().hydrateShare(share).build();
    }

    private static DryingCourse course(DryingInput mix, double share, double humidity, double days) {
        return Drying.run(mix, List.of(Mixes.open(humidity, days)), moving(share), Resolution.FINE);
    }

    /** Below 51 % all that can move leaves in the end, above it nothing. */
    @Test
    void leavesInDryAirOnly() {
        double without = course(mix(0, 1), 0, 0.45, 300).last().mass();
        DryingCourse half = course(mix(HYDRATE, 1), 0.5, 0.45, 300);
        assertThat(half.last().mass()).isCloseTo(without - 0.5 * HYDRATE * half.dryMass(), within(1e-7));
        assertThat(half.balanceError()).isLessThan(1e-9);
        assertThat(course(mix(HYDRATE, 1), 0, 0.45, 300).last().mass()).isCloseTo(without, within(1e-12));
        double damper = course(mix(0, 1), 0, 0.55, 300).last().mass();
        assertThat(course(mix(HYDRATE, 1), 1, 0.55, 300).last().mass()).isCloseTo(damper, within(1e-7));
    }

    /** The water of the salt has to leave, too; the films stay what they are. */
    @Test
    void itTakesLongerAndTheFilmsStayAsTheyAre() {
        DryingCourse dry = course(mix(0, 1), 0, 0.45, 60);
        DryingCourse salty = course(mix(HYDRATE, 1), 1, 0.45, 60);
        assertThat(salty.readyAfter().orElseThrow())
                .isGreaterThan(1.1 * dry.readyAfter().orElseThrow());
        assertThat(salty.filmActivity()).isEqualTo(dry.filmActivity());
    }

    /** Where further salts pull the films below 51 %, they drink the hydrate's water from the start. */
    @Test
    void filmsDrierThanTheHydrateDrinkIt() {
        double share = 0.66;
        DryingCourse none = course(mix(0, share), 0, 0.40, 0.01);
        DryingCourse all = course(mix(HYDRATE, share), 1, 0.40, 0.01);
        assertThat(all.filmActivity()).isLessThan(0.5);
        assertThat(all.at(0).water() - none.at(0).water()).isCloseTo(HYDRATE * all.dryMass(), within(1e-9));
    }

    private static DryingParameters binding(double perDay) {
        return Mixes.inert().but().acidHydration(perDay / 86400).build();
    }

    private static DryingCourse acid(DryingParameters parameters, double humidity, double days) {
        var mix = mix(new Hydrates(0, ACID), 1);
        return Drying.run(mix, List.of(Mixes.open(humidity, days)), parameters, Resolution.FINE);
    }

    /** A third of acid binds up to 9.377 % of itself above 60 %, all of it in the end; below it nothing is left bound. */
    @Test
    void acidTakesWaterInDampAirOnly() {
        DryingCourse damp = acid(binding(0.3), 0.66, 300);
        double without = course(mix(0, 1), 0, 0.66, 300).last().mass();
        assertThat(damp.last().mass()).isCloseTo(without + ACID * damp.dryMass(), within(1e-7));
        assertThat(damp.last().bound()).isCloseTo(ACID * damp.dryMass(), within(1e-7));
        assertThat(damp.balanceError()).isLessThan(1e-9);
        DryingCourse dry = acid(binding(0.3), 0.45, 300);
        assertThat(dry.last().mass())
                .isCloseTo(course(mix(0, 1), 0, 0.45, 300).last().mass(), within(1e-7));
        assertThat(dry.balanceError()).isLessThan(1e-9);
    }

    /** Where vapour gets in faster than the acid takes it, the gain is that of the rate law, b = b_most (1 - exp(-kt)). */
    @Test
    void slowAcidFollowsItsRateLaw() {
        double days = 30;
        double perDay = 0.01;
        var dry = Mixes.binding(0, 0.1, ACID);
        DryingCourse slow = Drying.run(dry, List.of(Mixes.open(0.68, days)), binding(perDay), Resolution.FINE);
        double share = slow.last().bound() / (ACID * slow.dryMass());
        assertThat(share).isCloseTo(1 - Math.exp(-perDay * days), within(0.005));
    }

    /** Where films stand nothing is bound: a piece dries and reacts as without, but for the vapour that passes dry acid. */
    @Test
    void filmsAreLeftAlone() {
        var reacting = DryingParameters.standard().but().promptYield(0);
        DryingCourse free = acid(reacting.acidHydration(0).build(), 0.45, 5);
        DryingCourse bound = acid(reacting.acidHydration(1 / (10 * 86400.0)).build(), 0.45, 5);
        assertThat(bound.last().fizzLeft()).isCloseTo(free.last().fizzLeft(), within(1e-3));
        assertThat(bound.readyAfter().orElseThrow() / free.readyAfter().orElseThrow())
                .isBetween(0.9, 1.1);
    }

    /** Films drier than the acid's own transition give it nothing. */
    @Test
    void dryFilmsBindNothing() {
        var dry = binding(1).but().filmActivity(0.55).build();
        assertThat(acid(dry, 0.45, 3).last().bound()).isZero();
    }
}
