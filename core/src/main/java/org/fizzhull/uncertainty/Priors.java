package org.fizzhull.uncertainty;

import org.fizzhull.numeric.Normal;

/**
 * The families of priors in use; each factory checks its arguments, NaN included, and throws {@link
 * IllegalArgumentException} for what is none. Which input has which prior, and why: {@code forecast.prior} and
 * docs/physics/uncertainty.md, 2. Stateless; the priors are immutable.
 */
public final class Priors {
    /** Of the normal density: half of ln(2 pi). */
    private static final double HALF_LOG_2_PI = 0.5 * Math.log(2 * Math.PI);

    /** Probability that a cut leaves out of account at either end. */
    private static final double REST = 1e-15;

    private Priors() {}

    /**
     * {@return the normal with a standard deviation; without one, the mean for {@linkplain #certain certain}}
     *
     * @param mean mean, in the unit of the input
     * @param deviation standard deviation, 0 or more
     * @throws IllegalArgumentException for a deviation below 0
     */
    public static Prior normal(double mean, double deviation) {
        require(Double.isFinite(mean) && deviation >= 0, "a normal prior", mean, deviation);
        return deviation == 0 ? new CertainPrior(mean) : new NormalPrior(mean, deviation);
    }

    /**
     * {@return the normal cut at physical limits, low &lt; mean &lt; high: the uniform number is mapped into the uncut
     * part, so that no probability is left outside} Its {@link Prior#median} is the mean of the uncut distribution,
     * which is its 50 % point only where the limits are even about it.
     *
     * @param mean mean of the uncut distribution
     * @param deviation standard deviation of the uncut distribution, above 0
     * @param low lower limit
     * @param high upper limit
     * @throws IllegalArgumentException for limits that do not enclose the mean, and a deviation not above 0
     */
    public static Prior cutNormal(double mean, double deviation, double low, double high) {
        require(low < mean && mean < high && deviation > 0, "a cut normal prior", mean, deviation);
        return cut(new NormalPrior(mean, deviation), low, high);
    }

    /**
     * {@return a prior cut at physical limits: the uniform number is mapped into the uncut part, so that no probability is
     * left outside; itself where all but 1e-15 of it lies inside} Its {@link Prior#median} is that of the uncut one where
     * the limits enclose it.
     *
     * @param old the uncut prior
     * @param low lower limit, in the unit of the input
     * @param high upper limit, above the lower one
     * @throws IllegalArgumentException for limits out of order, and where they leave less than 1e-15 of the prior
     */
    public static Prior cut(Prior old, double low, double high) {
        require(low < high, "limits of a prior", low, high);
        if (old.quantile(REST) >= low && old.quantile(1 - REST) <= high) {
            return old;
        }
        double lowP = old.cumulative(low);
        double highP = old.cumulative(high);
        require(highP - lowP > REST, "a prior that lies outside its limits", low, high);
        return new CutPrior(old, low, high, lowP, highP);
    }

    /**
     * {@return the lognormal with a median and a geometric standard deviation (x/÷ one sigma)}
     *
     * @param median median, above 0
     * @param deviation geometric standard deviation, 1 or more: 68 % of the draws lie within this factor of the median;
     *     at 1 it is the median for {@linkplain #certain certain}
     * @throws IllegalArgumentException for a median not above 0, and a deviation below 1
     */
    public static Prior lognormal(double median, double deviation) {
        require(median > 0 && deviation >= 1, "a lognormal prior", median, deviation);
        return deviation == 1 ? certain(median) : new LognormalPrior(median, Math.log(deviation));
    }

    /**
     * {@return one value, known exactly; all probability lies there, and {@link Prior#logDensity} is 0 at it and minus
     * infinity elsewhere}
     *
     * @param value the value, finite
     * @throws IllegalArgumentException for any other number
     */
    public static Prior certain(double value) {
        require(Double.isFinite(value), "a certain prior", value, 0);
        return new CertainPrior(value);
    }

    /**
     * {@return the rectangular between two limits; the one value for {@linkplain #certain certain} where they are equal}
     *
     * @param low lower limit
     * @param high upper limit
     * @throws IllegalArgumentException for limits out of order
     */
    public static Prior uniform(double low, double high) {
        require(low <= high, "a uniform prior", low, high);
        return low == high ? certain(low) : new UniformPrior(low, high);
    }

