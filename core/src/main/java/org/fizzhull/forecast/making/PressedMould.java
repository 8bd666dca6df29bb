package org.fizzhull.forecast.making;

import java.util.Optional;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.PressRange;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * A mix pressed into the mould with a pressure, then dried. What the piece weighs is predicted: the pressure at the
 * top, times the draw's factors of the hand and of this press, times the mean over the mould ({@code meanOverTop}, wall
 * friction), gives the solid fraction by the packing model of the draw. Immutable. Equations:
 * docs/physics/packing.md.
 *
 * @param blend powders and liquid by the recipe's middle amounts
 * @param pressure at the top of the mould, Pa, above 0
 * @param pressSpread one sigma factor of that pressure, 1 where it was measured, {@link WeighedPiece#HAND} for a word
 * @param filling two halves, each pressed on its open face, or one plunger
 * @param plan what happens between press and bath
 */
public record PressedMould(
        Blend blend, double pressure, double pressSpread, MouldDimensions.Filling filling, DryingPlan plan)
        implements Moulded {
    /**
     * Refuses what is missing, and what is no number.
     *
     * @param blend powders and liquid by the recipe's middle amounts
     * @param pressure at the top of the mould, Pa, above 0
     * @param pressSpread one sigma factor of that pressure, 1 where it was measured, {@link WeighedPiece#HAND} for a word
     * @param filling two halves, each pressed on its open face, or one plunger
     * @param plan what happens between press and bath
     */
    public PressedMould {
        Given.all("blend, filling, plan", blend, filling, plan);
        PressRange.check(pressure);
        if (!(pressSpread >= 1 && pressSpread < Double.POSITIVE_INFINITY)) {
            throw new Refusal(
                    "out-of-range",
                    "spread of the press",
                    "a factor of " + pressSpread,
                    "1 or more",
                    "One standard deviation of the pressure, as a factor: 1.6 for a hand, 1 where it is exact.");
        }
    }

    @Override
    public MouldDimensions.Filling filling(Shape shape) {
        return filling;
    }

    @Override
    public Optional<Prior> hand() {
        return Optional.empty();
    }

    @Override
    public PressedMould weighing(double kilograms) {
        return this;
    }
}
