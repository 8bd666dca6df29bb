package org.fizzhull.learn;

import java.util.function.ToDoubleFunction;
import org.fizzhull.uncertainty.Normal;

/**
 * One thing that a trial showed, as a residual r whose likelihood is exp(-r^2/2): of a measured value its distance from the
 * predicted one over the deviation; of a result sqrt(-2 ln P), with P the chance of that result by the predicted spare and
 * its deviation, between 1 % and 99 % so that one slip of the pen decides nothing. One instance serves one thread.
 */
final class Sign {
    /** Farther off nothing is told apart; keeps a wild start finite. */
    private static final double FARTHEST = 20;

    private static final double SLIP = 0.01;

    private final String what;
    private final boolean result;
    private final double observed;
    private final double measurement;
    private final ToDoubleFunction<double[]> model;
    private double deviation;

    private Sign(String what, boolean result, double observed, double measurement, ToDoubleFunction<double[]> model) {
        this.what = what;
        this.result = result;
        this.observed = observed;
        this.measurement = measurement;
        this.model = model;
        deviation = measurement;
    }

    /** A measured value with its deviation. */
    static Sign value(String what, double observed, double deviation, ToDoubleFunction<double[]> model) {
        return new Sign(what, false, observed, deviation, model);
    }

    /** Whether it floated, by its spare with the deviation from piece to piece. */
    static Sign result(boolean floated, double deviation, ToDoubleFunction<double[]> spare) {
        return new Sign("result", true, floated ? 1 : -1, deviation, spare);
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
     * Takes the errors that this piece has of its own into the deviation.
     *
     * @param own one standard deviation step of each input of its own
     * @param columns where they stand
     */
    void takeOwn(double[] inputs, int[] columns, double[] own) {
        double here = predicted(inputs);
        double variance = measurement * measurement;
        for (int k = 0; k < columns.length; k++) {
            double kept = inputs[columns[k]];
            inputs[columns[k]] = kept + own[k];
            double moved = predicted(inputs) - here;
            inputs[columns[k]] = kept;
            variance += Math.abs(moved) < Double.POSITIVE_INFINITY ? moved * moved : 0;
        }
        deviation = Math.sqrt(variance);
    }

    /** The chance that it shows what it showed; of a result. */
    double chance(double predicted) {
        return SLIP + (1 - 2 * SLIP) * Normal.cumulative(observed * predicted / deviation);
    }

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
