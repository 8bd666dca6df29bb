package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.SorptionMixture;
import org.junit.jupiter.api.Test;

/** Salts that stand between two hydrates: water comes and goes at one humidity, 51 % for Epsom salt. ANALYTIC. */
class HydrateTest {
    private static final double HYDRATE = 0.01;

    private static DryingInput mix(double hydrate, double saltActivity) {
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
                hydrate);
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
}
