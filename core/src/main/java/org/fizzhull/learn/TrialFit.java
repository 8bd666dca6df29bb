package org.fizzhull.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.fizzhull.forecast.measured.BathResult;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.sampling.Statistics;

/**
 * How a trial that was used lies in what the finished bench expects of it: its result by the chance of that result, each
 * measured value x by
 * <pre>  (x - m)/sqrt(s^2 + e^2),</pre>
 * m mean and s standard deviation of what the draws of the bench make of it, e the error of the measurement with what this
 * piece has of its own. The trial itself is one of those the bench was learned from, so that it lies a little nearer than a
 * new one would. Immutable.
 *
 * @param name name of the trial, such as its row
 * @param shape its mould, as stated
 * @param mass weight in the bath, kg; empty where only a fill was weighed
 * @param result what the piece did
 * @param chance chance that the bench gives this result, 0 to 1
 * @param signs measured values, in the order of the sheet's columns as the learner reads them
 */
public record TrialFit(
        String name, Shape shape, OptionalDouble mass, BathResult result, double chance, List<Sign> signs) {
    /** A result of less chance than this counts as outside. */
    private static final double RARE = 0.05;

    /**
     * Copies the list.
     *
     * @param name name of the trial, such as its row
     * @param shape its mould, as stated
     * @param mass weight in the bath, kg; empty where only a fill was weighed
     * @param result what the piece did
     * @param chance chance that the bench gives this result, 0 to 1
     * @param signs measured values
     */
    public TrialFit {
        Given.all("name, shape, mass, result, signs", name, shape, mass, result, signs);
        signs = List.copyOf(signs);
    }

    /** {@return whether every measured value lies inside its 95 % interval, and the result has a chance of 5 % or more} */
    public boolean inside() {
        return chance >= RARE && signs.stream().allMatch(Sign::inside);
    }

    /**
     * A measured value.
     *
     * @param column its column in a trials sheet, such as {@code lift_g}
     * @param off how far it lies above what was expected, standard deviations; negative below
     */
    public record Sign(String column, double off) {
        /** {@return whether it lies inside the 95 % interval of what was expected} */
        public boolean inside() {
            return Math.abs(off) <= Normal.Z_975;
        }
    }

    /**
     * Of a trial, by whole draws of the bench.
     *
     * @param values inputs in their own units from a draw
     */
    static TrialFit of(TrialModel model, double[][] draws, UnaryOperator<double[]> values) {
        List<TrialResidual> signs = model.signs();
        // predictions of each sign, draw by draw
        double[][] predicted = new double[signs.size()][draws.length];
        for (int i = 0; i < draws.length; i++) {
            double[] each = model.predicted(values.apply(draws[i]));
            for (int k = 0; k < each.length; k++) {
                predicted[k][i] = each[k];
            }
        }
        double chance = 1;
        List<Sign> off = new ArrayList<>();
        for (int k = 0; k < predicted.length; k++) {
            TrialResidual sign = signs.get(k);
            if (sign.isResult()) {
                chance = Arrays.stream(predicted[k]).map(sign::chance).average().orElse(0);
            } else {
                double mean = Statistics.mean(predicted[k]);
                double spread = Math.hypot(Math.sqrt(Statistics.variance(predicted[k], mean)), sign.deviation());
                off.add(new Sign(sign.what(), (sign.observed() - mean) / spread));
            }
        }
        Trial trial = model.trial();
        return new TrialFit(trial.name(), trial.shape(), trial.mass(), trial.result(), chance, off);
    }
}
