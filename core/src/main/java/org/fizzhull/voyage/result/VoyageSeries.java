package org.fizzhull.voyage.result;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The voyage as columns of equal length, one row a moment, rising in time.
 *
 * <p>The rows are the ends of the legs of a {@link FullVoyage} and times between them, a tenth of a second apart at
 * first and 2 % of the time later. At an event two rows may have the same time. The arrays are not copied: whoever
 * writes into one changes the series.
 *
 * @param time s after the piece was let go
 * @param eroded how far every face has moved in where so much is left, m; the wet faces of a piece that floats with a
 *     flat face up have moved further
 * @param mass of the piece without the water in its pores, kg
 * @param centreDepth depth of its centre below the surface, m; negative above it
 * @param size what is left of its height, m, every face moved in by {@code eroded}
 * @param immersed share of its hull under water, 0 to 1
 * @param gasRate carbon dioxide seen as gas at the surface, mol/s
 * @param gas the same so far, mol
 * @param dissolved carbon dioxide that went into the bath so far, mol
 * @param left carbon dioxide still in the piece, mol
 */
public record VoyageSeries(
        double[] time,
        double[] eroded,
        double[] mass,
        double[] centreDepth,
        double[] size,
        double[] immersed,
        double[] gasRate,
        double[] gas,
        double[] dissolved,
        double[] left)
        implements Serializable {

    /** Number of columns. */
    private static final int COLUMNS = 10;

    /** From rows in the order of the columns. */
    public static VoyageSeries of(List<double[]> rows) {
        double[][] c = new double[COLUMNS][rows.size()];
        for (int i = 0; i < rows.size(); i++) {
            for (int k = 0; k < COLUMNS; k++) {
                c[k][i] = rows.get(i)[k];
            }
        }
        return new VoyageSeries(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], c[9]);
    }

    /** The columns in the order of the components. */
    private double[][] columns() {
        return new double[][] {time, eroded, mass, centreDepth, size, immersed, gasRate, gas, dissolved, left};
    }

    /** Equal columns make equal series. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof VoyageSeries that && Arrays.deepEquals(columns(), that.columns());
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(columns());
    }

    @Override
    public String toString() {
        return rows() + " rows to " + time[rows() - 1] + " s";
    }

    /** {@return the number of rows} */
    public int rows() {
        return time.length;
    }
}
