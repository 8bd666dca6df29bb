package org.fizzhull.medium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.medium.relation.IapwsSurfaceTension;
import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.medium.relation.LaliberteCooper2004;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.medium.relation.WagnerPruss2002;

/** What must hold of water whatever its temperature and salt. All ANALYTIC. */
class WaterProperties {
    private static final LaliberteCooper2004 SALT = LaliberteCooper2004.SODIUM_CHLORIDE;

    @Property
    void warmerWaterIsLighterThinnerWeakerSkinnedAndSteamsMore(
            @ForAll @Scale(6) @DoubleRange(min = 5, max = 59) double c,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double step) {
        double cool = celsius(c);
        double warm = celsius(c + step);
        assertThat(Kell1975.density(warm)).isLessThan(Kell1975.density(cool));
        assertThat(Patek2009Viscosity.viscosity(warm)).isLessThan(Patek2009Viscosity.viscosity(cool));
        assertThat(IapwsSurfaceTension.surfaceTension(warm)).isLessThan(IapwsSurfaceTension.surfaceTension(cool));
        assertThat(WagnerPruss2002.vapourPressure(warm)).isGreaterThan(WagnerPruss2002.vapourPressure(cool));
    }

    @Property
    void aMixtureOfOneSaltIsThatSalt(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 60) double c,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.126) double fraction) {
        double kelvin = celsius(c);
        LaliberteCooper2004[] salts = LaliberteCooper2004.values();
        for (int i = 0; i < salts.length; i++) {
            double[] fractions = new double[salts.length];
            fractions[i] = fraction;
            assertThat(LaliberteCooper2004.density(kelvin, fractions))
                    .isCloseTo(salts[i].density(kelvin, fraction), within(1e-9));
        }
    }

    @Property
    void saltMakesHeavier(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 60) double c,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.25) double fraction) {
        double kelvin = celsius(c);
        assertThat(SALT.density(kelvin, fraction + 0.01)).isGreaterThan(SALT.density(kelvin, fraction) + 5);
        assertThat(SALT.density(kelvin, 0)).isEqualTo(Kell1975.density(kelvin));
    }

    /** Clausius-Clapeyron: d ln p/d(1/T) = -L/R_v, the latent heat between 2.3 and 2.6 MJ/kg in a bath (from memory). */
    @Property
    void vapourPressureImpliesTheLatentHeat(@ForAll @Scale(6) @DoubleRange(min = 1, max = 59) double c) {
        double low = celsius(c - 0.5);
        double high = celsius(c + 0.5);
        double slope = Math.log(WagnerPruss2002.vapourPressure(high) / WagnerPruss2002.vapourPressure(low));
        assertThat(slope / (1 / low - 1 / high) * 461.52).isBetween(2.3e6, 2.6e6);
    }
}
