package org.fizzhull.chain;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.question.PieceLimits;
import org.fizzhull.pressing.Mould;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * A mix in the bowl: the first stage. Immutable.
 *
 * @param blend what the recipe amounts to
 */
public record Mix(Blend blend) implements Serializable {
    /**
     * {@return the mix of a recipe}
     *
     * @param recipe recipe with at least one powder
     */
    public static Mix of(Recipe recipe) {
        return new Mix(Blend.of(recipe));
    }

    /**
     * {@return the piece that a weighed fill of this mix makes}
     *
     * @param shape form of the piece, which is the inside of the mould
     * @param dampMass of the mix that goes into the mould, kg
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} or {@code does-not-fit} for a fill that is no piece
     */
    public DampPiece fill(Shape shape, double dampMass) {
        FilledMould filled = new FilledMould(blend, dampMass, Optional.empty(), DryingPlan.none());
        PieceLimits.checkFill(shape, filled);
        return new DampPiece(shape, filled);
    }

    /**
     * {@return the piece that a pressure on this mix makes} Halves and plungers are told apart by the shape.
     *
     * @param shape form of the piece, which is the inside of the mould
     * @param pressure at the top of the mould, Pa; {@link org.fizzhull.pressing.PressWord} has those of a hand
     */
    public DampPiece press(Shape shape, double pressure) {
        return new DampPiece(
                shape, new PressedMould(blend, pressure, 1, Mould.Filling.usual(shape), DryingPlan.none()));
    }
}
