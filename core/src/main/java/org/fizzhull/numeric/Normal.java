package org.fizzhull.numeric;

/**
 * The standard normal distribution: its cumulative distribution function and its quantile.
 *
 * <p>Written here because a cold start of the general library's distribution costs a quarter of a short command; the
 * tests hold both against that library. Stateless.
 */
public final class Normal {
    /** The 97.5 % point: 95 % of the draws lie within so many standard deviations of the mean. */
    public static final double Z_975 = 1.959963984540054;

    /** Numerator of the rational function for |p - 1/2| up to 0.425, highest power first. */
    private static final double[] CENTRAL_TOP = {
        2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
        13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608
    };

    /** Its denominator. */
    private static final double[] CENTRAL_BOTTOM = {
        5226.495278852545925,
        28729.085735721942674,
        39307.89580009271061,
        21213.794301586595867,
        5394.1960214247511077,
        687.1870074920579083,
        42.313330701600911252,
        1
    };

    /** Numerator for sqrt(-ln p) from 1.6 to 5. */
    private static final double[] MIDDLE_TOP = {
        7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
        3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734
    };

    /** Its denominator. */
    private static final double[] MIDDLE_BOTTOM = {
        1.05075007164441684324e-9,
        5.475938084995344946e-4,
        0.0151986665636164571966,
        0.14810397642748007459,
        0.68976733498510000455,
        1.6763848301838038494,
        2.05319162663775882187,
        1
    };

    /** Numerator beyond. */
    private static final double[] TAIL_TOP = {
        2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
        0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772
    };

    /** Its denominator. */
    private static final double[] TAIL_BOTTOM = {
        2.04426310338993978564e-15,
        1.4215117583164458887e-7,
        1.8463183175100546818e-5,
        7.868691311456132591e-4,
        0.0148753612908506148525,
        0.13692988092273580531,
        0.59983220655588793769,
        1
    };

    private Normal() {}

    /**
     * {@return the quantile: M. J. Wichura, Algorithm AS 241, Appl. Stat. 37 (1988) 477, routine PPND16 (coefficients
     * from memory, checked against a reference library)} Relative error about 1e-15.
     *
     * @param p probability, 0 &lt; p &lt; 1
     * @throws IllegalArgumentException for any other number, NaN included
     */
    public static double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a probability between 0 and 1 is needed, not " + p);
        }
        // rational functions of (p - 1/2)^2 in the middle, of sqrt(-ln p) in the tails
        double q = p - 0.5;
        if (Math.abs(q) <= 0.425) {
            double r = 0.180625 - q * q;
            return q * polynomial(CENTRAL_TOP, r) / polynomial(CENTRAL_BOTTOM, r);
        }
        double r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
        double z = r <= 5
                ? polynomial(MIDDLE_TOP, r - 1.6) / polynomial(MIDDLE_BOTTOM, r - 1.6)
                : polynomial(TAIL_TOP, r - 5) / polynomial(TAIL_BOTTOM, r - 5);
        return q < 0 ? -z : z;
    }

    /** Horner's scheme, coefficients from the highest power down. */
    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double coefficient : coefficients) {
            sum = sum * x + coefficient;
        }
        return sum;
    }

    /**
     * {@return the cumulative distribution function: I. D. Hill, Algorithm AS 66, Appl. Stat. 22 (1973) 424
     * (coefficients from memory, checked against a reference library)} Absolute error below 1e-9; 0 or 1 beyond 38
     * standard deviations.
     *
     * @param z any number, in standard deviations from the mean
     */
    public static double cumulative(double z) {
        // the upper tail by continued fractions, from their last term up
        double a = Math.abs(z);
        double y = 0.5 * a * a;
        double upper = 0;
        if (a <= 1.28) {
            double rest = y + 5.92885724438;
            rest = y + 2.62433121679 + 48.6959930692 / rest;
            rest = y + 5.75885480458 - 29.8213557808 / rest;
            upper = 0.5 - a * (0.398942280444 - 0.399903438504 * y / rest);
        } else if (a < 38) {
            double rest = a + 3.99019417011;
            rest = a + 0.742380924027 + 30.789933034 / rest;
            rest = a + 4.8385912808 - 15.1508972451 / rest;
            rest = a - 0.151679116635 + 5.29330324926 / rest;
            rest = a + 3.98064794e-4 + 1.98615381364 / rest;
            rest = a - 3.8052e-8 + 1.00000615302 / rest;
            upper = 0.398942280385 * Math.exp(-y) / rest;
        }
        return z > 0 ? 1 - upper : upper;
    }
}
