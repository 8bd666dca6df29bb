package org.fizzhull.drying.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fizzhull.drying.solver.WaterActivity;
import org.junit.jupiter.api.Test;

class SorptionTest {
    /** OTHER PROGRAM: validation/reference/air.py, from each set of constants. */
    @Test
    void gab() {
        var starch = SorptionMixture.of(1, 0.088, 20, 0.72);
        assertThat(starch.water(0.3)).isCloseTo(0.0950, within(5e-5));
        assertThat(starch.water(0.5)).isCloseTo(0.126276, within(5e-7));
        assertThat(starch.water(0.7)).isCloseTo(0.1691, within(5e-5));
        assertThat((starch.water(0.5 + 1e-5) - starch.water(0.5 - 1e-5)) / 2e-5).isCloseTo(0.1743, within(5e-5));
        var milk = SorptionMixture.of(1, 0.06156, 36.86, 0.7244);
        assertThat(milk.water(0.5)).isCloseTo(0.092115, within(2e-5));
        var bentonite = SorptionMixture.of(1, 0.075, 12, 0.75);
        assertThat(bentonite.water(0.7)).isCloseTo(0.1468, within(5e-5));
    }

    /** ANALYTIC: glycerin as an ideal solution, X = (18.015/92.09) a/(1 - a). */
    @Test
    void glycerinIsTheGabOfAnIdealSolution() {
        var glycerin = SorptionMixture.of(1, SorptionMixture.GLYCERIN_MONOLAYER, 1, 1);
        for (double a : new double[] {0.1, 0.3, 0.5, 0.7}) {
            assertThat(glycerin.water(a)).isCloseTo(18.015 / 92.09 * a / (1 - a), withinPercentage(1e-10));
        }
    }

    /** ANALYTIC: the water of a blend is the sum of its parts. */
    @Test
    void blendsAdd() {
        var blend = SorptionMixture.of(0.1, 0.088, 20, 0.72).and(0.05, 0.075, 12, 0.75);
        double sum = 0.1 * SorptionMixture.of(1, 0.088, 20, 0.72).water(0.6)
                + 0.05 * SorptionMixture.of(1, 0.075, 12, 0.75).water(0.6);
        assertThat(blend.water(0.6)).isCloseTo(sum, within(1e-15));
    }

    /**
     * ANALYTIC: the table is the isotherm at its nodes and inverts itself between them; above the film it is the film.
     */
    @Property(tries = 200)
    void contentAndActivityAreInverse(
            @ForAll @DoubleRange(min = 0, max = 0.3) double share,
            @ForAll @DoubleRange(min = 0.4, max = 0.9) double film,
            @ForAll @DoubleRange(min = 0.2, max = 1) double at) {
        var sorbents = SorptionMixture.of(share, 0.088, 20, 0.72);
        var table = new WaterActivity(sorbents, 1000, film);
        double rh = at * film * 0.999;
        double content = table.contentAt(rh);
        assertThat(table.activity(content, table.segment(content, 0))).isCloseTo(rh, within(1e-12));
        double held = 1000 * sorbents.water(rh);
        // chord against curve, and the floor of 0.5 kg/m3 per unit of activity
        assertThat(content).isBetween(held - 0.004 * held - 1e-9, held + 0.02 * 1000 * share + 0.5);
        double wet = table.filmContent() + 15;
        assertThat(table.activity(wet, table.segment(wet, 3))).isCloseTo(film, within(1e-15));
        assertThat(table.slope(table.segment(wet, 3))).isZero();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> SorptionMixture.of(Double.NaN, 0.1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SorptionMixture.of(0.1, 0.1, 1, 1.2)).isInstanceOf(IllegalArgumentException.class);
    }
}
