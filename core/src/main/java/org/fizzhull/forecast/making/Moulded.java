package org.fizzhull.forecast.making;

import java.util.Optional;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.PressRange;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * A making that starts from a recipe: the mix is filled or pressed into a mould, then goes through a plan. How densely it
 * lies and what leaves it until the bath are followed, which a piece that was only weighed ({@link Making.Weighed}) cannot tell.
 */
public sealed interface Moulded extends Making permits Moulded.Filled, Moulded.Pressed {
    /**
     * {@return the making as one into a mould}
     *
     * @param making a fill or a pressed piece
     * @throws IllegalArgumentException for a weighed piece, whose packing is not known
     */
    static Moulded of(Making making) {
        Given.all("making", making);
        if (making instanceof Moulded moulded) {
            return moulded;
        }
        throw new IllegalArgumentException(
                "a recipe that fills or is pressed into a mould is needed, not a weight alone");
    }

    /** {@return powders and liquid by the recipe's middle amounts} */
    Blend blend();

    /**
     * {@return how the mould is pressed, where that was said; else the usual way of the shape}
     *
     * @param shape form of the piece
     */
    MouldDimensions.Filling filling(Shape shape);

    /**
     * {@return the mould of the shape, filled as it is said}
     *
     * @param shape form of the piece
     */
    default MouldDimensions mould(Shape shape) {
        return MouldDimensions.of(shape, filling(shape));
    }

    @Override
    default Optional<Blend> mix() {
        return Optional.of(blend());
    }

    @Override
    default boolean isDried() {
        return !plan().phases().isEmpty();
    }

    /**
     * A damp mass of a mix pressed into the mould, then dried. How hard it was pressed does not matter: with the mass m,
     * the volume V of the mould, the true density rho_s of the powders and the liquid ratio w of the draw, the solid
     * fraction is
     *
     * <pre>  phi = m/(V rho_s (1 + w))</pre>
     *
     * <p>so that of the powders' densities only the true ones are drawn: the weight is nearly certain, the porosity
     * follows. Immutable.
     *
     * @param blend powders and liquid by the recipe's middle amounts
     * @param dampMass pressed into the mould, kg
     * @param hand spread of that mass across a batch, around 0, kg; empty for a single piece
     * @param plan what happens between press and bath
     */
    record Filled(Blend blend, double dampMass, Optional<Prior> hand, DryingPlan plan) implements Moulded {
        /**
         * Refuses what is missing, and what is no number.
         *
         * @param blend powders and liquid by the recipe's middle amounts
         * @param dampMass pressed into the mould, kg
         * @param hand spread of that mass across a batch, around 0, kg; empty for a single piece
         * @param plan what happens between press and bath
         */
        public Filled {
            Given.all("blend, hand, plan", blend, hand, plan);
            Given.finite("damp mass", dampMass);
        }

        @Override
        public MouldDimensions.Filling filling(Shape shape) {
            return MouldDimensions.Filling.usual(shape);
        }

        @Override
        public Filled weighing(double kilograms) {
            return new Filled(blend, kilograms, hand, plan);
        }

        private Object writeReplace() {
            return SerialForm.of(this);
        }
    }

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
    record Pressed(Blend blend, double pressure, double pressSpread, MouldDimensions.Filling filling, DryingPlan plan)
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
        public Pressed {
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
        public Pressed weighing(double kilograms) {
            return this;
        }
    }
}
