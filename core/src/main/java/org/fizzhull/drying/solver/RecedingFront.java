package org.fizzhull.drying.solver;

/**
 * The front of a liquid that only evaporates: without sorbents it recedes along the depth and its vapour crosses the
 * dry shell (docs/physics/drying.md, 3). On the cells of a depth profile it gives the closed forms of slab, cylinder
 * and ball; used for alcohol, for the reaction number, and as the check of the solver for mixes without sorbents.
 */
public final class RecedingFront {
    private final DryingGrid grid;
    private final double[] crossed;

    public RecedingFront(DryingGrid grid) {
        this.grid = grid;
        crossed = new double[grid.cells];
        double sum = 0;
        for (int i = 0; i < grid.cells; i++) {
            sum += 1 / grid.conductance[i];
            crossed[i] = sum;
        }
    }

    /**
     * Seconds until a cell's liquid is gone after the front reached it.
     *
     * @param liquid kg per m3 of piece
     * @param diffusivity D_e, m2/s
     * @param surface K, m/s
     * @param drop vapour density at the front less that of the room, kg/m3
     */
    private double stay(int cell, double liquid, double diffusivity, double surface, double drop) {
        double resistance = crossed[cell] / diffusivity + 1 / (surface * grid.skin);
        return liquid * grid.volume[cell] * resistance / drop;
    }

    /** Seconds until everything is gone; infinite where the drop is not positive. */
    double time(double liquid, double diffusivity, double surface, double drop) {
        if (!(drop > 0 && surface > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int i = 0; i < grid.cells; i++) {
            sum += stay(i, liquid, diffusivity, surface, drop);
        }
        return sum;
    }

    /** Mean time a kilogram of the liquid stays, s: the time constant of the reaction number. */
    public double meanStay(double liquid, double diffusivity, double surface, double drop) {
        if (!(drop > 0 && surface > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double clock = 0;
        double sum = 0;
        for (int i = 0; i < grid.cells; i++) {
            double stay = stay(i, liquid, diffusivity, surface, drop);
            sum += grid.volume[i] * (clock + 0.5 * stay);
            clock += stay;
        }
        return sum / grid.total;
    }

    /** Share evaporated a time {@code seconds} after the share {@code before} was. */
    public double advance(
            double before, double seconds, double liquid, double diffusivity, double surface, double drop) {
        if (!(drop > 0 && surface > 0) || before >= 1) {
            return before;
        }
        double passed = 0;
        double left = seconds;
        double share = before;
        for (int i = 0; i < grid.cells; i++) {
            double part = grid.volume[i] / grid.total;
            double here = passed + part - share;
            passed += part;
            if (here <= 0) {
                continue;
            }
            double stay = stay(i, liquid, diffusivity, surface, drop) * here / part;
            if (stay > left) {
                return Math.min(1, share + here * left / stay);
            }
            left -= stay;
            share = passed;
        }
        return 1;
    }
}
