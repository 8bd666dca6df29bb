package org.fizzhull.drying.solver;

/**
 * What one piece (of N alike) holds, cell by cell, and the air around it, at a moment of its course. SI.
 *
 * <p>Mutable, and written by {@link DryingSolver} at each step; a copy is kept where a state has to be come back to.
 */
public final class Contents {
    /** Water of each cell that can move, kg/m3. */
    public double[] water = {};

    /** CO2 made in each cell, mol per kg of dry mix. */
    public double[] extent = {};

    /** Water bound by the acid in each cell, kg per kg of dry mix. */
    public double[] bound = {};

    /** Relative humidity of the room. */
    public double room;

    /** Water that has left through the skin, kg; negative where it came in. */
    public double lost;

    /** Water the film reaction has made, kg. */
    public double made;

    /** Water leaving through the skin at the end of the last step, kg/s. */
    double flux;

    /** Contents without cells. */
    public Contents() {}

    /** Makes room for so many cells; the cells start empty. */
    void cells(int n) {
        water = new double[n];
        extent = new double[n];
        bound = new double[n];
    }

    /**
     * Takes over all of another's figures; both have as many cells.
     *
     * @param other the figures to copy
     */
    public void take(Contents other) {
        System.arraycopy(other.water, 0, water, 0, water.length);
        System.arraycopy(other.extent, 0, extent, 0, extent.length);
        System.arraycopy(other.bound, 0, bound, 0, bound.length);
        room = other.room;
        lost = other.lost;
        made = other.made;
        flux = other.flux;
    }

    /** {@return the same figures, to be kept} */
    public Contents copy() {
        var kept = new Contents();
        kept.cells(water.length);
        kept.take(this);
        return kept;
    }
}
