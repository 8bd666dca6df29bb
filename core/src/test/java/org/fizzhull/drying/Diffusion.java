package org.fizzhull.drying;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.solver.AcidHydration;
import org.fizzhull.drying.solver.DryingGrid;
import org.fizzhull.drying.solver.DryingSolver;
import org.fizzhull.drying.solver.FilmReaction;
import org.fizzhull.drying.solver.WaterActivity;
import org.fizzhull.geometry.DepthProfile;

/**
 * The solver run as plain diffusion with D = 1: a linear isotherm of slope 1 kg/m3, no reaction, so that time is the
 * Fourier number of a body of length 1.
 */
final class Diffusion {
    static final double OUTSIDE = 0.3;
    private static final double FILM = 0.95;
    private static final double RHO = 1000;

    final DryingGrid grid;
    final DryingSolver solver;
    final double start;
    double time;

    /**
     * @param biot surface conductance; infinite for a skin at once dry
     * @param startActivity activity at depth d
     */
    Diffusion(DepthProfile profile, double correction, int cells, double biot, DoubleUnaryOperator startActivity) {
        // C = 1, K = 1e-9 make the GAB isotherm linear to 1e-9; the floor of the slope is below 1
        var isotherm = new WaterActivity(SorptionMixture.of(1, 1 / RHO / 1e-9, 1, 1e-9), RHO, FILM);
        grid = new DryingGrid(new Opening(profile, correction), cells, 1);
        solver = new DryingSolver(isotherm, new FilmReaction(0, 1, 1), new AcidHydration(0, 0, isotherm), RHO);
        solver.lay(grid, 1, biot == Double.POSITIVE_INFINITY ? 1e12 : biot, 0);
        solver.fixedRoom(OUTSIDE);
        double sum = 0;
        for (int i = 0; i < cells; i++) {
            solver.now.water[i] = startActivity.applyAsDouble(grid.centre[i]);
            sum += grid.volume[i] * solver.now.water[i];
        }
        start = sum;
    }

    static Diffusion uniform(DepthProfile profile, double correction, int cells, double biot) {
        return new Diffusion(profile, correction, cells, biot, d -> 0.8);
    }

    /** Fraction of the whole change done at Fourier number fo; steps grow from the smallest by a part of the time. */
    double done(double fo, double part) {
        double dt = 1e-7;
        while (time < fo) {
            dt = Math.min(Math.max(1e-7, part * time), fo - time);
            if (!solver.step(dt)) {
                throw new AssertionError("no convergence");
            }
            time += dt;
        }
        return solver.now.lost / (start - OUTSIDE * grid.total);
    }

    /** Steps evenly to fo. */
    void even(double fo, int steps) {
        for (int i = 0; i < steps; i++) {
            solver.step(fo / steps);
        }
        time = fo;
    }

    double[] copy() {
        return Arrays.copyOf(solver.now.water, grid.cells);
    }
}
