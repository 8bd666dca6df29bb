package org.fizzhull.chain;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;

/**
 * A mix in the bowl: the first stage from recipe to bath, by central values.
 *
 * <pre>{@code
 * DriedPiece piece = Mix.of(recipe).press(ball, PressWord.FIRM.pressure()).dry(conditions);
 * double mass = piece.mass();           // kg
 * Voyage voyage = piece.voyage(bath);   // floats, rises or sinks, and when
 * }</pre>
 *
 * <p>For chances and bands ask a predictor about {@link DriedPiece#question()}. Immutable.
 *
 * @param blend the recipe per kilogram of dry powder
 */
public record Mix(Blend blend) implements Serializable {
    /**
     * Refuses what is missing.
     *
     * @param blend the recipe per kilogram of dry powder
     */
    public Mix {
        Given.all("blend", blend);
    }

    /**
     * {@return the mix of a recipe}
     *
     * @param recipe recipe with a mass of powder above 0
     */
    public static Mix of(Recipe recipe) {
        return new Mix(Blend.of(recipe));
    }

    /**
     * {@return the piece that a weighed fill of this mix makes}
     *
     * @param shape form of the piece, which is the inside of the mould
     * @param dampMass damp mix that goes into the mould, kg
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} or {@code does-not-fit} for a fill that is no piece
     */
    public DampPiece fill(Shape shape, double dampMass) {
        Moulded.Filled filled = new Moulded.Filled(blend, dampMass, Optional.empty(), DryingPlan.none());
        PieceLimits.checkPiece(shape, filled);
        return new DampPiece(shape, filled);
    }

    /**
     * {@return the piece that a pressure on this mix makes} The shape decides whether it is pressed in two halves or by one
     * plunger ({@link MouldDimensions.Filling#usual}).
     *
     * @param shape form of the piece, which is the inside of the mould
     * @param pressure at the top of the mould, Pa; {@link org.fizzhull.pressing.PressWord} has those of a hand
     */
    public DampPiece press(Shape shape, double pressure) {
        Moulded.Pressed pressed =
                new Moulded.Pressed(blend, pressure, 1, MouldDimensions.Filling.usual(shape), DryingPlan.none());
        PieceLimits.checkPiece(shape, pressed);
        return new DampPiece(shape, pressed);
    }
}
