package org.fizzhull.forecast.making;

import java.util.Optional;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * A making that starts from a recipe: the mix is filled or pressed into a mould, then goes through a plan. How densely it
 * lies and what leaves it until the bath are followed, which a piece that was only weighed ({@link Weighed}) cannot tell.
 */
public sealed interface Moulded extends Making permits FilledMould, PressedMould {
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
}
