package org.fizzhull.forecast;

import java.util.function.Supplier;
import org.fizzhull.uncertainty.Model;
import org.fizzhull.voyage.Outcome;
import org.fizzhull.voyage.QuickVoyage;

/** The spare at the drop as a function of the uncertain inputs, and beside it what becomes of the piece of each draw. */
final class VoyageModel implements Model {
    /** 1 where it floats at once, else 0. */
    static final int AT_ONCE = 0;

    /** 1 where it rises later, else 0. */
    static final int LATER = 1;

    /** 1 where it floats at once and sinks later, else 0. */
    static final int SINKS = 2;

    /** 1 where its balance grazes zero, else 0. */
    static final int GRAZES = 3;

    /** Rise time, s; NaN where it does not rise later. */
    static final int RISE_TIME = 4;

    /** Fizz time, s. */
    static final int FIZZ_TIME = 5;

    /** Mass of the piece, kg. */
    static final int MASS = 6;

    /** Number of columns. */
    static final int WIDTH = 7;

    private final DropModel drop;
    private final QuickVoyage voyage;
    private final double[][] columns;

    /** Writes into the columns, one row a draw. */
    VoyageModel(Posed posed, double[][] columns) {
        drop = new DropModel(posed.question(), posed.factors());
        voyage = new QuickVoyage(posed.form(), posed.question().bath());
        this.columns = columns;
    }

    /** A new model for each asker, all with the same columns. */
    static Supplier<Model> each(Posed posed, double[][] columns) {
        return new Supplier<>() {
            @Override
            public Model get() {
                return new VoyageModel(posed, columns);
            }
        };
    }

    @Override
    public double at(double[] inputs) {
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        drop.sail(voyage);
        columns[AT_ONCE][row] = voyage.outcome() == Outcome.FLOATS_AT_ONCE ? 1 : 0;
        columns[LATER][row] = voyage.outcome() == Outcome.RISES_LATER ? 1 : 0;
        columns[SINKS][row] = voyage.sinksLater() ? 1 : 0;
        columns[GRAZES][row] = voyage.grazes() ? 1 : 0;
        columns[RISE_TIME][row] = voyage.riseTime();
        columns[FIZZ_TIME][row] = voyage.fizzTime();
        columns[MASS][row] = drop.mass();
    }
}
