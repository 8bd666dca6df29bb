package org.fizzhull.forecast.question;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.sampling.ScaledPrior;
import org.jspecify.annotations.Nullable;

/**
 * The ordered, immutable table of uncertain inputs: the only joint between the physics, which knows no distribution,
 * and the priors. An input without a row keeps its standard value. Values are SI ({@link Input}), whatever unit people read.
 *
 * <pre>{@code
 * Factors mine = Factors.standard()
 *         .with(new Factor(Input.BATH_TEMPERATURE, Priors.normal(0, 0.2), source)) // a good thermometer, K
 *         .fix(Input.GAS_SHARE, 0.65)                                              // known exactly
 *         .without(Input.PLUME);                                                   // keeps its standard value
 * Forecast forecast = FloatPredictor.standard().with(mine).forecast(question);
 * }</pre>
 *
 * <p>A question brings rows of its own (scale, hand, mould, bath, what was made: {@link #asked}). What a caller says
 * with {@link #with}, {@link #fix} or {@link #without} holds for them too.
 *
 * <p>A row has one <b>column</b> or more: one number drawn for each. Most inputs have one; the scores of the powders
 * have three a powder, those of a recipe one a line. Columns stand in the order of the rows, and a Sobol point has a
 * coordinate for each: a row more or less changes all draws. Immutable; safe to share between threads; serializable;
 * equal by its rows. Priors and sources: docs/physics/uncertainty.md, 2.
 */
public final class Factors implements Serializable {
    private static final long serialVersionUID = 1;

    /** Source of a row that a caller fixed. */
    private static final Source FIXED = new Source("fixed", "Fixed by the caller", Source.Seen.ASSUMED);

    /** The rows, in the order in which their columns are drawn. */
    private final List<Factor> rows;
    /** Inputs that keep their standard value even where a question would bring a row. */
    private final Set<Input> removed;

    /** How learned inputs depend on one another; {@link Dependence#NONE} as a rule. */
    private final Dependence dependence;

    /** What is known of the size of single moulds, in place of the row that a question about such a piece brings. */
    private final Map<Shape, Factor> moulds;

    /**
     * Makes a table of rows.
     *
     * @param rows one row for each input, in the order of the columns
     */
    public Factors(List<Factor> rows) {
        this(rows, Set.of(), Dependence.NONE, Map.of());
    }

    private Factors(List<Factor> rows, Set<Input> removed, Dependence dependence, Map<Shape, Factor> moulds) {
        Given.all("rows", rows);
        this.rows = List.copyOf(rows);
        this.removed = Set.copyOf(removed);
        this.dependence = dependence;
        this.moulds = Map.copyOf(moulds);
    }

    /**
     * {@return the same table with learned rows in place of its own, that depend on one another}
     *
     * @param learned rows that take the place of those of the same inputs
     * @param inputs those that are drawn together, once for each column
     * @param draws whole draws of them, SI, a value of each column in each
     */
    public Factors learned(List<Factor> learned, List<Input> inputs, List<List<Double>> draws) {
        Dependence how = new Dependence(inputs, draws);
        Factors changed = this;
        for (Factor factor : learned) {
            changed = changed.with(factor);
        }
        return new Factors(changed.rows, changed.removed, how, moulds);
    }

    /** {@return the defaults for a piece of known shape and weight whose recipe is not known} */
    public static Factors standard() {
        return new Factors(StandardPriors.rows());
    }

    /** {@return the rows, in order} */
    public List<Factor> rows() {
        return rows;
    }

