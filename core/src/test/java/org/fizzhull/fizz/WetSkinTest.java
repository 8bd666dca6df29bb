package org.fizzhull.fizz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.junit.jupiter.api.Test;

/** The law of the wet skin against its limits in closed form. */
class WetSkinTest {
    private static final double POROSITY = 0.48;

    /** By definition: the depth of the parameters at 10 mm/s, 38 C and porosity 0.48. */
    @Test
    void referenceDepth() {
        assertThat(WetSkin.wicking(celsius(38))).isEqualTo(1);
        assertThat(WetSkin.steadyDepth(0.15e-3, 1, POROSITY, 0.010)).isCloseTo(0.15e-3, within(1e-15));
        assertThat(WetSkin.steadyDepth(0.15e-3, 1, POROSITY, 0.0025)).isCloseTo(0.6e-3, within(1e-15));
        assertThat(WetSkin.steadyDepth(0.15e-3, 2, POROSITY, 0.010)).isCloseTo(0.3e-3, within(1e-15));
    }

    /** ANALYTIC: sigma/mu of IAPWS values from tables, 72.74/1.0016 at 20 C and 69.92/0.67804 at 38 C. */
    @Test
    void colderWaterIsDrawnInMoreSlowly() {
        assertThat(WetSkin.wicking(celsius(20))).isCloseTo(72.736 / 1.0016 / (69.920 / 0.67804), within(1e-4));
    }

    /** ANALYTIC: eps^2/(1 - eps), the product of permeability and capillary pressure of a bed of grains. */
    @Test
    void loosePiecesSoakDeeper() {
        double loose = WetSkin.steadyDepth(1, 1, 0.6, 0.01) / WetSkin.steadyDepth(1, 1, 0.4, 0.01);
        assertThat(loose).isCloseTo(0.36 / 0.4 / (0.16 / 0.6), within(1e-12));
    }

    /** ANALYTIC: long before it is full it follows Washburn, depth^2 = 2 D t/eps, D = depth times flux. */
    @Test
    void growthOfASkinThatIsFarFromFull() {
        double steady = 0.5;
        double flux = 3e-6;
        double tau = WetSkin.fillingTime(steady, POROSITY, flux);
        for (double time : new double[] {0, 10, 100}) {
            double washburn = Math.sqrt(2 * steady * flux * (time + WetSkin.ENTRY) / POROSITY);
            assertThat(WetSkin.depth(steady, tau, time)).isCloseTo(washburn, within(2e-3 * washburn));
        }
        assertThat(WetSkin.depth(steady, tau, 50 * tau)).isEqualTo(steady);
        // where the exponential is left out nothing jumps
        double before = WetSkin.depth(steady, tau, 29.999 * tau);
        assertThat(before).isCloseTo(steady, within(1e-12));
    }

    /** A fresh piece has its skin at the drop: hundredths of a second against the second that the gas takes. */
    @Test
    void aFreshFaceIsWetAtOnce() {
        double tau = WetSkin.fillingTime(0.15e-3, POROSITY, 0.010);
        assertThat(tau).isLessThan(0.01);
        assertThat(WetSkin.depth(0.15e-3, tau, 0)).isEqualTo(0.15e-3);
    }

    /**
     * PUBLISHED: 4 mm/s^(1/2) into tapped lactose powder (Kiesvaara and Yliruusi, Int. J. Pharm. 92 (1993) 81, abstract),
     * at room temperature and a porosity taken as 0.45: half a millimetre at 10 mm/s were the pores the water's alone. The
     * median is what is left where gas takes two thirds of them.
     */
    @Test
    void depthFromLactose() {
        double diffusivity = 0.004 * 0.004 * 0.45 / 2 / WetSkin.wicking(celsius(22));
        double alone = diffusivity / WetSkin.REFERENCE_FLUX;
        assertThat(alone).isBetween(0.4e-3, 0.55e-3);
        assertThat(0.15e-3 / alone).isBetween(0.1, 1.0);
    }

    /** ANALYTIC: the outer shell of a ball, its inner tenth of the volume never filled; 0.9 of a body at most. */
    @Test
    void volumeOfTheShellOfABall() {
        double radius = 0.0325;
        double body = 4 * Math.PI / 3 * radius * radius * radius;
        double area = 4 * Math.PI * radius * radius;
        double thin = 1e-6;
        assertThat(WetSkin.volume(thin, area, body)).isCloseTo(thin * area, within(1e-4 * thin * area));
        double depth = 1e-3;
        double shell = body * (1 - Math.pow(1 - depth / radius, 3));
        assertThat(WetSkin.volume(depth, area, body)).isCloseTo(shell, within(0.005 * shell));
        assertThat(WetSkin.volume(1, area, body)).isCloseTo(0.9 * body, within(1e-15));
        assertThat(WetSkin.volume(0, area, body)).isZero();
    }
}
