package org.fizzhull.uncertainty;

import java.io.Serializable;
import org.fizzhull.numeric.Normal;

/**
 * What is believed of one uncertain input before anything is measured, as its quantile function: a draw is the quantile
 * of a uniform number, x = F^-1(u). The families in use are made by {@link Priors}; an embedder may write another,
 * which needs quantile and density. Values are in the SI unit of the input. Immutable, safe for use by several threads.
 */
public interface Prior extends Serializable {
    /** Halvings of the range of probabilities that leave nothing of it: 2^-50 is 1e-15. */
    int HALVINGS = 50;

    /**
     * {@return the quantile}
     *
     * @param u probability, 0 &lt; u &lt; 1
     */
    double quantile(double u);

    /**
     * {@return the natural logarithm of the density at a value, per unit of the input; minus infinity outside the
     * range}
     *
     * @param value value of the input, in its SI unit
     */
    double logDensity(double value);

    /**
     * {@return the quantile at a standard normal score: where the input stands z standard deviations off the median of
     * a normal law} Benches are learned in such scores, whatever the prior of an input.
     *
     * @param score z
     */
    default double atScore(double score) {
        return quantile(Normal.cumulative(score));
    }

    /**
     * {@return the quantile at one column of a point: of an input that depends on others, given their columns}
     *
     * @param u a point of the unit cube, one column for each prior
     * @param column column of this input
     */
    default double quantile(double[] u, int column) {
        return quantile(u[column]);
    }

    /** {@return whether {@link #quantile(double[], int)} reads other columns than its own} */
    default boolean isDependent() {
        return false;
    }

    /**
     * {@return the probability of a value below this one; by halving the quantile's range, to 1e-15, unless a prior has
     * a closed form}
     *
     * @param value value of the input, in its SI unit
     */
    default double cumulative(double value) {
        double low = 0;
        double high = 1;
        for (int pass = 0; pass < HALVINGS; pass++) {
            double middle = (low + high) / 2;
            if (quantile(middle) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low == 0 ? 0 : high == 1 ? 1 : (low + high) / 2;
    }

    /** {@return the 50 % point} */
    default double median() {
        return quantile(0.5);
    }
}
