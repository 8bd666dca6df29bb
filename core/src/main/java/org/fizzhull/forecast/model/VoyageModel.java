package org.fizzhull.forecast.model;

import java.util.function.Supplier;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.HeldUnder;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.result.Voyage;

/**
 * The spare at the drop as a function of the uncertain inputs, and beside it what becomes of the piece of each draw.
 *
 * <p>{@link #at} costs a balance alone and is called for the mixed rows of the indices too; {@link #keep} is called
 * once a draw and walks it: the voyage of its piece, the critical weights ({@link CriticalSearch}), and what the
 * measurements that could be made next would show. Each number has a column, written at the place of the draw, so that
 * any number of threads may share the columns. A draw that stands several times after a measurement is walked once. One
 * instance serves one thread.
 */
public final class VoyageModel implements Model {
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
    public static final int FIZZ_TIME = 5;

    /** Mass of the piece, kg. */
    public static final int MASS = 6;

    /** Number of columns with the outcome of a piece alone. */
    static final int WIDTH = 7;

    /** Heaviest weight that floats to the end, kg. */
    public static final int END = 7;

    /** Heaviest weight that floats at once, kg. */
    static final int ONCE = 8;

    /** Mean weight of the pieces of the batch as they go into the bath, kg. */
    public static final int MEAN = 9;

    /** Weight into the bath per entered weight. */
    static final int GAIN = 10;

    /** What the search met, as the place of a {@link CriticalWeights.Met}. */
    static final int MET = 11;

    /** 1 where the piece of the draw itself floats to the end, else 0. */
    static final int OWN = 12;

    /** When a heavier piece of the draw comes up, s: 0 where it floats at once, infinite where it stays down. */
    public static final int HEAVIER_RISE = 13;

    /** Error of the mould's size, m. */
    public static final int SIZE_ERROR = 14;

    /** How wide that heavier piece is when it comes up, m. */
    public static final int HEAVIER_LEFT = 15;

    /** What a tared scale would show of the piece held under for {@link #HELD_SECONDS}, kg. */
    public static final int HELD = 16;

    /** Share of its fizz that was gone before the bath. */
    public static final int LOST = 17;

    /** When that scale is read, s. */
    public static final double HELD_SECONDS = 5;

    /** Number of columns with the critical weights and what bears on them. */
    public static final int CRITICAL_WIDTH = 18;

    /** Makes the piece of a draw. */
    private final DropModel drop;
    /** Walks its voyages. */
    private final QuickVoyage voyage;
    /** Columns that are filled, one place for each draw. */
    private final double[][] columns;
    /** How the weights of the pieces of the batch scatter. */
    private final Scatter scatter;
    /** Finds the critical weights of a draw. */
    private final CriticalSearch search;
    /** Weight of the piece whose rise could be timed, kg. */
    private final double heavier;
    /** What a scale would show of the piece held under. */
    private final HeldUnder bowl;
    /** Whether the last values have not been walked yet. */
    private boolean fresh;
    /** Row of the draw that was walked last. */
    private int last;

    /**
     * Writes into the columns, one row per draw; the critical weights too where there are columns for them.
     *
     * @param prepared the prepared question
     * @param columns columns to be filled, each with one place per draw
     */
    public VoyageModel(PreparedQuestion prepared, double[][] columns) {
        this(prepared, new DropModel(prepared), columns);
    }

    /**
     * With pieces made otherwise than the question says.
     *
     * @param prepared the prepared question
     * @param pieces model that makes the pieces of the draws
     * @param columns columns to be filled, each with one place per draw
     */
    public VoyageModel(PreparedQuestion prepared, DropModel pieces, double[][] columns) {
        drop = pieces;
        voyage = new QuickVoyage(prepared.form(), prepared.question().bath());
        search = new CriticalSearch(prepared.question(), drop, voyage);
        scatter = Scatter.of(prepared);
        heavier = prepared.heavier();
        bowl = new HeldUnder(prepared.form(), prepared.question().bath());
        this.columns = columns;
    }

    /**
     * {@return a new model for each caller, all with the same columns}
     *
     * @param prepared the prepared question
     * @param columns columns to be filled, each with one place per draw
     */
    public static Supplier<Model> each(PreparedQuestion prepared, double[][] columns) {
        return () -> new VoyageModel(prepared, columns);
    }

    @Override
    public double at(double[] inputs) {
        fresh = true;
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        if (!fresh) {
            copy(row);
            return;
        }
        voyage.run(drop.launch());
        columns[AT_ONCE][row] = voyage.outcome() == Voyage.Outcome.FLOATS_AT_ONCE ? 1 : 0;
        columns[LATER][row] = voyage.outcome() == Voyage.Outcome.RISES_LATER ? 1 : 0;
        columns[SINKS][row] = voyage.sinksLater() ? 1 : 0;
        columns[GRAZES][row] = voyage.grazes() ? 1 : 0;
        columns[RISE_TIME][row] = voyage.riseTime();
        columns[FIZZ_TIME][row] = voyage.fizzTime();
        columns[MASS][row] = drop.mass();
        if (columns.length == CRITICAL_WIDTH) {
            boolean floats = voyage.staysToTheEnd();
            search.search(row, floats);
            keep(row, search.end, search.once, search.met, drop, scatter, columns);
            columns[OWN][row] = floats ? 1 : 0;
            // what the measurements that could come next would show of this draw
            columns[HEAVIER_RISE][row] = drop.rise(voyage, heavier);
            columns[HEAVIER_LEFT][row] = voyage.upWidth();
            columns[LOST][row] = 1 - drop.fizzLeft();
            // one draw in ten as if the scale did not feel the plume
            columns[HELD][row] = bowl.reading(drop.launch(), HELD_SECONDS, row % 10 != 9);
        }
        fresh = false;
        last = row;
    }

    /** The same values again, as after a measurement. */
    private void copy(int row) {
        for (double[] column : columns) {
            column[row] = column[last];
        }
        last = row;
    }

    /** Keeps the critical weights to the end and at once, kg, and what they are compared with. */
    static void keep(
            int row,
            double end,
            double once,
            CriticalWeights.Met met,
            DropModel drop,
            Scatter scatter,
            double[][] columns) {
        columns[END][row] = end;
        columns[ONCE][row] = once;
        columns[MEAN][row] = drop.mean(scatter);
        columns[GAIN][row] = drop.gain(scatter);
        columns[SIZE_ERROR][row] = drop.sizeError();
        columns[MET][row] = met.code();
    }
}
