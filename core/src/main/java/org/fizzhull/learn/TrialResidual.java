package org.fizzhull.learn;

import java.util.function.ToDoubleFunction;
import org.fizzhull.forecast.measured.DroppedPiece;

/**
 * One thing that a trial showed, as a residual r whose likelihood is exp(-r^2/2).
 *
 * <p>Of a measured value r is its distance from the predicted one over the deviation; of a result sqrt(-2 ln P), with P the
 * chance of that result by the predicted spare lift and its deviation, between 1 % and 99 % so that one slip of the pen decides
 * nothing. One instance serves one thread.
 */
final class TrialResidual {
    /** Largest residual: larger ones are cut, so that a poor starting point stays finite. */
    private static final double FARTHEST = 20;

    /** Column of the sheet, for messages. */
    private final String what;
    /** Whether it is the result and not a measured value. */
    private final boolean result;
    /** The measured value, in its SI unit; of a result 1 for floated, -1 for not. */
    private final double observed;
    /** Standard deviation without the errors of the piece's own, in the same unit; of a result in kg of spare lift. */
    private final double measurement;
    /** Predicted value from the inputs of the trial; of a result the spare lift, kg. */
    private final ToDoubleFunction<double[]> model;
    /** Standard deviation with the errors of the piece's own. */
    private double deviation;

    private TrialResidual(
            String what, boolean result, double observed, double measurement, ToDoubleFunction<double[]> model) {
        this.what = what;
        this.result = result;
        this.observed = observed;
        this.measurement = measurement;
        this.model = model;
        deviation = measurement;
    }

    /** {@return a measured value with its standard deviation, both in its SI unit} */
    static TrialResidual value(String what, double observed, double deviation, ToDoubleFunction<double[]> model) {
        return new TrialResidual(what, false, observed, deviation, model);
    }

    /** {@return whether it floated, by its predicted spare lift and the deviation of that from piece to piece, kg} */
    static TrialResidual result(boolean floated, double deviation, ToDoubleFunction<double[]> spare) {
        return new TrialResidual("result", true, floated ? 1 : -1, deviation, spare);
    }

    String what() {
        return what;
    }

    boolean isResult() {
        return result;
    }

    double observed() {
        return observed;
    }

    double deviation() {
        return deviation;
    }

    /** What the inputs make of it. */
    double predicted(double[] inputs) {
        return model.applyAsDouble(inputs);
    }

    /**
     * Takes the errors that this piece has of its own into the deviation: each input of its own is moved by one standard
     * deviation, and the changes add as squares.
     *
     * @param inputs inputs of the trial; left as they were
     * @param columns indices of the inputs of its own
     * @param own one standard deviation of each of these
     */
    void takeOwn(double[] inputs, int[] columns, double[] own) {
        double here = predicted(inputs);
        double variance = measurement * measurement;
        for (int k = 0; k < columns.length; k++) {
            double kept = inputs[columns[k]];
            inputs[columns[k]] = kept + own[k];
            double moved = predicted(inputs) - here;
            inputs[columns[k]] = kept;
            // a prediction that cannot be made at the moved input counts for nothing
            variance += Math.abs(moved) < Double.POSITIVE_INFINITY ? moved * moved : 0;
        }
        deviation = Math.sqrt(variance);
    }

    /** {@return the chance that a result is what it was, at a predicted spare lift, kg} */
    double chance(double predicted) {
        return DroppedPiece.chance(observed > 0, predicted, deviation);
    }

    /** {@return r at the inputs of the trial; a prediction that cannot be made counts as farthest off} */
    double residual(double[] inputs) {
        double predicted = predicted(inputs);
        if (Double.isNaN(predicted)) {
            return FARTHEST;
        }
        if (result) {
            return Math.sqrt(-2 * Math.log(chance(predicted)));
        }
        return Math.max(-FARTHEST, Math.min(FARTHEST, (observed - predicted) / deviation));
    }
}
