package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.evidence.Interval;

/**
 * Weighings of pieces of one batch while they dry: the measurements that {@code DryPredictor.with(log)} takes.
 *
 * <p>Only differences between weighings of one piece count, so that pieces may differ in weight. What the log does to
 * the draws: {@link Fit}. Immutable.
 *
 * @param pieces one or more
 */
public record DryLog(List<Series> pieces) implements Serializable {
    /** Time of pressing to the last weighing at most, s: 30 years. */
    private static final double LONGEST = 1e9;

    /** Most weighings of one piece. */
    private static final int MOST = 100;

    /**
     * Copies the list; refuses an empty one.
     *
     * @param pieces one or more
     * @throws IllegalArgumentException for no piece
     */
    public DryLog {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("a drying log needs a piece");
        }
    }

    /** {@return the time of the last weighing, s from pressing} */
    public double end() {
        double end = 0;
        for (Series piece : pieces) {
            end = Math.max(end, piece.times().get(piece.times().size() - 1));
        }
        return end;
    }

    /**
     * {@return the most that a piece weighs over its own lightest earlier weighing, kg; 0 or less where none gains
     * weight}
     */
    public double gain() {
        double most = Double.NEGATIVE_INFINITY;
        for (Series piece : pieces) {
            double lightest = Double.POSITIVE_INFINITY;
            for (double weight : piece.weights()) {
                most = Math.max(most, weight - lightest);
                lightest = Math.min(lightest, weight);
            }
        }
        return most;
    }

    /** {@return whether a piece takes up more than two standard uncertainties of its scale: it gains weight} */
    public boolean gains() {
        return gain() > 2 * scale();
    }

    /** {@return the largest standard uncertainty of a weighing, kg} */
    public double scale() {
        double scale = 0;
        for (Series piece : pieces) {
            scale = Math.max(scale, piece.scale());
        }
        return scale;
    }

    /**
     * The weighings of one piece.
     *
     * @param name of the piece
     * @param times from pressing, s, rising, 0 or more; 2 to 100
     * @param weights of the whole piece, kg
     * @param scale standard uncertainty of one weighing, kg
     */
    public record Series(String name, List<Double> times, List<Double> weights, double scale) implements Serializable {
        /**
         * Copies the lists; refuses what is no log.
         *
         * @param name of the piece
         * @param times from pressing, s, rising, 0 or more; 2 to 100
         * @param weights of the whole piece, kg
         * @param scale standard uncertainty of one weighing, kg
         * @throws IllegalArgumentException for fewer than 2 or more than 100 weighings, times that do not rise, or what
         *     is no weight
         */
        public Series {
            times = List.copyOf(times);
            weights = List.copyOf(weights);
            int n = times.size();
            if (n < 2 || n > MOST || weights.size() != n || !(scale > 0)) {
                throw new IllegalArgumentException(
                        "a drying log needs 2 to 100 weighings of a piece and the scale's uncertainty");
            }
            for (int i = 0; i < n; i++) {
                boolean rising = i == 0 ? times.get(0) >= 0 : times.get(i) > times.get(i - 1);
                if (!(rising && times.get(i) < LONGEST && weights.get(i) > 0 && weights.get(i) < 1e3)) {
                    throw new IllegalArgumentException(
                            "weighing " + (i + 1) + " of piece " + name + " is out of order or not a weight");
                }
            }
        }
    }

    /**
     * What weighings say of the draws of a drying forecast, by Bayes' rule: each draw counts by how well its course meets
     * them.
     *
     * <p>With w_i the weight at time t_i, l_i the mass that the draw has lost by then (both kg) and the piece's own weight
     * left free, the logarithm of a draw's weight is
     *
     * <pre>-1/2 sum_i ((w_i + l_i - mean) / s_i)^2,    s_i^2 = scale^2 + (0.1 (w_0 - w_i))^2</pre>
     *
     * where mean is that of w_i + l_i over s_i^2. Only differences between weighings count. A tenth of what has left is the
     * model's own error [assumed]: amounts of liquid in one piece differ, and the course is computed to some per cent.
     *
     * @param stillToGo water that has to leave after the last weighing until it is ready, kg; 0 where it is
     * @param misfit root mean square of the best draw's deviations over s_i; above 2 no draw is like this piece
     * @param effective number of equally weighted draws that say as much: 1 / sum of the squared shares
     */
    public record Fit(Interval stillToGo, double misfit, double effective) {
        /** The model's own error, as a part of what has left since the first weighing. */
        private static final double MODEL_ERROR = 0.1;

        /** Misfit above which the weighings are not of this course. */
        private static final double MOST_MISFIT = 2;

        /** {@return whether the weighings follow this recipe's course in this room} */
        public boolean fits() {
            return misfit <= MOST_MISFIT;
        }

        /**
         * {@return what a piece has lost by each of its weighings, kg}
         *
         * @param course course of a draw
         * @param piece weights and times of one piece
         * @param ratio volume of the draw's mould over the entered one
         */
        public static double[] lost(DryingCourse course, DryLog.Series piece, double ratio) {
            return piece.times().stream()
                    .mapToDouble(time -> course.at(Math.min(time, course.end())).mass())
                    .map(mass -> (course.dampMass() - mass) * ratio)
                    .toArray();
        }

        /**
         * {@return the sum of the squared deviations of a draw from one piece's weighings, over their uncertainties}
         *
         * @param piece weights and times of one piece
         * @param lost mass the draw has lost by each of those times, kg
         */
        public static double deviation(DryLog.Series piece, double[] lost) {
            int n = lost.length;
            double first = piece.weights().get(0);
            double sum = 0;
            double mean = 0;
            double squares = 0;
            for (int i = 0; i < n; i++) {
                double weight = piece.weights().get(i);
                double error = MODEL_ERROR * (first - weight);
                double certainty = 1 / (piece.scale() * piece.scale() + error * error);
                double off = weight + lost[i];
                // the weighted mean and the sum of squares around it in one pass: D. H. D. West (1979), Commun. ACM 22,
                // 532
                sum += certainty;
                double before = off - mean;
                mean += before * certainty / sum;
                squares += certainty * before * (off - mean);
            }
            return squares;
        }
    }
}
