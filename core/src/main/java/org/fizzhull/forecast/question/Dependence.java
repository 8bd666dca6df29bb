package org.fizzhull.forecast.question;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleFunction;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.sampling.WholeDraws;

/**
 * How inputs depend on one another once something was measured. Trials of a bench tell the product of bubble size and layer
 * far better than either, so that independent priors would throw most of it away; instead whole draws of these inputs are
 * kept and drawn row by row ({@link org.fizzhull.uncertainty.sampling.WholeDraws}). Made by {@code learn} and of what measurements
 * leave, held by {@link Factors}. Immutable.
 *
 * @param inputs the inputs that depend on one another; one that stands for several columns is named once for each, in order
 * @param draws whole draws of them: a row for each draw, in it an SI value for each of the columns, in their order
 */
record Dependence(List<Input> inputs, List<List<Double>> draws) implements Serializable {
    /** All independent. */
    public static final Dependence NONE = new Dependence(List.of(), List.of());

    /**
     * Copies the lists.
     *
     * @param inputs those that do, once for each column
     * @param draws whole draws, SI, a value of each column in each
     */
    public Dependence {
        Given.all("inputs, draws", inputs, draws);
        inputs = List.copyOf(inputs);
        draws = List.copyOf(draws);
    }

    /** Whether an input is one of them. */
    boolean holds(Input input) {
        return inputs.contains(input);
    }

    /** Without an input, whose value is known otherwise now. */
    Dependence without(Input input) {
        if (!holds(input)) {
            return this;
        }
        List<Input> left = inputs.stream().filter(held -> held != input).toList();
        return left.isEmpty() ? NONE : new Dependence(left, changed(input, value -> List.of()));
    }

    /** With an input so many times as large in each draw. */
    Dependence scaled(Input input, double factor) {
        return new Dependence(inputs, changed(input, value -> List.of(factor * value)));
    }

    /** The draws with other values, or none, in place of each one of an input. */
    private List<List<Double>> changed(Input input, DoubleFunction<List<Double>> change) {
        List<List<Double>> rows = new ArrayList<>(draws.size());
        for (List<Double> draw : draws) {
            List<Double> row = new ArrayList<>(draw.size());
            for (int k = 0; k < inputs.size(); k++) {
                row.addAll(inputs.get(k) == input ? change.apply(draw.get(k)) : List.of(draw.get(k)));
            }
            rows.add(row);
        }
        return rows;
    }

    /** The priors of a table, those it holds of these inputs drawn together. */
    List<Prior> join(List<Prior> priors, Factors table) {
        // where each value of a draw belongs: the k-th of an input to its k-th column
        int[] places = new int[inputs.size()];
        int[] columns = new int[inputs.size()];
        int held = 0;
        for (int k = 0; k < inputs.size(); k++) {
            Input input = inputs.get(k);
            int nth = Collections.frequency(inputs.subList(0, k), input);
            if (table.row(input).isPresent() && nth < table.row(input).get().columns()) {
                places[held] = k;
                columns[held++] = table.column(input) + nth;
            }
        }
        if (held == 0) {
            return priors;
        }
        double[][] rows = new double[draws.size()][held];
        for (int row = 0; row < rows.length; row++) {
            List<Double> draw = draws.get(row);
            for (int i = 0; i < held; i++) {
                rows[row][i] = draw.get(places[i]);
            }
        }
        return WholeDraws.join(priors, Arrays.copyOf(columns, held), rows);
    }
}
