package org.fizzhull.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.maker.MakingPriors;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Prior;

/**
 * The inputs that a bench keeps from one piece to the next and that trials can tell of, with their default priors: those of the
 * bath ({@link StandardPriors}) and those of pressing ({@link MakingPriors}). Left out is what changes from piece to piece (scale,
 * thermometer, repeat of a press), the powders' densities and drying.
 */
final class LearnedInputs {
    private LearnedInputs() {}

    /**
     * {@return the inputs of the bath and, where pressed pieces were weighed, of pressing; not the repeat of a press, which is each
     * piece's own, nor the friction of the mould, which weighings hardly tell from the pressure}
     *
     * @param pressed whether a trial tells of pressing
     */
    static List<Factor> of(boolean pressed) {
        List<Factor> rows = new ArrayList<>(Factors.standard().rows());
        if (pressed) {
            for (Factor row : MakingPriors.pressing(WeighedPiece.HAND)) {
                if (row.input() != Input.PRESS_REPEAT && row.input() != Input.WALL_FRICTION) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    /**
     * {@return the default priors of inputs, in their order}
     *
     * @param inputs inputs of a bench
     * @throws Refusal {@code unknown-name} for an input that no bench holds
     */
    static List<Prior> priors(List<Input> inputs) {
        List<Factor> rows = of(false);
        List<Prior> priors = new ArrayList<>(inputs.size());
        for (Input input : inputs) {
            Optional<Prior> prior = prior(rows, input);
            if (prior.isEmpty()) {
                rows = of(true); // those before, and those of making
                prior = prior(rows, input);
            }
            if (prior.isEmpty()) {
                throw new Refusal(
                        "unknown-name",
                        "factors",
                        input.label(),
                        "names that learn writes",
                        "Let learn write the bench file anew.");
            }
            priors.add(prior.get());
        }
        return priors;
    }

    /** The prior of an input among rows. */
    private static Optional<Prior> prior(List<Factor> rows, Input input) {
        for (Factor row : rows) {
            if (row.input() == input) {
                return Optional.of(row.prior());
            }
        }
        return Optional.empty();
    }
}
