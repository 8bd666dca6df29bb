package org.fizzhull.forecast.question;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.quantity.Given;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.WholeDraws;

/**
 * How learned inputs depend on one another. Trials of a bench tell the product of bubble size and layer far better than
 * either, so that independent priors would throw most of it away; instead whole draws of these inputs are kept and
 * drawn row by row ({@link org.fizzhull.uncertainty.WholeDraws}). Made by {@code learn}, held by {@link Factors}.
 * Immutable.
 *
 * @param inputs the inputs that depend on one another
 * @param draws whole draws of them: a row for each draw, in it an SI value for each of the inputs, in their order
 */
public record Dependence(List<Input> inputs, List<List<Double>> draws) implements Serializable {
    /** All independent. */
    public static final Dependence NONE = new Dependence(List.of(), List.of());

    /**
     * Copies the lists.
     *
     * @param inputs those that do
     * @param draws whole draws, SI, a value of each of them in each
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
        List<Input> left = new ArrayList<>(inputs);
        left.remove(input);
        List<List<Double>> rows = new ArrayList<>();
        for (List<Double> draw : draws) {
            List<Double> row = new ArrayList<>(draw);
            row.remove(inputs.indexOf(input));
            rows.add(row);
        }
        return left.isEmpty() ? NONE : new Dependence(left, rows);
    }

    /** The priors of a table, those it holds of these inputs drawn together. */
    List<Prior> join(List<Prior> priors, Factors table) {
        List<Integer> places = new ArrayList<>();
        for (int k = 0; k < inputs.size(); k++) {
            if (table.column(inputs.get(k)) >= 0) {
                places.add(k);
            }
        }
        if (places.isEmpty()) {
            return priors;
        }
        int[] columns = new int[places.size()];
        double[][] rows = new double[draws.size()][columns.length];
        for (int i = 0; i < columns.length; i++) {
            int place = places.get(i);
            columns[i] = table.column(inputs.get(place));
            for (int row = 0; row < rows.length; row++) {
                rows[row][i] = draws.get(row).get(place);
            }
        }
        return WholeDraws.join(priors, columns, rows);
    }
}
