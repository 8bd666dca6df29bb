package org.fizzhull.shape.revolved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.PlaneCut;
import org.junit.jupiter.api.Test;

/** The closed form of a spheroid against the elementary sections along its axis and against quadrature of the same body. */
class SpheroidHullTest {
    private static final double ACROSS = 0.025;
    private static final double ALONG = 0.035;
    private static final double CENTRE = 0.04;

    /** ANALYTIC: at x = c the section is an ellipse with half axes p f and q f, f^2 = 1 - c^2/p^2. */
    @Test
    void sectionsAlongTheAxis() {
        PlaneCut cut = new PlaneCut();
        for (double c = -0.024; c < 0.025; c += 0.004) {
            new SpheroidHull(CENTRE, ACROSS, ALONG).cut(1, 0, 0, c, cut);
            double f2 = 1 - c * c / (ACROSS * ACROSS);
            double area = Math.PI * ACROSS * ALONG * f2;
            assertThat(cut.area).isCloseTo(area, within(1e-12 * ACROSS * ALONG));
            assertThat(cut.juu).isCloseTo(area * ACROSS * ACROSS * f2 / 4, within(1e-16));
            assertThat(cut.jww).isCloseTo(area * ALONG * ALONG * f2 / 4, within(1e-16));
            assertThat(cut.ax).isCloseTo(c, within(1e-15));
            assertThat(cut.az).isCloseTo(CENTRE, within(1e-15));
            // the integral of that area from -p to c
            double volume = Math.PI * ALONG * ACROSS * (c - c * c * c / (3 * ACROSS * ACROSS) + 2 * ACROSS / 3);
            assertThat(cut.volume).isCloseTo(volume, within(1e-12 * volume));
            assertThat(cut.mz).isCloseTo(volume * CENTRE, within(1e-12 * volume * CENTRE));
        }
    }

    /** OTHER METHOD: an empty ball of a micrometre in it makes the hull integrate chord sections. */
    @Test
    void agreesWithQuadrature() {
        double grain = 1e-6;
        Profile2D body = Profile2D.builder()
                .arc(CENTRE, 0, ACROSS, ALONG, 1, CENTRE - ALONG, CENTRE + ALONG)
                .build();
        Profile2D marked = Profile2D.builder()
                .arc(CENTRE, 0, ACROSS, ALONG, 1, CENTRE - ALONG, CENTRE + ALONG)
                .inner()
                .arc(CENTRE, 0, grain, grain, 1, CENTRE - grain, CENTRE + grain)
                .build();
        RevolvedHull closed = new RevolvedHull(body);
        RevolvedHull summed = new RevolvedHull(marked);
        assertThat(closed.isEllipsoid()).isTrue();
        assertThat(summed.isEllipsoid()).isFalse();
        PlaneCut one = new PlaneCut();
        PlaneCut two = new PlaneCut();
        for (double lean = 0; lean < 3.1; lean += 0.2) {
            double nx = Math.sin(lean) * 0.6;
            double ny = Math.sin(lean) * 0.8;
            double nz = Math.cos(lean);
            for (double d = -0.022; d < 0.023; d += 0.005) {
                double c = CENTRE * nz + d;
                closed.cut(nx, ny, nz, c, one);
                summed.cut(nx, ny, nz, c, two);
                assertThat(one.volume).isCloseTo(two.volume, within(1e-15));
                assertThat(one.mx).isCloseTo(two.mx, within(1e-16));
                assertThat(one.my).isCloseTo(two.my, within(1e-16));
                assertThat(one.mz).isCloseTo(two.mz, within(1e-16));
                assertThat(one.area).isCloseTo(two.area, within(1e-11));
                assertThat(one.ax).isCloseTo(two.ax, within(1e-9));
                assertThat(one.ay).isCloseTo(two.ay, within(1e-9));
                assertThat(one.az).isCloseTo(two.az, within(1e-9));
                assertThat(one.juu).isCloseTo(two.juu, within(1e-14));
                assertThat(one.jww).isCloseTo(two.jww, within(1e-14));
            }
        }
    }
}
