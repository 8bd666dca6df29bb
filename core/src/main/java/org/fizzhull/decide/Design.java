package org.fizzhull.decide;

import java.util.Optional;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.IntoBath;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.pressing.Mould;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * Everything a maker decides about a piece, before it is a {@link Question}: the mix, the mould, how it is filled, how it is
 * dried, the bath. A search for a better piece changes one of these and asks again. Immutable; SI.
 *
 * @param recipe the mix; empty where only the weight of the finished piece is known
 * @param shape of the mould
 * @param filling how the mix comes into the mould
 * @param drying how it is dried; empty for a piece that goes into the bath as it was pressed
 * @param bath the water
 * @param into how it goes into the water
 * @param stillWater true to leave out everything that fizzes
 * @param measured how the size of the mould is known
 * @param scale that weighs it
 */
public record Design(
        Optional<Recipe> recipe,
        Shape shape,
        Filling filling,
        Optional<DryingConditions> drying,
        Bath bath,
        IntoBath into,
        boolean stillWater,
        Measured measured,
        Scale scale) {

    /** How the mix comes into the mould. */
    public sealed interface Filling {
        /**
         * A damp weight, whatever press it takes.
         *
         * @param mass kg
         * @param hand spread of it from piece to piece, around 0, kg
         */
        record Fill(double mass, Optional<Prior> hand) implements Filling {}

        /**
         * A press, whatever weight it gives.
         *
         * @param pressure at the top of the mould, Pa
         * @param spread one sigma factor of that pressure
         * @param halves two halves or one plunger
         */
        record Press(double pressure, double spread, Mould.Filling halves) implements Filling {}

        /**
         * A piece that is finished, by its weight on the scale.
         *
         * @param mass of the whole piece, kg
         * @param hand spread of it from piece to piece, around 0, kg
         * @param dried what its mix has become by drying, where that is known
         */
        record Finished(double mass, Optional<Prior> hand, Optional<Makeup> dried) implements Filling {}
    }

    /**
     * Refuses a fill or a press without a mix.
     *
     * @param recipe the mix; empty where only the weight of the finished piece is known
     * @param shape of the mould
     * @param filling how the mix comes into the mould
     * @param drying how it is dried; empty for a piece that goes into the bath as it was pressed
     * @param bath the water
     * @param into how it goes into the water
     * @param stillWater true to leave out everything that fizzes
     * @param measured how the size of the mould is known
     * @param scale that weighs it
     */
    public Design {
        if (recipe.isEmpty() && !(filling instanceof Filling.Finished)) {
            throw new IllegalArgumentException("a fill or a press needs a recipe");
        }
    }

    /** {@return the question whether this piece floats} May take some tenths of a second for a shape that dries. */
    public Question question() {
        return new Question(shape, making(), bath, into, stillWater, measured, scale);
    }

    /** {@return how the piece comes to be} */
    public Making making() {
        if (filling instanceof Filling.Finished finished) {
            Optional<Blend> blend = recipe.isPresent() ? Optional.of(Blend.of(recipe.get())) : Optional.empty();
            return new Weighed(finished.mass(), finished.hand(), blend, finished.dried());
        }
        Blend blend = Blend.of(recipe.orElseThrow());
        DryingPlan plan = drying.isPresent() ? drying.get().plan(shape) : DryingPlan.none();
        if (filling instanceof Filling.Fill fill) {
            return new FilledMould(blend, fill.mass(), fill.hand(), plan);
        }
        Filling.Press press = (Filling.Press) filling;
        return new PressedMould(blend, press.pressure(), press.spread(), press.halves(), plan);
    }

    /**
     * {@return this design, of another mix}
     *
     * @param other recipe of the mix
     */
    public Design of(Recipe other) {
        return new Design(Optional.of(other), shape, filling, drying, bath, into, stillWater, measured, scale);
    }

    /**
     * {@return this design, in another mould, which goes into the bath the usual way of its kind}
     *
     * @param other form of the mould
     */
    public Design in(Shape other) {
        IntoBath usual = other.hollow().isPresent() ? IntoBath.PLACED : IntoBath.DROPPED;
        boolean sameKind = other.hollow().isPresent() == shape.hollow().isPresent();
        return new Design(recipe, other, filling, drying, bath, sameKind ? into : usual, stillWater, measured, scale);
    }

    /**
     * {@return this design filled another way}
     *
     * @param other how the mould is filled
     */
    public Design filled(Filling other) {
        return new Design(recipe, shape, other, drying, bath, into, stillWater, measured, scale);
    }

    /**
     * {@return this design with the size of the mould known another way}
     *
     * @param how how the size of the mould is known
     */
    public Design measured(Measured how) {
        return new Design(recipe, shape, filling, drying, bath, into, stillWater, how, scale);
    }

    /**
     * {@return this design dried another way}
     *
     * @param other how the piece is dried
     */
    public Design dried(DryingConditions other) {
        return new Design(recipe, shape, filling, Optional.of(other), bath, into, stillWater, measured, scale);
    }

    /**
     * {@return this design put into the bath another way}
     *
     * @param way how the piece goes into the bath
     */
    public Design put(IntoBath way) {
        return new Design(recipe, shape, filling, drying, bath, way, stillWater, measured, scale);
    }
}
