package org.fizzhull.uncertainty.sampling;

/**
 * Ranking and selection from draws that the alternatives share: element i of every array is the same state of the
 * world, and more is better.
 *
 * <p>Sources: the loss of a choice against perfect information is that of Raiffa and Schlaifer (1961), Applied
 * Statistical Decision Theory, chapter 4 (from memory); the indifference zone that of Bechhofer (1954), Ann. Math.
 * Statist. 25, 16 (from memory). With shared draws the variance of a difference is s1^2 + s2^2 - 2 r s1 s2, r the
 * correlation of the two; with separate draws the last term is missing. Stateless.
 */
public final class Ranking {
    private Ranking() {}

    /**
     * {@return the chance that a beats b: share of the draws in which a is more; equal counts half}
     *
     * @param a one value for each draw, the more the better
     * @param b values of the other alternative, in the same draws
     * @throws IllegalArgumentException for arrays of different length, or empty ones
     */
    public static double chanceAbove(double[] a, double[] b) {
        check(a, b);
        double above = 0;
        for (int i = 0; i < a.length; i++) {
            above += a[i] > b[i] ? 1 : a[i] == b[i] ? 0.5 : 0;
        }
        return above / a.length;
    }

    /**
     * {@return the standard error of the mean of a - b, from the scatter of the blocks of draws}
     *
     * @param a one value for each draw
     * @param b values of the other alternative, in the same draws
     * @throws IllegalArgumentException for arrays of different length, or empty ones
     */
    public static double differenceError(double[] a, double[] b) {
        check(a, b);
        double[] difference = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            difference[i] = a[i] - b[i];
        }
        return Statistics.meanError(difference, MonteCarlo.BLOCKS);
    }

    /**
     * {@return the best that any of them reaches, draw by draw}
     *
     * @param values one row for each alternative, one value for each draw
     */
    public static double[] best(double[][] values) {
        double[] best = values[0].clone();
        for (double[] row : values) {
            check(best, row);
            for (int i = 0; i < best.length; i++) {
                best[i] = Math.max(best[i], row[i]);
            }
        }
        return best;
    }

    /**
     * {@return the mean loss of a choice against choosing with the state of the world known: the expected opportunity loss, in
     * the unit of the values} Of the alternative with the best mean it is the expected value of perfect information.
     *
     * @param best of all alternatives, draw by draw, as {@link #best}
     * @param chosen values of the one that is taken, in the same draws
     * @throws IllegalArgumentException for arrays of different length, or empty ones
     */
    public static double opportunityLoss(double[] best, double[] chosen) {
        check(best, chosen);
        double loss = 0;
        for (int i = 0; i < best.length; i++) {
            loss += best[i] - chosen[i];
        }
        return loss / best.length;
    }

    /**
     * {@return the chance of each to be the best of all: share of the draws in which none is more; one of n equals
     * counts 1/n}
     *
     * @param values one row for each alternative, one value for each draw
     */
    public static double[] chancesOfBest(double[][] values) {
        double[] best = best(values);
        double[] chances = new double[values.length];
        for (int i = 0; i < best.length; i++) {
            int equal = 0;
            for (double[] row : values) {
                equal += row[i] == best[i] ? 1 : 0;
            }
            for (int k = 0; k < values.length; k++) {
                chances[k] += values[k][i] == best[i] ? 1.0 / equal / best.length : 0;
            }
        }
        return chances;
    }

    /** Refuses values that are not of the same draws. */
    private static void check(double[] a, double[] b) {
        if (a.length != b.length || a.length == 0) {
            throw new IllegalArgumentException(a.length + " draws beside " + b.length);
        }
    }
}