    /**
     * {@return the two rectangles that meet at the median: half the probability on each side}
     *
     * @param low lower limit
     * @param median median, strictly between the limits
     * @param high upper limit
     * @throws IllegalArgumentException where the median is not between the limits
     */
    public static Prior splitUniform(double low, double median, double high) {
        require(low < median && median < high, "a split uniform prior", low, high);
        return new SplitUniformPrior(low, median, high);
    }

    /** Natural logarithm of the standard normal density. */
    private static double logNormal(double z) {
        return -0.5 * z * z - HALF_LOG_2_PI;
    }

    /** Refuses arguments that are no prior. */
    private static void require(boolean good, String what, double a, double b) {
        if (!good) {
            throw new IllegalArgumentException(what + " cannot have " + a + ", " + b);
        }
    }

    /** The normal. */
    private record NormalPrior(double mean, double deviation) implements Prior {
        @Override
        public double quantile(double u) {
            return mean + deviation * Normal.quantile(u);
        }

        @Override
        public double atScore(double score) {
            return mean + deviation * score;
        }

        @Override
        public double cumulative(double value) {
            return Normal.cumulative((value - mean) / deviation);
        }

        @Override
        public double logDensity(double value) {
            return logNormal((value - mean) / deviation) - Math.log(deviation);
        }
    }

    /** A prior between two limits; {@code lowP} and {@code highP} are the uncut one's probabilities below them. */
    private record CutPrior(Prior old, double low, double high, double lowP, double highP) implements Prior {
        @Override
        public double quantile(double u) {
            // rounding may leave the limits
            return Math.max(low, Math.min(high, old.quantile(lowP + u * (highP - lowP))));
        }

        @Override
        public double cumulative(double value) {
            // probability in the uncut prior, stretched to the part that is left
            return Math.max(0, Math.min(1, (old.cumulative(value) - lowP) / (highP - lowP)));
        }

        @Override
        public double logDensity(double value) {
            return value < low || value > high
                    ? Double.NEGATIVE_INFINITY
                    : old.logDensity(value) - Math.log(highP - lowP);
        }

        @Override
        public double median() {
            double median = old.median();
            return median >= low && median <= high ? median : quantile(0.5);
        }
    }

    /** The lognormal; {@code sigma} is ln of the geometric deviation. */
    private record LognormalPrior(double middle, double sigma) implements Prior {
        @Override
        public double quantile(double u) {
            return middle * Math.exp(sigma * Normal.quantile(u));
        }

        @Override
        public double atScore(double score) {
            return middle * Math.exp(sigma * score);
        }

        @Override
        public double cumulative(double value) {
            return value > 0 ? Normal.cumulative(Math.log(value / middle) / sigma) : 0;
        }

        @Override
        public double logDensity(double value) {
            return value > 0
                    ? logNormal(Math.log(value / middle) / sigma) - Math.log(sigma * value)
                    : Double.NEGATIVE_INFINITY;
        }
    }

    /** One value. */
    private record CertainPrior(double value) implements Prior {
        @Override
        public double quantile(double u) {
            return value;
        }

        @Override
        public double cumulative(double other) {
            return other > value ? 1 : 0;
        }

        @Override
        public double logDensity(double other) {
            return other == value ? 0 : Double.NEGATIVE_INFINITY;
        }
    }

    /** The rectangular. */
    private record UniformPrior(double low, double high) implements Prior {
        @Override
        public double quantile(double u) {
            return low + u * (high - low);
        }

        @Override
        public double cumulative(double value) {
            return value <= low ? 0 : value > high ? 1 : (value - low) / (high - low);
        }

        @Override
        public double logDensity(double value) {
            return value >= low && value <= high ? -Math.log(high - low) : Double.NEGATIVE_INFINITY;
        }
    }

    /** Two rectangles. */
    private record SplitUniformPrior(double low, double middle, double high) implements Prior {
        @Override
        public double quantile(double u) {
            return u < 0.5 ? low + 2 * u * (middle - low) : middle + (2 * u - 1) * (high - middle);
        }

        @Override
        public double logDensity(double value) {
            if (!(value >= low && value <= high)) {
                return Double.NEGATIVE_INFINITY;
            }
            return -Math.log(2 * (value < middle ? middle - low : high - middle));
        }
    }
}
