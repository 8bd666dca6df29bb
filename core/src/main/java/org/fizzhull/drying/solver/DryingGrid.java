package org.fizzhull.drying.solver;

import org.fizzhull.drying.place.Opening;

/**
 * Finite volumes along the inward depth: cell i lies between the faces at depths d[i] and d[i+1], cell 0 at the skin.
 * Volumes are differences of the exact V(d), so the cells add up to the piece.
 *
 * <p>Fluxes between cells are of order 2 in the width of a cell. Immutable; the arrays are shared with the solver,
 * which does not write to them.
 *
 * <p>A grading g above 1 puts the faces at deepest (i/cells)^g, so that cells are finer where the gradient is steep at
 * first. Cost: one evaluation of the profile a cell.
 */
public final class DryingGrid {
    /** Number of cells. */
    public final int cells;

    /** Volume of each cell, m3. */
    public final double[] volume;

    /** A(d) / distance between the centres of cells i-1 and i, m; entry 0 is the skin over its half cell. */
    final double[] conductance;

    /** Area of the skin, m2. */
    final double skin;

    /** Depth of the centre of each cell, m. */
    public final double[] centre;

    /** Whole volume, m3. */
    public final double total;

    /**
     * @param opening profile and correction; the correction is folded into the conductances
     * @param cells number of cells, 4 to 4000
     * @param grading 1 for even cells; above 1 the cells are finer at the skin
     * @throws IllegalArgumentException for any other number of cells, or a grading below 1
     */
    public DryingGrid(Opening opening, int cells, double grading) {
        if (!(cells >= 4 && cells <= 4000 && grading >= 1)) {
            throw new IllegalArgumentException("4 to 4000 cells and a grading of at least 1 are needed");
        }
        this.cells = cells;
        var profile = opening.profile();
        double deepest = profile.deepest();
        volume = new double[cells];
        conductance = new double[cells];
        centre = new double[cells];
        double above = 0;
        double left = profile.volume(0);
        total = left;
        skin = profile.area(0);
        for (int i = 0; i < cells; i++) {
            // the cell reaches from above to below; its volume is the difference of what is left there
            double below = deepest * power((i + 1.0) / cells, grading);
            double rest = i == cells - 1 ? 0 : profile.volume(below);
            volume[i] = left - rest;
            centre[i] = 0.5 * (above + below);
            double distance = i == 0 ? centre[0] : centre[i] - centre[i - 1];
            conductance[i] = profile.area(above) / (distance * opening.correction());
            above = below;
            left = rest;
        }
    }

    /**
     * {@return all that the cells hold of what is given per volume}
     *
     * @param values amount per volume in each cell
     */
    public double sum(double[] values) {
        double sum = 0;
        for (int i = 0; i < cells; i++) {
            sum += volume[i] * values[i];
        }
        return sum;
    }

    /** The power; exactly the base for an exponent of 1, and faster. */
    private static double power(double base, double exponent) {
        return exponent == 1 ? base : Math.pow(base, exponent);
    }
}
