package org.fizzhull.forecast.model;

import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.uncertainty.sampling.Model;

/**
 * The spare in still water as a function of the uncertain inputs, and beside it the mass and the critical weight of
 * each draw: nothing happens after the drop, so that the critical weight is the mass and the spare together. The
 * columns are those of {@link VoyageModel}; what belongs to a fizzing piece stays 0. One instance serves one thread.
 */
public final class StillModel implements Model {
    /** Makes the piece of a draw and its balance. */
    private final DropModel drop;
    /** How the weights of the pieces of the batch scatter. */
    private final Scatter scatter;
    /** Columns that are filled, one place for each draw. */
    private final double[][] columns;

    /**
     * Writes into columns of {@link VoyageModel#CRITICAL_WIDTH}, one row per draw.
     *
     * @param prepared the prepared question
     * @param columns columns to be filled, each with one place per draw
     */
    public StillModel(PreparedQuestion prepared, double[][] columns) {
        this(prepared, new DropModel(prepared), columns);
    }

    /**
     * With pieces made otherwise than the question says.
     *
     * @param prepared the prepared question
     * @param pieces model that makes the pieces of the draws
     * @param columns columns to be filled, each with one place per draw
     */
    public StillModel(PreparedQuestion prepared, DropModel pieces, double[][] columns) {
        drop = pieces;
        scatter = Scatter.of(prepared);
        this.columns = columns;
    }

    @Override
    public double at(double[] inputs) {
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        columns[VoyageModel.MASS][row] = drop.mass();
        double floats = drop.spare(drop.mass()) > 0 ? 1 : 0;
        columns[VoyageModel.OWN][row] = floats;
        columns[VoyageModel.AT_ONCE][row] = floats;
        double critical = drop.mass() + drop.spare(drop.mass());
        VoyageModel.keep(row, critical, critical, CriticalWeights.Met.MONOTONE, drop, scatter, columns);
    }
}
