package org.fizzhull.uncertainty.sampling;

import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Prior;

/**
 * A prior after something was learned: where a value x of the old one has the normal score z = Phi^-1(F(x)), z is
 * normal with a mean m and a deviation s in place of 0 and 1,
 * <pre>
 *   F_new(x) = Phi((z - m)/s),   ln p_new(x) = ln p_old(x) + z^2/2 - ((z - m)/s)^2/2 - ln s
 * </pre>
 * Phi the standard normal distribution function, F and p those of the old prior. So it never leaves the range of the
 * old one. Scores beyond 8 count as 8: the old prior's last 1e-15 of probability at each end. Immutable. Made by {@code
 * learn} from the trials of a bench.
 *
 * @param old what was believed before
 * @param mean m of the score
 * @param deviation s of the score, above 0
 */
public record ShiftedPrior(Prior old, double mean, double deviation) implements Prior {
    /** Probability that a score so far out leaves beyond it. */
    private static final double END = 1e-15;

    /**
     * Refuses a deviation that is not above 0, and what is not finite.
     *
     * @param old what was believed before
     * @param mean m of the score
     * @param deviation s of the score, above 0
     * @throws IllegalArgumentException for such
     */
    public ShiftedPrior {
        Given.all("old", old);
        if (!(deviation > 0 && Double.isFinite(deviation) && Double.isFinite(mean))) {
            throw new IllegalArgumentException("a normal score, not " + mean + " +- " + deviation);
        }
    }

    @Override
    public double quantile(double u) {
        return old.quantile(inside(Normal.cumulative(mean + deviation * Normal.quantile(u))));
    }

    @Override
    public double cumulative(double value) {
        return Normal.cumulative((score(value) - mean) / deviation);
    }

    @Override
    public double logDensity(double value) {
        double before = old.logDensity(value);
        if (before == Double.NEGATIVE_INFINITY) {
            return before;
        }
        double z = score(value);
        double e = (z - mean) / deviation;
        return before + 0.5 * (z * z - e * e) - Math.log(deviation);
    }

    /** Normal score of a value by the old prior, at most 8 to both sides. */
    private double score(double value) {
        return Normal.quantile(inside(old.cumulative(value)));
    }

    /** A probability kept off 0 and 1. */
    private static double inside(double u) {
        return Math.max(END, Math.min(1 - END, u));
    }
}
