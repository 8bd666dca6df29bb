package org.fizzhull.drying;

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

    /** For the draws of a Monte Carlo run: 16 cells. */
    public static final Resolution COARSE = new Resolution(16, 1, 8e-3);

    /** Refuses what cannot be computed with. */
    public Resolution {
        if (!(cells >= 4 && cells <= 4000 && grading >= 1 && grading <= 4 && tolerance >= 1e-9 && tolerance <= 0.1)) {
            throw new IllegalArgumentException("4 to 4000 cells, a grading of 1 to 4, a tolerance of 1e-9 to 0.1");
        }
    }

    /** The cells of a piece from the faces that are open. */
    DryingGrid grid(Opening opening) {
        return new DryingGrid(opening, cells, grading);
    }
}
