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
     * For the draws of a Monte Carlo run: 6 graded cells, 14 to 20 steps. Against 120 cells and steps a hundredth as
     * tolerant, over 1,024 draws each of a damp and of a very damp 65 mm ball, of damp air and of half a day: the time
     * until ready is 1.4 to 2.3 % long in the mean and up to 2.5 % in the root mean square; the final mass is off by
     * 0.12 g in the root mean square where very damp, else 0.03 g, its median by less than 0.01 g, its 5 and 95 %
     * points by less than 0.02 g, 0.18 g where very damp; the fizz left by 0.004 and 0.001 in the root mean square. The
     * priors spread the ready time by a factor of two either way. Eight cells and steps of 2 % halve these errors and
     * take half as long again.
     */
    public static final Resolution COARSE = new Resolution(6, 1.5, 5e-2);

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
