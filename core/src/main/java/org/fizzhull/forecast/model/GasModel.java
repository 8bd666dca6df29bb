package org.fizzhull.forecast.model;

import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.result.Voyage;

/**
 * The rate of gas of the full voyage of each draw: its peak in the first column, then at each time asked, m3/s dry at
 * the bath's temperature and 1 atm. The quick voyage has no rate; a full one costs about 150 times as much, so that few
 * draws are made. One instance serves one thread.
 */
public final class GasModel implements Model {
    /** Makes the piece of a draw. */
    private final DropModel drop;
    /** Walks its voyage. */
    private final FullVoyage voyage;
    /** Times asked, s after the drop. */
    private final double[] times;
    /** Columns that are filled, one place for each draw. */
    private final double[][] columns;

    /**
     * Writes into the columns, one row per draw.
     *
     * @param prepared the prepared question
     * @param times times asked, s
     * @param columns columns to be filled, each with one place per draw
     */
    public GasModel(PreparedQuestion prepared, double[] times, double[][] columns) {
        drop = new DropModel(prepared);
        voyage = FullVoyage.of(prepared.form(), prepared.question().bath());
        this.times = times;
        this.columns = columns;
    }

    @Override
    public double at(double[] inputs) {
        return drop.at(inputs);
    }

    @Override
    public void keep(int row) {
        Voyage course = voyage.run(drop.launch());
        columns[0][row] = course.dryVolume(course.peakGasRate());
        for (int i = 0; i < times.length; i++) {
            columns[1 + i][row] = course.dryVolume(rate(course, times[i]));
        }
    }

    /**
     * {@return the rate of gas at the surface, mol/s: linear between two rows of the course, 0 after its end}
     *
     * @param course a voyage
     * @param time time after it was let go, s
     */
    public static double rate(Voyage course, double time) {
        double[] t = course.series().time();
        double[] rate = course.series().gasRate();
        int next = 0;
        while (next < t.length && t[next] < time) {
            next++;
        }
        if (next == t.length) {
            return 0;
        }
        if (next == 0 || t[next] == t[next - 1]) {
            return rate[next];
        }
        double share = (time - t[next - 1]) / (t[next] - t[next - 1]);
        return rate[next - 1] + share * (rate[next] - rate[next - 1]);
    }
}
