package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Prior;

/**
 * How the piece of a question came to be, and so what is known of it before the bath. Three ways, from the least
 * computed to the most, of which the last two start from a recipe ({@link Moulded}):
 *
 * <ul>
 *   <li>{@link Weighed}: on the scale as it goes into the bath; its weight is known, its making is not followed.
 *   <li>{@link FilledMould}: a damp mass in a mould, then dried; its porosity follows, what it loses is computed.
 *   <li>{@link PressedMould}: pressed with a pressure, then dried; its weight is predicted too.
 * </ul>
 *
 * <p>Says what was done, in values that anybody can type; what is uncertain in it, and the piece that comes of it, is
 * computed elsewhere. Immutable.
 */
public sealed interface Making extends Serializable permits Weighed, Moulded {
    /** {@return what it is made of, where a recipe is given} */
    Optional<Blend> mix();

    /** {@return what happens between press and bath; without a phase for a piece that goes in damp, or is only weighed} */
    DryingPlan plan();

    /** {@return whether it dries between press and bath} */
    boolean isDried();

    /** {@return the spread of the mass that the hand leaves across a batch, around 0, kg} */
    Optional<Prior> hand();

    /**
     * {@return the same with another mass on the scale, kg; a piece made by pressure has none and stays as it is}
     *
     * @param kilograms mass, kg
     */
    Making weighing(double kilograms);
}
