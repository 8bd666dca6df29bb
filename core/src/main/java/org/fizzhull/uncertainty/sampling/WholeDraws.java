package org.fizzhull.uncertainty.sampling;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.uncertainty.Prior;

/**
 * Makes priors take their values together from a table of whole draws, so that however they depend on one another
 * survives: the row is chosen by the first of their columns, row = floor(u n) of n rows. Asked alone, by {@link
 * Prior#quantile(double)}, each keeps the marginal law it had. What a bench has learned enters a forecast so.
 * Stateless; the priors are immutable.
 */
public final class WholeDraws {
    private WholeDraws() {}

    /**
     * {@return the same priors with some of them drawn together}
     *
     * @param priors one for each column
     * @param columns places of those that depend on one another, at least one; the first chooses the row
     * @param table one row a draw, a value of each of them in each, in the order of {@code columns}; rows that are
     *     alike should stand together, so that even points meet them evenly; not copied
     */
    public static List<Prior> join(List<Prior> priors, int[] columns, double[][] table) {
        List<Prior> joined = new ArrayList<>(priors);
        for (int k = 0; k < columns.length; k++) {
            joined.set(columns[k], new Together(priors.get(columns[k]), columns[0], k, table));
        }
        return joined;
    }

    /** One of them: its marginal prior, the column that chooses the row, and its place in a row. */
    private record Together(Prior alone, int chooser, int place, double[][] table) implements Prior {
        @Override
        public double quantile(double u) {
            return alone.quantile(u);
        }

        @Override
        public double quantile(double[] u, int column) {
            return table[(int) Math.min(table.length - 1, u[chooser] * table.length)][place];
        }

        @Override
        public boolean isDependent() {
            return true;
        }

        @Override
        public double cumulative(double value) {
            return alone.cumulative(value);
        }

        @Override
        public double logDensity(double value) {
            return alone.logDensity(value);
        }
    }
}
