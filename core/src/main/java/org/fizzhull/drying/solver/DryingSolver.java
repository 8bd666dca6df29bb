package org.fizzhull.drying.solver;

/**
 * One piece (of N alike) and the air of its room, stepped through time: vapour diffusion along the depth profile with
 * the film reaction in every cell and one more equation for the room. Allocates nothing per step. SI.
 *
 * <p>In time the two-stage L-stable SDIRK method of order 2 (Alexander 1977, SIAM J. Numer. Anal. 14, 1006 [from
 * memory]), gamma = 1 - 1/sqrt 2. Decided by measurement on the front of docs/physics/drying.md, 3, 60 cells: 35 steps
 * (230 Newton iterations) are within 0.24 % of the converged times, while implicit Euler needs 145 steps (439
 * iterations) for 0.2
 * %.
 *
 * <p>A step of dt, from the state y0, with f the rate of change:
 *
 * <ol>
 *   <li>first stage: y1 = y0 + gamma dt f(y1);
 *   <li>its base for the second: y0 + (1 - gamma)/gamma (y1 - y0);
 *   <li>second stage: y = base + gamma dt f(y), which is the state at the end.
 * </ol>
 *
 * <p>Both stages solve the same system ({@link DryingStage}). The water that has left is the flux of both, weighted by
 * 1 - gamma and gamma, so that the balance closes to rounding. One instance serves one piece and one thread.
 */
public final class DryingSolver {
    /** The coefficient of the method, 1 - 1/sqrt 2. */
    private static final double GAMMA = 1 - Math.sqrt(0.5);

    /** What is carried on from the first stage to the second: the start, moved along the first stage by this part. */
    private static final double CARRIED = (1 - GAMMA) / GAMMA;

    /** The system of one stage. */
    private final DryingStage stage;

    /** What the piece holds now. */
    public final Contents now = new Contents();

    /** How far the flux of the two stages of the last step differ, kg/s: the measure of the step control. */
    public double fluxChange;

    /** State before the last step. */
    private final Contents before = new Contents();
    /** State from which the present stage starts. */
    private final Contents base = new Contents();

    /**
     * Makes the solver of one mix; grid, room and state are set before the first step.
     *
     * @param isotherm water activity against content
     * @param reaction the slow reaction in the films
     * @param hydration the acid that binds water
     * @param rhoDry dry mix per volume, kg/m3
     */
    public DryingSolver(WaterActivity isotherm, FilmReaction reaction, AcidHydration hydration, double rhoDry) {
        stage = new DryingStage(isotherm, reaction, hydration, rhoDry);
    }

    /**
     * Lays the cells out.
     *
     * @param grid cells
     * @param vapour D_e rho_sat, kg/(m s) per unit of activity
     * @param surface K rho_sat, kg/(m2 s) per unit of activity; 0 for a closed skin
     * @param filmRate rate constant k(T) with its factors, mol/(kg water s)
     */
    public void lay(DryingGrid grid, double vapour, double surface, double filmRate) {
        if (grid.cells != now.water.length) {
            now.cells(grid.cells);
            before.cells(grid.cells);
            base.cells(grid.cells);
            stage.cells(grid.cells);
        }
        stage.path.lay(grid, vapour, surface);
        stage.filmRate = filmRate;
    }

    /**
     * The room keeps its humidity whatever the pieces give off.
     *
     * @param humidity relative humidity of the room, 0 to 1
     */
    public void fixedRoom(double humidity) {
        stage.air.fix();
        now.room = humidity;
    }

    /** {@return the balance of a closed room, to be told its figures} */
    public RoomBalance air() {
        return stage.air;
    }

    /**
     * Takes one step. The state stays as it was where Newton's method does not settle or a cell would lose more fizz
     * than it has.
     *
     * @param dt length of the step, s
     * @return whether the step was taken
     */
    public boolean step(double dt) {
        before.take(now);
        if (stages(dt)) {
            return true;
        }
        undo();
        return false;
    }

    /** Both stages; false where one cannot be solved. */
    private boolean stages(double dt) {
        base.take(now);
        if (!stage.solve(now, base, GAMMA * dt)) {
            return false;
        }
        // from the first stage on to the base of the second
        double first = now.flux;
        double madeFirst = stage.made(base, now);
        for (int i = 0; i < now.water.length; i++) {
            base.water[i] = before.water[i] + CARRIED * (now.water[i] - before.water[i]);
            base.extent[i] = before.extent[i] + CARRIED * (now.extent[i] - before.extent[i]);
            base.bound[i] = before.bound[i] + CARRIED * (now.bound[i] - before.bound[i]);
        }
        base.room = before.room + CARRIED * (now.room - before.room);
        if (stage.exhausted(before, base) || !stage.solve(now, base, GAMMA * dt)) {
            return false;
        }
        now.lost += dt * ((1 - GAMMA) * first + GAMMA * now.flux);
        now.made += CARRIED * madeFirst + stage.made(base, now);
        fluxChange = now.flux - first;
        return true;
    }

    /** Goes back to the state before the last step. */
    public void undo() {
        now.take(before);
    }
}
