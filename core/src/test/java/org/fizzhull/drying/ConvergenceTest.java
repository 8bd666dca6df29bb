package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * ANALYTIC: the slowest mode of a ball with surface resistance Bi = 1, {@code sin(pi r/2)/r exp(-pi^2 t/4)}, keeps its
 * form and decays: every error is the solver's. Order 2 in space and, as designed, 2 in time.
 */
class ConvergenceTest {
    private static final double BIOT = 1;
    private static final double FO = 0.4;

    private static double mode(double d) {
        double r = 1 - d;
        double x = Math.PI * r / 2;
        return x < 1e-8 ? 1 : Math.sin(x) / x;
    }

    private static Diffusion ball(int cells) {
        return new Diffusion(Profiles.ball(1), 1, cells, BIOT, d -> Diffusion.OUTSIDE + 0.5 * mode(d));
    }

    /** Error of the profile at the end, root of the mean square by volume, relative to the amplitude left. */
    private static double error(int cells, int steps) {
        Diffusion run = ball(cells);
        run.even(FO, steps);
        double decay = 0.5 * Math.exp(-Math.PI * Math.PI / 4 * FO);
        double sum = 0;
        for (int i = 0; i < cells; i++) {
            double exact = Diffusion.OUTSIDE + decay * mode(run.grid.centre[i]);
            double off = run.solver.now.water[i] - exact;
            sum += run.grid.volume[i] * off * off;
        }
        return Math.sqrt(sum / run.grid.total) / decay;
    }

    private static double order(double coarse, double fine) {
        return Math.log(coarse / fine) / Math.log(2);
    }

    @Test
    void secondOrderInSpace() {
        double e20 = error(20, 400);
        double e40 = error(40, 400);
        double e80 = error(80, 400);
        assertThat(order(e20, e40)).isBetween(1.8, 2.3);
        assertThat(order(e40, e80)).isBetween(1.8, 2.3);
    }

    /** The same mode, its error in space taken off by the course of very small steps on the same cells. */
    @Test
    void secondOrderInTime() {
        double e4 = inTime(4);
        double e8 = inTime(8);
        double e16 = inTime(16);
        assertThat(order(e4, e8)).isBetween(1.8, 2.3);
        assertThat(order(e8, e16)).isBetween(1.8, 2.3);
    }

    private static double inTime(int steps) {
        Diffusion coarse = ball(60);
        coarse.even(FO, steps);
        Diffusion fine = ball(60);
        fine.even(FO, 2000);
        double largest = 0;
        for (int i = 0; i < 60; i++) {
            largest = Math.max(largest, Math.abs(coarse.solver.now.water[i] - fine.solver.now.water[i]));
        }
        return largest;
    }
}
