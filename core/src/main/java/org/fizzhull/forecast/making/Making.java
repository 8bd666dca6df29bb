package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Prior;

/**
 * How the piece of a question came to be, and so what is known of it before the bath. Three ways, from the least
 * computed to the most, of which the last two start from a recipe ({@link Moulded}):
 *
 * <ul>
 *   <li>{@link Weighed}: on the scale as it goes into the bath; its weight is known, its making is not followed.
 *   <li>{@link Moulded.Filled}: a damp mass in a mould, then dried; its porosity follows, what it loses is computed.
 *   <li>{@link Moulded.Pressed}: pressed with a pressure, then dried; its weight is predicted too.
 * </ul>
 *
 * <p>Says what was done, in values that anybody can type; what is uncertain in it, and the piece that comes of it, is
 * computed elsewhere. Immutable.
 */
public sealed interface Making extends Serializable permits Making.Weighed, Moulded {
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

    /**
     * A piece on the scale as it goes into the bath. Its weight is known to the scale; what its makeup (true density, fizz
     * left) is known from stands in the other components, from none to a recipe and its drying. Immutable.
     *
     * @param mass of the whole piece, kg
     * @param hand spread of that mass across a batch, around 0, kg; empty for one weighed piece
     * @param blend what it is made of, where a recipe is given
     * @param dried what the recipe has become, where it is known how it was dried ({@link org.fizzhull.forecast.WaterLeft})
     */
    record Weighed(double mass, Optional<Prior> hand, Optional<Blend> blend, Optional<Piece.Makeup> dried)
            implements Making, Serializable {
        /**
         * Refuses what is missing; a question refuses a mass that its shape cannot have.
         *
         * @param mass of the whole piece, kg
         * @param hand spread of that mass across a batch, around 0, kg; empty for one weighed piece
         * @param blend what it is made of, where a recipe is given
         * @param dried what the recipe has become, where it is known how it was dried ({@link org.fizzhull.forecast.WaterLeft})
         */
        public Weighed {
            Given.all("hand, blend, dried", hand, blend, dried);
        }

        /** Physical limit by which the rarest draws of a wide spread are cut, kg: a piece weighs something. */
        public static final double LEAST_BODY = 1e-6;

        /**
         * A piece of which nothing is known since it was pressed.
         *
         * @param mass of the whole piece, kg
         * @param hand spread of that mass across a batch, around 0, kg; empty for one weighed piece
         * @param blend what it is made of, where a recipe is given
         */
        public Weighed(double mass, Optional<Prior> hand, Optional<Blend> blend) {
            this(mass, hand, blend, Optional.empty());
        }

        /**
         * {@return one weighed piece of unknown recipe, kg}
         *
         * @param mass of the whole piece, kg
         */
        public static Weighed of(double mass) {
            return new Weighed(mass, Optional.empty(), Optional.empty());
        }

        @Override
        public Optional<Blend> mix() {
            return blend;
        }

        @Override
        public DryingPlan plan() {
            return DryingPlan.none();
        }

        @Override
        public boolean isDried() {
            return dried.isPresent();
        }

        @Override
        public Weighed weighing(double kilograms) {
            return new Weighed(kilograms, hand, blend, dried);
        }

        private Object writeReplace() {
            return SerialForm.of(this);
        }
    }
}
