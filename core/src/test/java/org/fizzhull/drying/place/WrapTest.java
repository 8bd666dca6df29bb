package org.fizzhull.drying.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fizzhull.drying.Mixes;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.medium.RoomAir;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wraps, jars, and the layers between a piece and its room. */
class WrapTest {
    /** ANALYTIC, from the definitions of mil and inch. */
    @Test
    void theUnitOfThePackagingTables() {
        assertThat(Wrap.GRAM_MIL).isCloseTo(7.6331e-16, withinPercentage(0.005));
    }

    /**
     * COMPUTED by hand from P/l R_v T: a film of 25 um of polyethylene is about 4e-6 m/s at 25 C; 0.56 of its 38 C
     * value.
     */
    @Test
    void polyethyleneAtRoomTemperature() {
        var film = Wrap.film("film", 25e-6, 1.5, "");
        assertThat(film.conductance(298.15, 0)).isCloseTo(4e-6, withinPercentage(15));
        double ratio = film.conductance(298.15, 0) / 298.15 / (film.conductance(311.15, 0) / 311.15);
        assertThat(ratio).isCloseTo(0.56, within(0.005));
    }

    /**
     * COMPUTED by hand from the film's permeability and h_m: grams a day of a 65 mm ball at 25 C over 20 % RH: bare
     * 11.6 (h_m 2.2e-3), 25 um polyethylene 0.019.
     */
    @ParameterizedTest
    @CsvSource({"0, 0, 11.6", "25e-6, 1.5, 0.019"})
    void gramsADay(double thickness, double gramMil, double expected) {
        var d = DryingParameters.standard();
        var parameters = d.but().transfer(2.2e-3).sealLeak(0).build();
        assertThat(d.sealLeak()).isEqualTo(3);
        var air = RoomAir.of(298.15, 0.5);
        var wrap = thickness == 0 ? Wrap.NONE : Wrap.film("film", thickness, gramMil, "");
        double k = Drying.surface(DryingPhase.open(Mixes.BALL, air, 1).in(wrap, 0), parameters);
        double grams = 1e3 * k * 0.013273 * 0.2 * air.saturationDensity() * 86400;
        assertThat(grams).isCloseTo(expected, withinPercentage(3));
    }

    /** ANALYTIC: resistances add; a tight jar passes nothing; a fan divides that of the boundary layer. */
    @Test
    void layersInSeries() {
        var parameters = DryingParameters.standard();
        var air = Mixes.room(0.5);
        var film = Wrap.named("shrink film").orElseThrow();
        double k = Drying.surface(
                DryingPhase.open(Mixes.BALL, air, 1).in(film, 2e-3).withFan(), parameters);
        double sum = 1 / (2 * 2.5e-3) + 2e-3 / air.diffusivity() + 1 / film.conductance(293.15, 3);
        assertThat(1 / k).isCloseTo(sum, withinPercentage(1e-9));
        var jar = Wrap.named("jar").orElseThrow();
        assertThat(jar.rigid()).isTrue();
        assertThat(Drying.surface(DryingPhase.open(Mixes.BALL, air, 1).in(jar, 0), parameters))
                .isZero();
        assertThat(Wrap.named("tin foil hat")).isEmpty();
    }

    /**
     * ANALYTIC, n R T/V: 100 g bicarbonate with 50 g citric acid, 0.780746 mol, 2 L: 9.677
     * bar.
     */
    @Test
    void jarPressure() {
        double mol = Math.min(100 / 84.007, 3 * 50 / 192.124);
        assertThat(mol).isCloseTo(0.780746, within(1e-6));
        var whole = JarPressure.of(mol / 0.150, 0.150, 1, 2e-3, 298.15);
        assertThat(whole.gas()).isCloseTo(0.780746, within(1e-6));
        assertThat(whole.overpressure() / 1e5).isCloseTo(9.677, within(1e-3));
        var hundredth = JarPressure.of(mol / 0.150, 0.150, 0.01, 1e-3, 298.15);
        assertThat(hundredth.overpressure() / 1e3).isCloseTo(19, within(0.5));
        assertThat(JarPressure.CAUTION.text()).contains("burst");
    }

    /**
     * COMPUTED by hand from Antoine's equation: kPa at 20 and 25 C. PUBLISHED: boiling points 78.3 and 82.2 C [from
     * memory].
     */
    @Test
    void vapourPressureOfAlcohols() {
        assertThat(Alcohol.Kind.ETHANOL.vapourPressure(293.15)).isCloseTo(5875, withinPercentage(0.1));
        assertThat(Alcohol.Kind.ISOPROPANOL.vapourPressure(298.15)).isCloseTo(6037, withinPercentage(0.1));
        assertThat(Alcohol.Kind.ETHANOL.vapourPressure(351.4)).isCloseTo(101325, withinPercentage(1));
        assertThat(Alcohol.Kind.ISOPROPANOL.vapourPressure(355.4)).isCloseTo(101325, withinPercentage(1));
    }

    /**
     * PUBLISHED: ethanol and water at half mole fraction, activity coefficient of ethanol about 1.24, Perry [from
     * memory]; ANALYTIC: pure alcohol has activity 1. */
    @Test
    void activityOfAlcohols() {
        var pure = new Alcohol(Alcohol.Kind.ETHANOL, 0.02);
        assertThat(pure.activity(0)).isCloseTo(1, within(1e-12));
        double half = pure.activity(0.02 / 0.046069 * 0.01801528);
        assertThat(half / 0.5).isCloseTo(1.24, within(0.03));
    }
}
