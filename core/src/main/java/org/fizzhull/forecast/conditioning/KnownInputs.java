package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.DrawnPrior;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.uncertainty.sampling.Posterior;

/**
 * The table of uncertain inputs that measurements on pieces of one question leave, for other questions in the same house:
 * whole draws of {@link Conditioned}, so that how the inputs depend on one another survives. What a question asks again of
 * each piece (the spread of a batch, the repeat of a press) keeps its prior.
 *
 * <p>Cost: that of {@link Conditioned}. Immutable.
 *
 * @param factors table for every question that shares mix, bath and mould with the one that was measured
 * @param notices what the reader must know of the measurements
 */
public record KnownInputs(Factors factors, List<Notice> notices) {
    /** Whole draws that are kept: the 2.5 % point rests on 25 of them. */
    private static final int KEPT = 1024;

    /** Errors of each piece anew, of which a measurement on another tells nothing. */
    private static final Set<Input> EACH_ITS_OWN = EnumSet.of(Input.HAND, Input.PRESS_REPEAT);

    private static final Source SOURCE =
            new Source("measured", "What was measured on other pieces, over the prior", Source.Seen.COMPUTED);

    /**
     * Copies the list.
     *
     * @param factors table for other questions
     * @param notices what the reader must know of the measurements
     */
    public KnownInputs {
        notices = List.copyOf(notices);
    }

    /**
     * {@return the inputs after measurements; the table as it is where nothing was measured}
     *
     * @param pieces the question whose pieces were measured, and what was
     * @param factors table of priors, without the rows that the question brings
     * @param sampling seed and number of draws, above 0
     * @param workers workers that compute the draws
     * @throws org.fizzhull.quantity.Refusal for a measurement that the question cannot have, or that nothing agrees with
     */
    public static KnownInputs of(
            Observations.MeasuredPieces pieces, Factors factors, Sampling sampling, Workers workers) {
        if (pieces.seen().isEmpty()) {
            return new KnownInputs(factors, List.of());
        }
        PreparedQuestion prepared = PreparedQuestion.of(TippingBoat.judged(pieces.like(), factors), factors);
        Conditioned known =
                Conditioned.on(prepared, pieces.seen(), sampling, workers).orElseThrow();
        double[][] columns = columns(known.posterior().orElseThrow().thinned(KEPT), known.centre().length);
        // a row for each input that still varies; of several columns each keeps its prior beside the draws
        List<Factor> rows = new ArrayList<>();
        List<Input> inputs = new ArrayList<>();
        List<double[]> kept = new ArrayList<>();
        int at = 0;
        for (Factor row : prepared.factors().rows()) {
            double[] first = columns[at];
            boolean varies = Arrays.stream(first).anyMatch(value -> value != first[0]);
            if (varies && !EACH_ITS_OWN.contains(row.input())) {
                Prior alone = row.columns() == 1 ? DrawnPrior.of(first) : row.prior();
                rows.add(new Factor(row.input(), alone, SOURCE, row.columns()));
                for (int k = 0; k < row.columns(); k++) {
                    inputs.add(row.input());
                    kept.add(columns[at + k]);
                }
            }
            at += row.columns();
        }
        return new KnownInputs(factors.learned(rows, inputs, draws(inputs, kept)), known.notices());
    }

    /** The value of each column in each draw. */
    private static double[][] columns(Posterior posterior, int count) {
        double[][] columns = new double[count][KEPT];
        posterior.draws(() -> new Model() {
            private double[] last = new double[0];

            @Override
            public double at(double[] inputs) {
                last = inputs.clone();
                return 0;
            }

            @Override
            public void keep(int draw) {
                for (int k = 0; k < last.length; k++) {
                    columns[k][draw] = last[k];
                }
            }
        });
        return columns;
    }

    /** Whole draws, sorted by bubble size: neighbours are then alike, and even points meet them evenly. */
    private static List<List<Double>> draws(List<Input> inputs, List<double[]> kept) {
        List<List<Double>> draws = new ArrayList<>(KEPT);
        for (int i = 0; i < KEPT; i++) {
            List<Double> draw = new ArrayList<>(kept.size());
            for (double[] column : kept) {
                draw.add(column[i]);
            }
            draws.add(draw);
        }
        int by = Math.max(0, inputs.indexOf(Input.BUBBLE_SIZE));
        draws.sort(Comparator.comparingDouble(draw -> draw.get(by)));
        return draws;
    }
}
