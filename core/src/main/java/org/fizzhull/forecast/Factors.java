package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fizzhull.uncertainty.Prior;

/**
 * The ordered, immutable table of uncertain inputs: the only joint between the physics, which knows no distribution, and
 * the priors. {@link #at} turns one value of each row into the parameter records; an input without a row keeps its
 * standard value.
 */
public final class Factors {
    private final List<Factor> rows;

    Factors(List<Factor> rows) {
        this.rows = List.copyOf(rows);
    }

    /** The defaults for a piece of known shape and weight whose recipe is not known. */
    public static Factors standard() {
        return new Factors(StandardPriors.rows());
    }

    /** No row: everything at its standard value. */
    static Factors none() {
        return new Factors(List.of());
    }

    /** The rows, in order. */
    public List<Factor> rows() {
        return rows;
    }

    /** The row of an input. */
    public Optional<Factor> row(Input input) {
        return rows.stream().filter(row -> row.input() == input).findFirst();
    }

    /** The same table with one row replaced, or added at the end. */
    public Factors with(Factor factor) {
        List<Factor> changed = new ArrayList<>(rows.size() + 1);
        boolean added = false;
        for (Factor row : rows) {
            boolean same = row.input() == factor.input();
            changed.add(same ? factor : row);
            added |= same;
        }
        if (!added) {
            changed.add(factor);
        }
        return new Factors(changed);
    }

    /** The same table without an input, which keeps its standard value. */
    public Factors without(Input input) {
        List<Factor> kept = new ArrayList<>(rows.size());
        for (Factor row : rows) {
            if (row.input() != input) {
                kept.add(row);
            }
        }
        return new Factors(kept);
    }

    /** The rows that matter for a question, its own (scale, hand, mould, bath) first. */
    public Factors asked(Question question) {
        List<Factor> asked = new ArrayList<>(StandardPriors.ofQuestion(question));
        if (!question.stillWater()) {
            asked.addAll(rows);
            for (Factor row : StandardPriors.ofMix(question.making().mix())) {
                if (row(row.input()).isEmpty()) {
                    asked.add(row);
                }
            }
        }
        return new Factors(asked);
    }

    /** The priors of every column, in the order of the rows. */
    public List<Prior> priors() {
        List<Prior> priors = new ArrayList<>(rows.size());
        for (Factor row : rows) {
            for (int k = 0; k < row.columns(); k++) {
                priors.add(row.prior());
            }
        }
        return priors;
    }

    /** How many columns each row has, in order. */
    public int[] columns() {
        int[] columns = new int[rows.size()];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = rows.get(i).columns();
        }
        return columns;
    }

    /** The medians of every column, in the order of the rows. */
    public double[] medians() {
        List<Prior> priors = priors();
        double[] medians = new double[priors.size()];
        for (int i = 0; i < medians.length; i++) {
            medians[i] = priors.get(i).median();
        }
        return medians;
    }

    /** Place of the first column of an input; -1 where it has no row. */
    int column(Input input) {
        int at = 0;
        for (Factor row : rows) {
            if (row.input() == input) {
                return at;
            }
            at += row.columns();
        }
        return -1;
    }

    /** Columns of the leading rows that are settled before the bath. */
    int makingColumns() {
        int columns = 0;
        for (Factor row : rows) {
            if (!row.input().isOfMaking()) {
                break;
            }
            columns += row.columns();
        }
        return columns;
    }

    /** What the physics takes for one value of each column, in order. */
    Draw at(double[] values) {
        double[] all = DrawValues.standard();
        double[] scores = DrawValues.NO_SCORES;
        double[] amounts = DrawValues.NO_SCORES;
        int at = 0;
        for (int i = 0; i < rows.size(); i++) {
            Factor row = rows.get(i);
            if (row.input() == Input.POWDER_SCORES) {
                scores = Arrays.copyOfRange(values, at, at + row.columns());
            } else if (row.input() == Input.RECIPE_SCORES) {
                amounts = Arrays.copyOfRange(values, at, at + row.columns());
            } else {
                all[DrawValues.place(row.input())] = values[at];
            }
            at += row.columns();
        }
        return DrawValues.draw(all, scores, amounts);
    }
}
