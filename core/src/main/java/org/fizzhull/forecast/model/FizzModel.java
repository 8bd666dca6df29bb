package org.fizzhull.forecast.model;

import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.QuickVoyage;

/**
 * The fizz time of each draw by the quick voyage, s, and beside it the share of the fizz it lost before the bath and
 * the weight it goes into the bath with, kg. Used by {@link org.fizzhull.forecast.FizzPredictor}; the critical weights,
 * which cost most of a {@link VoyageModel}, are left out. One instance serves one thread.
 */
public final class FizzModel implements Model {
    /** Column of the fizz time, s. */
    public static final int TIME = 0;
    /** Column of the share of the fizz lost before the bath. */
    public static final int LOST = 1;
    /** Column of the weight into the bath, kg. */
    public static final int MASS = 2;
    /** Number of columns. */
    private static final int WIDTH = 3;

    /** Makes the piece of a draw. */
    private final DropModel drop;
    /** Walks its voyage. */
    private final QuickVoyage voyage;
    /** Columns that are filled, one place for each draw. */
    private final double[][] columns;

    /**
     * Writes into the columns, one row per draw.
     *
     * @param prepared the prepared question
     * @param columns columns to be filled, each with one place per draw
     */
    public FizzModel(PreparedQuestion prepared, double[][] columns) {
        drop = new DropModel(prepared);
        voyage = new QuickVoyage(prepared.form(), prepared.question().bath());
        this.columns = columns;
    }

    /**
     * {@return the columns for so many draws}
     *
     * @param draws number of draws
     */
    public static double[][] columns(int draws) {
        return new double[WIDTH][draws];
    }

    @Override
    public double at(double[] inputs) {
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        voyage.run(drop.launch());
        columns[TIME][row] = voyage.fizzTime();
        columns[LOST][row] = 1 - drop.fizzLeft();
        columns[MASS][row] = drop.mass();
    }
}
