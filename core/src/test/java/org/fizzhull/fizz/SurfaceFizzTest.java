package org.fizzhull.fizz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.published.PhysicalConstants;
import org.junit.jupiter.api.Test;

/** Figures of validation/reference/surface.py and docs/physics/fizz.md, computed apart from this library. */
class SurfaceFizzTest {
    private static final FizzParameters STANDARD = FizzParameters.standard();
    private static final double BATH = celsius(38);

    /** ANALYTIC, R T/(p - p_w): 27.32 L/mol wet at 38 C and 1 atm. */
    @Test
    void aMoleOfWetGas() {
        assertThat(Gas.wetMolarVolume(BATH, PhysicalConstants.ATMOSPHERE, 6633)).isCloseTo(27.32e-3, within(0.005e-3));
    }

    /** By definition: the share of 0.65 at the surface is 0.35 at 30 cm and e times less at half a metre. */
    @Test
    void whatReachesTheSurface() {
        assertThat(Gas.seen(0.65, 0)).isEqualTo(0.65);
        assertThat(Gas.seen(0.65, 0.3)).isCloseTo(0.357, within(0.001));
        assertThat(Gas.seen(0.65, 0.5)).isCloseTo(0.65 / Math.E, within(1e-12));
    }

    /** By definition: the layer is its ratio times the bubbles' diameter, both here other than 1 in their unit. */
    @Test
    void theLayerIsSoManyBubblesThick() {
        double layer = GasLayer.thickness(STANDARD, 9e-3);
        assertThat(layer / STANDARD.bubbleDiameter()).isCloseTo(STANDARD.layerRatio(), within(1e-12));
        assertThat(GasLayer.thickness(STANDARD, 2.5e-5)).isCloseTo(layer * Math.pow(0.1, 0.3), within(1e-12));
    }

    /**
     * SECOND-HAND: 0.023 (j/(A/m2))^0.3, 0.364 at 1e4 A/m2 of hydrogen, a flux of 1.268e-3 m/s. PUBLISHED: what is seen is
     * covered wholly at 200 mA/cm2, 2.536e-4 m/s of hydrogen (Rox et al., arXiv:2209.11550, abstract).
     */
    @Test
    void coverageOfContactAndOfWhatIsSeen() {
        assertThat(GasLayer.contactCoverage(1.268e-3)).isCloseTo(0.364, within(0.004));
        assertThat(GasLayer.contactCoverage(1)).isEqualTo(1);
        assertThat(GasLayer.coverage(2.536e-4)).isEqualTo(1);
        assertThat(GasLayer.coverage(2.5e-5)).isCloseTo(Math.pow(0.1, 0.3), within(1e-9));
        for (double flux = 1e-7; flux < 0.1; flux *= 1.5) {
            assertThat(GasLayer.coverage(flux)).isGreaterThanOrEqualTo(GasLayer.contactCoverage(flux));
        }
    }

    /** ANALYTIC: hexagonal packing covers pi/(2 sqrt 3) and holds 2/3 of a diameter on that. */
    @Test
    void oneLayerOfSpheres() {
        assertThat(GasLayer.MONOLAYER).isCloseTo(2.0 / 3 * Math.PI / (2 * Math.sqrt(3)), within(1e-12));
        assertThat(STANDARD.layerRatio()).isLessThan(GasLayer.MONOLAYER);
        double layer = GasLayer.thickness(STANDARD, 9e-3);
        assertThat(layer).isCloseTo(0.45 * 1.0e-3, within(1e-12));
        // a convex body shows a quarter of its surface on average (Cauchy): there the attitude changes nothing
        assertThat(GasLayer.attitudeFactor(STANDARD, 0.25)).isEqualTo(1);
        assertThat(GasLayer.attitudeFactor(STANDARD, 0.5)).isCloseTo(1.125, within(1e-12));
    }

    /** ANALYTIC: v rho xi g V_m by hand, 7.6 mm/min x 987 kg/m3 x 4.6 mol/kg x 0.65 x 27.32 L/mol = 10.3 mm/s. */
    @Test
    void fluxOfTheUsualBall() {
        double density = 0.142 / 143.793e-6;
        double porosity = 1 - density / 1900;
        double speed = Recession.speed(STANDARD, BATH, porosity, 4.6);
        double flux = Gas.flux(speed, density, 4.6, STANDARD.gasShare(), 27.32e-3);
        assertThat(speed * 60e3).isCloseTo(4.4 * Math.exp(2.3 * (0.480 - 0.24)), within(0.02));
        assertThat(flux).isCloseTo(10.3e-3, within(0.2e-3));
    }

    /** ANALYTIC, Arrhenius with 30 kJ/mol: v(42)/v(35) = 1.30 and v(38)/v(20) = 2.04. */
    @Test
    void warmthSpeedsRecessionUp() {
        double at42 = Recession.speed(STANDARD, celsius(42), 0.425, 4.6);
        double at35 = Recession.speed(STANDARD, celsius(35), 0.425, 4.6);
        double at38 = Recession.speed(STANDARD, BATH, 0.425, 4.6);
        double at20 = Recession.speed(STANDARD, celsius(20), 0.425, 4.6);
        assertThat(at42 / at35).isCloseTo(1.30, within(0.005));
        assertThat(at38 / at20).isCloseTo(2.04, within(0.005));
        assertThat(Recession.speed(STANDARD, BATH, 0.24, 4.6) * 60e3).isCloseTo(4.4, within(1e-9));
    }

    @Test
    void recessionIsHeldAtItsEnds() {
        assertThat(Recession.speed(STANDARD, BATH, 0.95, 4.6)).isEqualTo(Recession.FASTEST);
        assertThat(Recession.speed(STANDARD, BATH, 0.425, 0)).isEqualTo(Recession.SLOWEST);
    }

    /** OTHER PROGRAM: validation/reference/surface.py: 0.0711 at j = 0.0193 m/s, 38 C; drift velocity 0.248 m/s. */
    @Test
    void plumeByDriftFlux() {
        assertThat(Plume.driftVelocity(0.06992, 992.97)).isCloseTo(0.248, within(0.0005));
        assertThat(Plume.gasFraction(0.0193, Plume.driftVelocity(0.06992, 992.97)))
                .isCloseTo(0.0711, within(0.0001));
    }
}
