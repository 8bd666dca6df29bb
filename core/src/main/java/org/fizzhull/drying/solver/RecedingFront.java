package org.fizzhull.drying.solver;

/**
 * The front of a liquid that only evaporates: without sorbents it recedes along the depth and its vapour crosses the
 * dry shell (docs/physics/drying.md, 3). On the cells of a depth profile it gives the closed forms of slab, cylinder
 * and ball; used for alcohol, for the reaction number, and as the check of the solver for mixes without sorbents.
 *
 * <p>Of cell i, counted from the skin, with w the liquid (kg/m3), V_i its volume (m3), R_i the resistance of the shell
 * outside it (1/m), D the diffusivity of the vapour (m2/s), K the conductance of the skin (m/s), S its area (m2) and
 * drv the drop of vapour density (kg/m3), the front stays
 *
 * <pre>  t_i = w V_i (R_i/D + 1/(K S))/drv,   R_i = sum over the cells to i of distance/area</pre>
 *
 * <p>and the cells follow one another. Error: that of the grid. Immutable.
 */
public final class RecedingFront {
    /** The cells. */
    private final DryingGrid grid;
    /** R_i, resistance of the shell from the centre of each cell to the skin for a diffusivity of 1 m2/s, 1/m. */
    private final double[] crossed;

    /**
     * Prepares the paths that vapour takes from each cell to the skin.
     *
     * @param grid cells from the faces that are open
     */
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

    /**
     * {@return the mean time a kilogram of the liquid stays, s: the time constant of the reaction number}
     *
     * @param liquid liquid per volume, kg/m3
     * @param diffusivity effective diffusivity of its vapour in the pores, m2/s
     * @param surface conductance from skin to room, m/s
     * @param drop vapour density over the liquid less that of the room, kg/m3
     */
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

    /**
     * {@return the share evaporated a time {@code seconds} after the share {@code before} was}
     *
     * @param before share evaporated before, 0 to 1
     * @param seconds time that passes, s
     * @param liquid liquid per volume, kg/m3
     * @param diffusivity effective diffusivity of its vapour in the pores, m2/s
     * @param surface conductance from skin to room, m/s
     * @param drop vapour density over the liquid less that of the room, kg/m3
     */
    public double advance(
            double before, double seconds, double liquid, double diffusivity, double surface, double drop) {
        if (!(drop > 0 && surface > 0) || before >= 1) {
            return before;
        }
        // from the cell in which the front stands now inward, while time is left
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