    /**
     * {@return the row of an input}
     *
     * @param input the input
     */
    public Optional<Factor> row(Input input) {
        Given.all("input", input);
        for (Factor row : rows) {
            if (row.input() == input) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the same table with one row replaced, or added at the end; it takes the place of a question's own row}
     *
     * @param factor the row
     */
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
        Set<Input> left = new HashSet<>(removed);
        left.remove(factor.input());
        return new Factors(changed, left, dependence.without(factor.input()), moulds);
    }

    /**
     * {@return the same table with what is known of the size of one mould} It takes the place of the row that a question about
     * a piece of this mould brings, of no other; a row of the table itself comes first.
     *
     * @param mould form of the pieces, without what lies on or in them
     * @param size a row of {@link Input#MOULD_SIZE}
     */
    public Factors sized(Shape mould, Factor size) {
        if (size.input() != Input.MOULD_SIZE) {
            throw new IllegalArgumentException("the size of a mould, not " + size.input());
        }
        Map<Shape, Factor> more = new HashMap<>(moulds);
        more.put(mould, size);
        return new Factors(rows, removed, dependence, more);
    }

    /**
     * {@return the same table with an input known exactly, in SI}
     *
     * @param input the input
     * @param value value, SI
     * @throws Refusal {@code out-of-range} for a value that the input cannot have
     */
    public Factors fix(Input input, double value) {
        return with(new Factor(input, Priors.certain(value), FIXED));
    }

    /**
     * {@return the same table with every value of an input a factor times as large} How it depends on others stays.
     *
     * @param input an input of this table
     * @param factor what each value is multiplied by, above 0
     */
    public Factors scaled(Input input, double factor) {
        Factor row = row(input).orElseThrow();
        Factor larger = new Factor(input, new ScaledPrior(row.prior(), factor), row.source(), row.columns());
        return new Factors(with(larger).rows, removed, dependence.scaled(input, factor), moulds);
    }

    /**
     * {@return the same table without an input, which keeps its standard value; a question does not bring it back}
     *
     * @param input the input
     */
    public Factors without(Input input) {
        List<Factor> kept = new ArrayList<>(rows.size());
        for (Factor row : rows) {
            if (row.input() != input) {
                kept.add(row);
            }
        }
        Set<Input> gone = new HashSet<>(removed);
        gone.add(Objects.requireNonNull(input, "input"));
        return new Factors(kept, gone, dependence.without(input), moulds);
    }

    /**
     * {@return the rows that are brought, those of this table in their place, those it leaves out left out}
     *
     * @param brought rows that a question brings
     */
    public Factors over(List<Factor> brought) {
        List<Factor> over = new ArrayList<>(brought.size());
        for (Factor row : brought) {
            if (!removed.contains(row.input())) {
                Optional<Factor> own = row(row.input());
                over.add(own.isPresent() ? own.get().columns(row.columns()) : row);
            }
        }
        return new Factors(over, removed, dependence, moulds);
    }

    /**
     * {@return the rows that matter for a question, in the order in which they are drawn ({@link AskedRows})} In still
     * water only the question's own rows bear on the answer; what is known of making matters only for a piece that is
     * made.
     *
     * @param question what is asked
     */
    public Factors asked(Question question) {
        return new Factors(AskedRows.of(question, this), removed, dependence, moulds);
    }

    /**
     * {@return the rows of a question and behind them those that only a press asks: how a piece feels and, of a fill, how
     * hard it was pressed} Since they stand last, what was asked before is drawn as without them, and a piece weighs the
     * same in every answer.
     *
     * @param question what is asked, of a piece that is made
     */
    public Factors askedOfPress(Question question) {
        List<Factor> last =
                new ArrayList<>(MakingPriors.powders(question.making().mix().orElseThrow()));
        last.addAll(MakingPriors.pressing(1));
        last.addAll(MakingPriors.feel());
        List<Factor> rows = AskedRows.of(question, this);
        AskedRows.addMissing(over(last).rows, rows);
        return new Factors(rows, removed, dependence, moulds);
    }

    /** Whether an input is drawn together with others, as a bench leaves it. */
    boolean holds(Input input) {
        return dependence.holds(input);
    }

    /** What is known of the size of the mould of a question, where its owner measured it. */
    Optional<Factor> sizeOf(Shape shape) {
        return Optional.ofNullable(moulds.get(shape.bare()));
    }

    /**
     * {@return the prior of an input that a measurement is solved for} Refuses a table in which it is fixed or left
     * out.
     *
     * @param input the input
     * @throws Refusal {@code conflict}
     */
    public Prior solved(Input input) {
        int column = column(input);
        if (column < 0) {
            throw new Refusal(
                    "conflict",
                    "measurement",
                    "a measurement that is solved for the " + input.label() + ", which was left out",
                    "an uncertain " + input.label(),
                    "Leave out the measurement, or give the input a prior.");
        }
        return priors().get(column);
    }

    /** {@return whether some of its inputs are drawn together, as a bench leaves them} */
    public boolean isDependent() {
        for (Factor row : rows) {
            if (dependence.holds(row.input())) {
                return true;
            }
        }
        return false;
    }

    /** {@return the priors of every column, in the order of the rows} */
    public List<Prior> priors() {
        List<Prior> priors = new ArrayList<>(rows.size());
        for (Factor row : rows) {
            for (int k = 0; k < row.columns(); k++) {
                priors.add(row.prior());
            }
        }
        return dependence.join(priors, this);
    }

    /** {@return how many columns each row has, in order} */
    public int[] columns() {
        int[] columns = new int[rows.size()];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = rows.get(i).columns();
        }
        return columns;
    }

    /** {@return the medians of every column, in the order of the rows} */
    public double[] medians() {
        List<Prior> priors = priors();
        double[] medians = new double[priors.size()];
        for (int i = 0; i < medians.length; i++) {
            medians[i] = priors.get(i).median();
        }
        return medians;
    }

    /**
     * {@return the place of the first column of an input; -1 where it has no row}
     *
     * @param input the input
     */
    public int column(Input input) {
        Given.all("input", input);
        int at = 0;
        for (Factor row : rows) {
            if (row.input() == input) {
                return at;
            }
            at += row.columns();
        }
        return -1;
    }

    /** {@return the places of the columns that are settled before the bath} */
    public int[] makingColumns() {
        int[] columns = columns();
        int[] places = new int[priors().size()];
        int found = 0;
        int at = 0;
        for (int i = 0; i < columns.length; i++) {
            for (int k = 0; k < columns[i]; k++, at++) {
                if (rows.get(i).input().isOfMaking()) {
                    places[found++] = at;
                }
            }
        }
        return Arrays.copyOf(places, found);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Factors that
                && rows.equals(that.rows)
                && removed.equals(that.removed)
                && dependence.equals(that.dependence)
                && moulds.equals(that.moulds);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rows, removed, dependence, moulds);
    }

    /** One line a row: the input and its prior. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Factor row : rows) {
            text.append(row.input().label()).append(": ").append(row.prior()).append('\n');
        }
        return text.toString();
    }
}
