package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.List;

/**
 * Weighings of pieces of one batch while they dry: what a {@code DryPredictor} is told with {@code with(log)}.
 *
 * <p>Only differences between weighings of one piece count, so that pieces may differ in weight. What the log does to
 * the draws: {@link DryLogFit}. Immutable.
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
}
