package org.fizzhull.decide.why;

import org.fizzhull.evidence.Interval;

/** Normal distributions written as their median and 95 % interval. */
final class Normals {
    /** Half width of a 95 % interval, standard deviations. */
    private static final double Z95 = 1.959963984540054;

    private Normals() {}

    static Interval normal(double mean, double deviation) {
        return new Interval(mean, mean - Z95 * deviation, mean + Z95 * deviation);
    }

    /** One standard deviation of what is taken as normal. */
    static double deviation(Interval interval) {
        return (interval.high() - interval.low()) / (2 * Z95);
    }

    /** The same, with an independent error beside it. */
    static Interval widened(Interval interval, double deviation) {
        return normal(interval.median(), Math.hypot(deviation(interval), deviation));
    }

    /** Density at a value, per unit of the value. */
    static double density(double value, Interval normal) {
        double deviation = deviation(normal);
        double z = (value - normal.median()) / deviation;
        return Math.exp(-z * z / 2) / (deviation * Math.sqrt(2 * Math.PI));
    }

    /** The logarithm of what is spread by a factor, above 0; then normal. */
    static Interval logarithm(Interval interval) {
        return normal(Math.log(interval.median()), Math.log(interval.high() / interval.low()) / (2 * Z95));
    }

    /** A normal logarithm as what it is of. */
    static Interval exponential(Interval logarithm) {
        return new Interval(Math.exp(logarithm.median()), Math.exp(logarithm.low()), Math.exp(logarithm.high()));
    }
}
