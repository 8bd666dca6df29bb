package org.fizzhull.decide.why;

import org.fizzhull.evidence.Interval;
import org.fizzhull.numeric.Normal;

/**
 * Normal distributions written as their median and 95 % interval, the form in which forecasts come. Log-normal ones are
 * handled by {@link #logarithm} and {@link #exponential}.
 */
final class Normals {
    /** Half width of a 95 % interval, standard deviations. */
    private static final double Z95 = Normal.Z_975;

    private Normals() {}

    /** {@return a normal distribution by mean and standard deviation} */
    static Interval normal(double mean, double deviation) {
        return new Interval(mean, mean - Z95 * deviation, mean + Z95 * deviation);
    }

    /** {@return one standard deviation of an interval that is taken as normal} */
    static double deviation(Interval interval) {
        return (interval.high() - interval.low()) / (2 * Z95);
    }

    /** {@return the same with an independent error added; standard deviations add as squares} */
    static Interval widened(Interval interval, double deviation) {
        return normal(interval.median(), Math.hypot(deviation(interval), deviation));
    }

    /** {@return the density at a value, per unit of the value} */
    static double density(double value, Interval normal) {
        double deviation = deviation(normal);
        return density((value - normal.median()) / deviation) / deviation;
    }

    /** {@return the density of the standard normal distribution} */
    static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    /** {@return the normal distribution of the logarithm of what is spread by a factor, above 0} */
    static Interval logarithm(Interval interval) {
        return normal(Math.log(interval.median()), Math.log(interval.high() / interval.low()) / (2 * Z95));
    }

    /** {@return the log-normal distribution whose logarithm is this one} */
    static Interval exponential(Interval logarithm) {
        return new Interval(Math.exp(logarithm.median()), Math.exp(logarithm.low()), Math.exp(logarithm.high()));
    }
}
