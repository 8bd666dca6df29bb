package org.fizzhull.fizz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.evidence.PhysicalConstants;
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

    /** Vogt and Balzer (2005), 0.023 j^0.3: coverage 0.364 at 1e4 A/m2 of hydrogen, a flux of 1.268e-3 m/s. */
    @Test
    void coverageMeetsTheElectrodeRelation() {
        assertThat(GasLayer.coverage(STANDARD, 1.268e-3)).isCloseTo(0.364, within(0.004));
        assertThat(GasLayer.coverage(STANDARD, 1)).isEqualTo(0.9);
        assertThat(GasLayer.coverage(STANDARD, 1e-9)).isEqualTo(0.05);
    }

    /**
     * COMPUTED by hand: at 142 g the flux v rho xi g V_m of the 65 mm ball is 9 mm/s; its layer 0.65 x 2/3 x 0.8 x 1.5
     * = 0.5 mm.
     */
    @Test
    void fluxAndLayerOfTheUsualBall() {
        double density = 0.142 / 143.793e-6;
        double porosity = 1 - density / 1900;
        double speed = Recession.speed(STANDARD, BATH, porosity, 4.6);
        double flux = Gas.flux(speed, density, 4.6, STANDARD.gasShare(), 27.32e-3);
        assertThat(flux).isCloseTo(9e-3, within(0.5e-3));
        assertThat(GasLayer.thickness(STANDARD, flux)).isCloseTo(0.5e-3, within(0.05e-3));
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
        assertThat(at38 * 60e3).isCloseTo(5, within(1e-9));
    }

    @Test
    void recessionIsHeldAtItsEnds() {
        assertThat(Recession.speed(STANDARD, BATH, 0.9, 4.6)).isEqualTo(Recession.FASTEST);
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
