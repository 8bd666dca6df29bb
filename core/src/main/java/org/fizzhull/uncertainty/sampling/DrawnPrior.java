package org.fizzhull.uncertainty.sampling;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.uncertainty.Prior;

/**
 * What is believed of an input as draws of it: the quantile function runs straight from one sorted draw to the next, and nothing
 * lies outside of them. The density at x is that of the draws around it,
 * <pre>  p(x) = (u2 - u1)/(F^-1(u2) - F^-1(u1)),   u1, u2 = F(x) - h, F(x) + h within 0 and 1,</pre>
 * with h = 0.05, so that its error is some 20 % with a thousand draws. Immutable.
 *
 * @param sorted the draws, ascending, two or more that differ
 */
public record DrawnPrior(List<Double> sorted) implements Prior {
    /** h: probability on each side over which the density is taken. */
    private static final double SIDE = 0.05;

    /**
     * Copies the draws.
     *
     * @param sorted the draws, ascending, two or more that differ
     * @throws IllegalArgumentException for draws that are out of order or all the same
     */
    public DrawnPrior {
        sorted = List.copyOf(sorted);
        for (int i = 1; i < sorted.size(); i++) {
            if (!(sorted.get(i - 1) <= sorted.get(i))) {
                throw new IllegalArgumentException("draws in ascending order, not " + sorted.get(i) + " at " + i);
            }
        }
        if (sorted.size() < 2 || sorted.get(0).equals(sorted.get(sorted.size() - 1))) {
            throw new IllegalArgumentException("two draws or more that differ");
        }
    }

    /**
     * {@return the prior of draws in any order}
     *
     * @param draws values in the SI unit of the input, two or more that differ
     */
    public static DrawnPrior of(double[] draws) {
        return new DrawnPrior(Arrays.stream(draws).sorted().boxed().toList());
    }

    @Override
    public double quantile(double u) {
        double place = u * (sorted.size() - 1);
        int below = (int) Math.min(sorted.size() - 2.0, Math.floor(place));
        double share = place - below;
        return (1 - share) * sorted.get(below) + share * sorted.get(below + 1);
    }

    @Override
    public double logDensity(double value) {
        if (!(value >= sorted.get(0) && value <= sorted.get(sorted.size() - 1))) {
            return Double.NEGATIVE_INFINITY;
        }
        double u = cumulative(value);
        double low = Math.max(0, u - SIDE);
        double high = Math.min(1, u + SIDE);
        double width = quantile(high) - quantile(low);
        // draws that stand on one value: as dense as they can be told apart
        return Math.log(high - low) - Math.log(Math.max(width, Math.ulp(value)));
    }
}
