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

    /** The 50 % point. */
    default double median() {
        return quantile(0.5);
    }
}
