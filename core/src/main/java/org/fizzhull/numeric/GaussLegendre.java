package org.fizzhull.numeric;

/**
 * Nodes and weights of the Gauss-Legendre rule with 32 points on [-1, 1], exact for polynomials of degree 63. Computed
 * once by Newton's method on the Legendre polynomial, so that no table can hold a misprint.
 * <pre>{@code
 * double sum = 0;
 * for (int i = 0; i < GaussLegendre.POINTS; i++) {
 *     sum += GaussLegendre.weight(i) * Math.cos(GaussLegendre.node(i));   // 2 sin 1
 * }
 * }</pre>
 *
 * <p>Error: rounding. For smooth integrands: a square root or a kink in the interval costs most of the accuracy, so
 * callers substitute or split there. Immutable, safe for use by several threads. Used by the bodies of revolution.
 */
public final class GaussLegendre {
    /** Number of points. */
    public static final int POINTS = 32;

    /** Nodes, rising. */
    private static final double[] NODE = new double[POINTS];
    /** Their weights. */
    private static final double[] WEIGHT = new double[POINTS];

    static {
        for (int i = 0; i < POINTS / 2; i++) {
            // Tricomi's first guess of root i of P_32, from the largest down
            double x = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
            double slope = 1;
            for (int pass = 0; pass < 6; pass++) {
                // P_k by its recurrence up to P_32, and its slope
                double p0 = 1;
                double p1 = x;
                for (int k = 2; k <= POINTS; k++) {
                    double p2 = ((2 * k - 1) * x * p1 - (k - 1) * p0) / k;
                    p0 = p1;
                    p1 = p2;
                }
                slope = POINTS * (x * p1 - p0) / (x * x - 1);
                x -= p1 / slope;
            }
            double weight = 2 / ((1 - x * x) * slope * slope);
            NODE[i] = -x;
            NODE[POINTS - 1 - i] = x;
            WEIGHT[i] = weight;
            WEIGHT[POINTS - 1 - i] = weight;
        }
    }

    private GaussLegendre() {}

    /**
     * {@return the node i, rising from -1 to 1}
     *
     * @param i index, 0 to 31
     */
    public static double node(int i) {
        return NODE[i];
    }

    /**
     * {@return the weight of node i; the weights sum to 2}
     *
     * @param i index, 0 to 31
     */
    public static double weight(int i) {
        return WEIGHT[i];
    }
}
