package org.fizzhull.uncertainty.sampling;

import java.util.Objects;
import org.fizzhull.uncertainty.Prior;

/**
 * A prior whose every value is k times as large: x = k F^-1(u), ln p(x) = ln p_old(x/k) - ln k. Immutable.
 *
 * @param old the prior of the values before
 * @param factor k, above 0
 */
public record ScaledPrior(Prior old, double factor) implements Prior {
    /**
     * Refuses a factor that is not above 0.
     *
     * @param old the prior of the values before
     * @param factor k, above 0
     * @throws IllegalArgumentException for such
     */
    public ScaledPrior {
        Objects.requireNonNull(old, "old");
        if (!(factor > 0 && Double.isFinite(factor))) {
            throw new IllegalArgumentException("a factor above 0, not " + factor);
        }
    }

    @Override
    public double quantile(double u) {
        return factor * old.quantile(u);
    }

    @Override
    public double cumulative(double value) {
        return old.cumulative(value / factor);
    }

    @Override
    public double logDensity(double value) {
        return old.logDensity(value / factor) - Math.log(factor);
    }
}
