package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.piece.Makeup;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.VoyageParameters;

/**
 * The ordered, immutable table of uncertain inputs: the only joint between the physics, which knows no distribution, and
 * the priors. {@link #at} turns one value of each row into the parameter records; an input without a row keeps its
 * standard value.
 */
public final class Factors {
    private final List<Factor> rows;

    private Factors(List<Factor> rows) {
        this.rows = List.copyOf(rows);
    }

    /** The defaults for a piece of known shape and weight whose recipe is not known. */
    public static Factors standard() {
        return new Factors(StandardPriors.rows());
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
        }
        return new Factors(asked);
    }

    /** The priors, in the order of the rows. */
    public List<Prior> priors() {
        List<Prior> priors = new ArrayList<>(rows.size());
        for (Factor row : rows) {
            priors.add(row.prior());
        }
        return priors;
    }

    /** The medians, in the order of the rows. */
    public double[] medians() {
        double[] medians = new double[rows.size()];
        for (int i = 0; i < medians.length; i++) {
            medians[i] = rows.get(i).prior().median();
        }
        return medians;
    }

    /** What the physics takes for one value of each row, in order. */
    Draw at(double[] values) {
        double[] all = new double[STANDARD.length];
        System.arraycopy(STANDARD, 0, all, 0, all.length);
        for (int i = 0; i < values.length; i++) {
            all[rows.get(i).input().ordinal()] = values[i];
        }
        return draw(all);
    }

    private static Draw draw(double[] v) {
        return new Draw(
                v[Input.SCALE.ordinal()] + v[Input.HAND.ordinal()],
                v[Input.MOULD_SIZE.ordinal()],
                v[Input.SURFACE.ordinal()],
                v[Input.BATH_TEMPERATURE.ordinal()],
                new Makeup(v[Input.TRUE_DENSITY.ordinal()], v[Input.GAS_CAPACITY.ordinal()]),
                new FizzParameters(
                        v[Input.RECESSION.ordinal()],
                        v[Input.POROSITY_SLOPE.ordinal()],
                        v[Input.ACTIVATION_ENERGY.ordinal()],
                        v[Input.REACTIVE_EXPONENT.ordinal()],
                        v[Input.BUBBLE_SIZE.ordinal()],
                        v[Input.COVERAGE.ordinal()],
                        v[Input.GAS_LAYER.ordinal()],
                        v[Input.GAS_SHARE.ordinal()]),
                new VoyageParameters(v[Input.WETTED_SHARE.ordinal()], v[Input.PLUME.ordinal()]));
    }

    private static final double[] STANDARD = standardValues();

    private static double[] standardValues() {
        double[] v = new double[Input.values().length];
        for (Input input : Input.values()) {
            v[input.ordinal()] = input.neutral();
        }
        Makeup makeup = Makeup.usual();
        v[Input.TRUE_DENSITY.ordinal()] = makeup.trueDensity();
        v[Input.GAS_CAPACITY.ordinal()] = makeup.gasCapacity();
        FizzParameters fizz = FizzParameters.standard();
        v[Input.RECESSION.ordinal()] = fizz.recession38();
        v[Input.POROSITY_SLOPE.ordinal()] = fizz.porositySlope();
        v[Input.ACTIVATION_ENERGY.ordinal()] = fizz.activationEnergy();
        v[Input.REACTIVE_EXPONENT.ordinal()] = fizz.reactiveExponent();
        v[Input.BUBBLE_SIZE.ordinal()] = fizz.bubbleDiameter();
        v[Input.COVERAGE.ordinal()] = fizz.coverageShift();
        v[Input.GAS_LAYER.ordinal()] = fizz.layerMultiplier();
        v[Input.GAS_SHARE.ordinal()] = fizz.gasShare();
        VoyageParameters voyage = VoyageParameters.standard();
        v[Input.WETTED_SHARE.ordinal()] = voyage.wettedShare();
        v[Input.PLUME.ordinal()] = voyage.plumeFactor();
        return v;
    }
}
