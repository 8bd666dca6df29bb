package org.fizzhull.quantity;

import java.util.Objects;

/**
 * A quantity in SI with the spread the person gave it: none, {@code 138 g +- 4 g}, or {@code 4 to 8 g}.
 * <pre>{@code
 * Amount mass = QuantityText.parse("mass", "138 g +- 4 g", Dimension.MASS);
 * double kilograms = mass.value();   // 0.138; mass.standardDeviation() is 0.004
 * }</pre>
 *
 * <p>A {@code +-} is one standard deviation of a normal distribution (JCGM 101:2008, 6.4.7); a range is rectangular,
 * every value in it as likely as another (6.4.2), with standard deviation (b - a)/sqrt 12. Immutable, safe for use by
 * several threads.
 */
public final class Amount {
    /** How the value is spread. */
    public enum Spread {
        /** One value. */
        NONE,
        /** Mean and standard deviation. */
        NORMAL,
        /** Anything between two ends. */
        RECTANGULAR
    }

    /** 97.5 % point of the standard normal distribution. */
    private static final double Z_975 = 1.959963984540054;

    /** Width of a rectangular distribution over its standard deviation. */
    private static final double SQRT_12 = Math.sqrt(12);

    /** What it measures. */
    private final Dimension dimension;
    /** How it is spread. */
    private final Spread spread;
    /** The value, the mean, or the middle of the range, SI. */
    private final double value;
    /** One standard deviation, SI. */
    private final double deviation;
    /** Lower end, or 2.5 % point, SI. */
    private final double low;
    /** Upper end, or 97.5 % point, SI. */
    private final double high;
    /** One of the last place written, SI; 0 where it was not read from a text. */
    private final double step;

    /** Checks what every amount must keep. */
    private Amount(
            Dimension dimension, Spread spread, double value, double deviation, double low, double high, double step) {
        if (!(Double.isFinite(value) && Double.isFinite(high - low) && deviation >= 0 && low <= high)) {
            throw new IllegalArgumentException("an amount is finite, its ends in order, its deviation 0 or more: "
                    + value + " +- " + deviation + ", " + low + " to " + high);
        }
        this.dimension = Objects.requireNonNull(dimension, "dimension");
        this.spread = spread;
        this.value = value;
        this.deviation = deviation;
        this.low = low;
        this.high = high;
        this.step = step;
    }

    /**
     * {@return one value without spread, SI}
     *
     * @param dimension what it measures
     * @param value SI
     * @throws IllegalArgumentException for NaN and infinities
     */
    public static Amount exact(Dimension dimension, double value) {
        double plain = value + 0.0; // no negative zero
        return new Amount(dimension, Spread.NONE, plain, 0, plain, plain, 0);
    }

    /**
     * {@return a normal spread}
     *
     * @param dimension what it measures
     * @param mean SI
     * @param deviation one standard deviation, SI, for temperatures a difference in K; 0 gives {@link #exact}
     * @throws IllegalArgumentException for a negative deviation, NaN and infinities
     */
    public static Amount normal(Dimension dimension, double mean, double deviation) {
        if (deviation == 0) {
            return exact(dimension, mean);
        }
        double reach = Z_975 * deviation;
        return new Amount(dimension, Spread.NORMAL, mean + 0.0, deviation, mean - reach, mean + reach, 0);
    }

    /**
     * {@return every value from {@code low} to {@code high}, SI, equally likely; equal ends give {@link #exact}}
     *
     * @param dimension what it measures
     * @param low lower end, SI
     * @param high upper end, SI, not below {@code low}
     * @throws IllegalArgumentException for ends out of order, NaN and infinities
     */
    public static Amount between(Dimension dimension, double low, double high) {
        if (low == high) {
            return exact(dimension, low);
        }
        double middle = low + (high - low) / 2;
        return new Amount(dimension, Spread.RECTANGULAR, middle, (high - low) / SQRT_12, low + 0.0, high + 0.0, 0);
    }

    /** The same, written with digits down to a step, SI. */
    Amount written(double lastPlace) {
        return new Amount(dimension, spread, value, deviation, low, high, lastPlace);
    }

    /**
     * {@return one of the last place of the value as it was written, SI: 0.001 of 138 g; 0 where it was not read from a
     * text}
     */
    public double step() {
        return step;
    }

    /** {@return what it measures} */
    public Dimension dimension() {
        return dimension;
    }

    /** {@return how it is spread} */
    public Spread spread() {
        return spread;
    }

    /** {@return whether it is one value} */
    public boolean isExact() {
        return spread == Spread.NONE;
    }

    /** {@return the value, the mean, or the middle of the range, SI} */
    public double value() {
        return value;
    }

    /** {@return one standard deviation, SI; 0 without spread} */
    public double standardDeviation() {
        return deviation;
    }

    /** {@return the lower end of a range, the 2.5 % point of a normal spread, else the value; SI} */
    public double low() {
        return low;
    }

    /** {@return the upper end of a range, the 97.5 % point of a normal spread, else the value; SI} */
    public double high() {
        return high;
    }

    /** Equal are amounts of the same SI numbers, however they were written: {@link #step} does not count. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Amount that
                && dimension == that.dimension
                && spread == that.spread
                && value == that.value
                && deviation == that.deviation
                && low == that.low
                && high == that.high;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * dimension.hashCode() + Double.hashCode(value)) + Double.hashCode(high);
    }

    /** For debugging: the SI numbers. */
    @Override
    public String toString() {
        return dimension + " " + spread + " " + value + " [" + low + ", " + high + "]";
    }
}
