package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.shape.kind.Puck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drag, terminal speed and added mass. */
class ResistanceTest {
    private static final double G = 9.80665;

    /** OTHER PROGRAM: validation/reference/motion.py, from the published formula; 1e-4. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 247.504",
        "1, 27.6001",
        "10, 4.12751",
        "100, 1.07314",
        "200, 0.79330",
        "1000, 0.46338",
        "1e4, 0.41061",
        "1e5, 0.46611"
    })
    void dragOfASphere(double reynolds, double coefficient) {
        assertThat(BrownLawler2003.coefficient(reynolds)).isCloseTo(coefficient, within(1e-4 * coefficient));
    }

    /** ANALYTIC: Stokes at the slow end, 24/Re. */
    @Test
    void slowSpheresObeyStokes() {
        assertThat(BrownLawler2003.coefficient(1e-6) * 1e-6).isCloseTo(24, within(1e-3));
        assertThat(Resistance.ball().force(0, 0.06, 993, 7e-7)).isZero();
    }

    /** COMPUTED by another hand, the same section: terminal speeds in water of 38 C; 1e-3. */
    @ParameterizedTest
    @CsvSource({"50, 1150, 0.4770", "60, 1150, 0.5195", "60, 1050, 0.3170", "60, 950, -0.2764"})
    void terminalSpeeds(double millimetres, double density, double speed) {
        double t = celsius(38);
        double water = Kell1975.density(t);
        double d = millimetres / 1e3;
        double weight = (density - water) * Math.PI / 6 * d * d * d * G;
        double drag = Resistance.ball().force(speed, d, water, Patek2009Viscosity.viscosity(t) / water);
        // drag grows with the square of the speed
        assertThat(drag).isCloseTo(weight, within(2e-3 * Math.abs(weight)));
    }

    /** ANALYTIC: a sphere's half and a disc's 8/3 a^3; COMPUTED by another hand: oblate spheroids between them. */
    @Test
    void addedMass() {
        assertThat(Lamb1932.oblate(1)).isEqualTo(0.5);
        assertThat(Lamb1932.oblate(0.8)).isCloseTo(0.65136, within(1e-5));
        assertThat(Lamb1932.oblate(0.5)).isCloseTo(1.11506, within(1e-5));
        assertThat(Lamb1932.oblate(0.25)).isCloseTo(2.37429, within(1e-5));
        assertThat(Lamb1932.oblate(0.1)).isCloseTo(6.18413, within(1e-5));
        double thin = 1e-6;
        assertThat(Lamb1932.oblate(thin) * 4 * Math.PI / 3 * thin).isCloseTo(8.0 / 3, within(1e-5));
        assertThat(Lamb1932.oblate(1 - 1.0001e-4)).isCloseTo(Lamb1932.oblate(1 - 0.9999e-4), within(2e-8));
        assertThatThrownBy(() -> Lamb1932.oblate(1.1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** FROM MEMORY: Hoerner's 1.05 for a cube and 1.17 for a disc are met at the two ends. */
    @Test
    void bluffBodies() {
        double cube = coefficient(Resistance.of(0.05, 0.05 * Math.sqrt(4 / Math.PI), 0.05 * 0.05 * 0.05));
        assertThat(cube).isCloseTo(1.05, within(0.01));
        Puck coin = Puck.ofDiameterAndHeight(0.2, 0.006);
        assertThat(coefficient(Resistance.of(0.006, 0.2, coin.volume()))).isCloseTo(1.17, within(0.05));
    }

    private static double coefficient(Resistance resistance) {
        double size = 0.05;
        double area = Math.PI / 4 * size * size;
        return resistance.force(1, size, 1000, 1e-6) / (0.5 * 1000 * area);
    }
}
