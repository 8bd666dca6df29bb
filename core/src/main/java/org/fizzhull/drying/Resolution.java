package org.fizzhull.drying;

import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.solver.DryingGrid;

/**
 * How finely a course is computed.
 *
 * @param cells cells along the depth
 * @param grading 1 for even cells; above 1 finer at the skin
 * @param tolerance of the step control, part of the removable water per step
 */
public record Resolution(int cells, double grading, double tolerance) {
    /** For a single course: 60 cells. */
    public static final Resolution FINE = new Resolution(60, 1, 1e-3);

    /**
     * For the draws of a Monte Carlo run whose ready time is told: 8 cells, about 24 steps. Against 120 cells and steps
     * a hundredth as tolerant, over 1,024 draws of a damp and of a very damp 65 mm ball: the time until ready is 1.2 %
     * long in the mean and 1.4 % in the root mean square; the medians and 95 % points of the final mass agree within
     * 0.1 g and of the fizz left within 0.0002. The mass lost is within 1.1 % at any time. The priors spread the ready
     * time by a factor of two either way, and twice the cells would take twice as long.
     */
    public static final Resolution COARSE = new Resolution(8, 1.6, 2e-2);

    /**
     * For the draws of a Monte Carlo run that ask for the piece at the end of its course alone: 6 cells, 14 to 20
     * steps, two thirds of the time of {@link #COARSE}. Measured in the same way, over draws of a damp and of a very
     * damp ball, of damp air and of half a day: the final mass is off by 0.12 g in the root mean square where very damp,
     * else by 0.03 g, its median by less than 0.01 g, its 5 and 95 % points by 0.18 and 0.02 g; the fizz left by 0.004
     * and 0.001 in the root mean square. The time until ready would be 2.3 % long.
     */
    public static final Resolution ROUGH = new Resolution(6, 1.5, 5e-2);

    /**
     * Refuses what cannot be computed with.
     *
     * @param cells cells along the depth
     * @param grading 1 for even cells; above 1 finer at the skin
     * @param tolerance of the step control, part of the removable water per step
     */
    public Resolution {
        if (!(cells >= 4 && cells <= 4000 && grading >= 1 && grading <= 4 && tolerance >= 1e-9 && tolerance <= 0.1)) {
            throw new IllegalArgumentException("4 to 4000 cells, a grading of 1 to 4, a tolerance of 1e-9 to 0.1");
        }
    }

    /**
     * {@return the cells of a piece from the faces that are open}
     *
     * @param opening the way out for vapour
     */
    public DryingGrid grid(Opening opening) {
        return new DryingGrid(opening, cells, grading);
    }
}
