package org.fizzhull.decide.why;

import org.fizzhull.evidence.Interval;

/**
 * How much one reading tells about which of two causes is at work.
 *
 * <p>With chances p and 1 - p and normal readings f1, f2 the expected information is
 *
 * <pre>
 *   I = p INT f1 log2(f1/m) dx + (1 - p) INT f2 log2(f2/m) dx,   m = p f1 + (1 - p) f2
 * </pre>
 *
 * (mutual information, Shannon 1948, Bell System Technical Journal 27, 379), 0 where the readings are alike, the entropy of p
 * where they never overlap. Summed on an even grid over six standard deviations beyond both, to about 1e-6.
 */
final class Discrimination {
    /** Points of the grid. */
    private static final int POINTS = 2000;
    /** Standard deviations that the grid reaches beyond both medians. */
    private static final double WIDTHS = 6;

    private Discrimination() {}

    /**
     * {@return the expected information of a reading, bit: 0 tells nothing, 1 settles two causes that are equally likely}
     *
     * @param p chance of the first cause, given that it is one of the two
     * @param one median and 95 % interval of the reading under the first cause, errors of reading included
     * @param two the same under the second cause
     */
    static double bits(double p, Interval one, Interval two) {
        // an even grid that holds both readings
        double s1 = deviation(one);
        double s2 = deviation(two);
        double low = Math.min(one.median() - WIDTHS * s1, two.median() - WIDTHS * s2);
        double high = Math.max(one.median() + WIDTHS * s1, two.median() + WIDTHS * s2);
        double step = (high - low) / POINTS;
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double x = low + (i + 0.5) * step;
            // joint densities of reading and cause
            double f1 = p * Normals.density((x - one.median()) / s1) / s1;
            double f2 = (1 - p) * Normals.density((x - two.median()) / s2) / s2;
            double both = f1 + f2;
            sum += term(f1, p * both) + term(f2, (1 - p) * both);
        }
        return Math.max(0, sum * step / Math.log(2));
    }

    /** f ln(f/m), 0 where f is 0. */
    private static double term(double joint, double product) {
        return joint > 0 ? joint * Math.log(joint / product) : 0;
    }

    /** Standard deviation of a reading, kept above 0 so that a sure one has a density. */
    private static double deviation(Interval interval) {
        return Math.max(1e-12, Normals.deviation(interval));
    }
}
