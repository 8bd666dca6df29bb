package org.fizzhull.evidence;

import java.io.Serializable;

/**
 * An uncertain number: median and the probabilistically symmetric 95 % coverage interval (JCGM 101:2008, 7.7), all in
 * the unit the owner names. What an interval covers, and what it does not: docs/physics/uncertainty.md, 5. Immutable.
 *
 * @param median 50 % point
 * @param low 2.5 % point
 * @param high 97.5 % point
 */
public record Interval(double median, double low, double high) implements Serializable {
    /**
     * Refuses NaN, infinities and points out of order.
     *
     * @param median 50 % point
     * @param low 2.5 % point
     * @param high 97.5 % point
     * @throws IllegalArgumentException for such
     */
    public Interval {
        if (!(low <= median && median <= high && Double.isFinite(low) && Double.isFinite(high))) {
            throw new IllegalArgumentException("interval points out of order: " + low + ", " + median + ", " + high);
        }
    }

    /**
     * {@return a number without spread}
     *
     * @param value the number, which stands for median and both ends
     */
    public static Interval certain(double value) {
        return new Interval(value, value, value);
    }

    /**
     * {@return the same interval in another unit}
     *
     * @param positiveFactor units of the new kind in one of the old, above 0 and finite
     * @throws IllegalArgumentException for a factor that is not positive and finite
     */
    public Interval times(double positiveFactor) {
        if (!(positiveFactor > 0 && positiveFactor <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a factor between units is positive: " + positiveFactor);
        }
        return new Interval(median * positiveFactor, low * positiveFactor, high * positiveFactor);
    }
}
