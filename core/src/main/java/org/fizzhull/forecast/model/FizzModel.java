package org.fizzhull.forecast.model;

import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.uncertainty.Model;
import org.fizzhull.voyage.QuickVoyage;

/**
 * The fizz time of each draw by the quick voyage, s, and beside it the share of the fizz it lost before the bath and the
 * weight it goes into the bath with, kg.
 */
public final class FizzModel implements Model {
    private static final int TIME = 0;
    private static final int LOST = 1;
    private static final int MASS = 2;
    private static final int WIDTH = 3;

    private final DropModel drop;
    private final QuickVoyage voyage;
    private final double[][] columns;

    /**
     * Writes into the columns, one row per draw.
     *
     * @param posed the prepared question
     * @param columns columns to be filled, each with one place per draw
     */
    public FizzModel(PreparedQuestion posed, double[][] columns) {
        drop = new DropModel(posed);
        voyage = new QuickVoyage(posed.form(), posed.question().bath());
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

    /**
     * {@return the fizz times, s}
     *
     * @param columns columns to be filled, each with one place per draw
     */
    public static double[] times(double[][] columns) {
        return columns[TIME];
    }

    /**
     * {@return the shares of the fizz lost}
     *
     * @param columns columns to be filled, each with one place per draw
     */
    public static double[] lost(double[][] columns) {
        return columns[LOST];
    }

    /**
     * {@return weights into the bath, kg}
     *
     * @param columns columns to be filled, each with one place per draw
     */
    public static double[] masses(double[][] columns) {
        return columns[MASS];
    }

    @Override
    public double at(double[] inputs) {
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        drop.sail(voyage);
        columns[TIME][row] = voyage.fizzTime();
        columns[LOST][row] = 1 - drop.fizzLeft();
        columns[MASS][row] = drop.mass();
    }
}
