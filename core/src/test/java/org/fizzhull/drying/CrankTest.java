package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.shape.DepthProfile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ANALYTIC: Crank's series for slab, cylinder and ball, with and without surface resistance, summed by
 * validation/reference/diffusion.py. Fractions of the whole change; the solver on 150 cells is good to
 * 5e-4.
 */
class CrankTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static double done(DepthProfile profile, double biot, double fo) {
        return Diffusion.uniform(profile, 1, 150, biot).done(fo, 0.04);
    }

    @ParameterizedTest
    @CsvSource({
        "0.01, 0.112838, 0.215474, 0.308514",
        "0.05, 0.252313, 0.452121, 0.606940",
        "0.1, 0.356823, 0.605824, 0.770479",
        "0.3, 0.613236, 0.877972, 0.968525",
        "1.0, 0.931260, 0.997870, 0.999969"
    })
    void skinAtOnceDry(double fo, double slab, double cylinder, double ball) {
        assertThat(done(Profiles.slab(1), INFINITE, fo)).isCloseTo(slab, within(5e-4));
        assertThat(done(Profiles.longCylinder(1), INFINITE, fo)).isCloseTo(cylinder, within(5e-4));
        assertThat(done(Profiles.ball(1), INFINITE, fo)).isCloseTo(ball, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 2.0, 0.176111, 0.323193, 0.444733",
        "1, 0.1, 0.080403, 0.156734, 0.228635",
        "1, 1.0, 0.529603, 0.796653, 0.916422",
        "10, 0.1, 0.273882, 0.490016, 0.653988",
        "10, 0.5, 0.684984, 0.925235, 0.986374",
        "100, 0.1, 0.347002, 0.593153, 0.758821"
    })
    void surfaceResistance(double biot, double fo, double slab, double cylinder, double ball) {
        assertThat(done(Profiles.slab(1), biot, fo)).isCloseTo(slab, within(5e-4));
        assertThat(done(Profiles.longCylinder(1), biot, fo)).isCloseTo(cylinder, within(5e-4));
        assertThat(done(Profiles.ball(1), biot, fo)).isCloseTo(ball, within(5e-4));
    }

    /** ANALYTIC: half time of a slab 0.0491827 of the full thickness squared (Crank 1975, chapter 4). */
    @Test
    void halfTimeOfTheSlab() {
        assertThat(done(Profiles.slab(1), INFINITE, 4 * 0.0491827)).isCloseTo(0.5, within(2e-4));
    }

    /**
     * ANALYTIC: hollow ball 25/35 mm after 1 h at D = 1e-9, series in Crank's chapter 6 summed by
     * validation/reference/diffusion.py: 0.432035.
     */
    @Test
    void hollowBall() {
        double inner = 5;
        double outer = 7;
        DepthProfile shell = Profiles.of(
                1,
                200,
                d -> 4 * Math.PI / 3 * (Math.pow(outer - d, 3) - Math.pow(inner + d, 3)),
                d -> 4 * Math.PI * (Math.pow(outer - d, 2) + Math.pow(inner + d, 2)));
        double fo = 1e-9 * 3600 / (0.005 * 0.005);
        // along the profile the two sides of the wall are taken together: within 1 % of a shell
        assertThat(done(shell, INFINITE, fo)).isCloseTo(0.432035, within(5e-3));
    }

    /** ANALYTIC: a dome on a tray is half of the full ball, mirrored, whatever is asked of it. */
    @Test
    void domeOnATrayIsTheFullBall() {
        for (double biot : new double[] {1, INFINITE}) {
            double dome = done(Profiles.domeOnTray(1), biot, 0.07);
            assertThat(dome).isCloseTo(done(Profiles.ball(1), biot, 0.07), within(1e-12));
        }
    }
}
