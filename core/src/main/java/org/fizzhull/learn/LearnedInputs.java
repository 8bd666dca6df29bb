package org.fizzhull.learn;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.forecast.making.MakingPriors;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.StandardPriors;
import org.fizzhull.uncertainty.Prior;

/** The inputs that a bench keeps from one piece to the next and that trials can tell of, with their default priors. */
final class LearnedInputs {
    private LearnedInputs() {}

    /** Those of the bath, and of pressing where pressed pieces were weighed. */
    static List<Factor> of(boolean pressed) {
        List<Factor> rows = new ArrayList<>(StandardPriors.rows());
        if (pressed) {
            for (Factor row : MakingPriors.pressing(WeighedPiece.HAND)) {
                if (row.input() != Input.PRESS_REPEAT) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    /** The default prior of an input that a bench may hold. */
    static Prior prior(Input input) {
        for (Factor row : of(true)) {
            if (row.input() == input) {
                return row.prior();
            }
        }
        throw new IllegalArgumentException("no bench holds the " + input.label());
    }

    /** The input of a label that a bench may hold. */
    static Input named(String label) {
        for (Factor row : of(true)) {
            if (row.input().label().equals(label)) {
                return row.input();
            }
        }
        throw new IllegalArgumentException("no bench holds the " + label);
    }
}
