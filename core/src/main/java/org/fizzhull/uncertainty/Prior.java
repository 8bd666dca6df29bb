package org.fizzhull.uncertainty;

/**
 * What is believed of one uncertain input before anything is measured, as its quantile function: a draw is the quantile
 * of a uniform number. Immutable.
 */
public interface Prior {
    /**
     * The quantile.
     *
     * @param u probability, 0 &lt; u &lt; 1
     */
    double quantile(double u);

    /** Natural logarithm of the density at a value, per unit of the input; minus infinity outside the range. */
    double logDensity(double value);

    /** The 50 % point. */
    default double median() {
        return quantile(0.5);
    }
}
