package org.fizzhull.decide;

import java.util.Optional;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * Everything a maker decides about a piece, before it is a {@link Question}: the mix, the mould, how it is filled, how it is
 * dried, the bath. A search for a better piece ({@code decide.advise}) or for what went wrong ({@code decide.why}) changes one
 * of these and asks again; each method that changes one returns a new design. Immutable; SI.
 *
 * <pre>{@code
 * Design planned = new Design(Optional.of(recipe), ball, new Design.Filling.Press(30e3, 1.6, MouldDimensions.Filling.TWO_HALVES),
 *         Optional.of(conditions), Bath.at(Units.celsius(38)), Question.IntoBath.DROPPED, false, Measured.NOMINAL, scale);
 * Forecast now = FloatPredictor.standard().forecast(planned.question());
 * }</pre>
 *
 * @param recipe the mix; empty where only the weight of the finished piece is known
 * @param shape inside of the mould
 * @param filling how the mix comes into the mould
 * @param drying how it is dried; empty for a piece that goes into the bath as it was pressed
 * @param bath the water
 * @param into whether it is dropped or placed
 * @param stillWater true to leave out everything that fizzes
 * @param measured how the size of the mould is known
 * @param scale the scale that weighs fill or piece
 * @param openings the faces through which this shape dries, where they are known already; empty: found when they are needed
 */
public record Design(
        Optional<Recipe> recipe,
        Shape shape,
        Filling filling,
        Optional<DryingConditions> drying,
        Bath bath,
        Question.IntoBath into,
        boolean stillWater,
        Measured measured,
        Scale scale,
        Optional<Standing.Openings> openings) {

    /** How the mix comes into the mould. */
    public sealed interface Filling {
        /**
         * A weighed amount of damp mix; the press that it takes follows.
         *
         * @param mass damp mass, kg
         * @param hand spread of it from piece to piece, around 0, kg; empty for none
         */
        record Fill(double mass, Optional<Prior> hand) implements Filling {
            /**
             * Refuses what is missing, and what is no number.
             *
             * @param mass damp mass, kg
             * @param hand spread of it from piece to piece, around 0, kg; empty for none
             */
            public Fill {
                Given.all("hand", hand);
                Given.finite("mass", mass);
            }
        }

        /**
         * A press; the weight that it gives follows.
         *
         * @param pressure at the top of the mould, Pa
         * @param spread one standard deviation of that pressure, as a factor
         * @param halves whether two halves are filled or one plunger presses
         */
        record Press(double pressure, double spread, MouldDimensions.Filling halves) implements Filling {
            /**
             * Refuses what is missing, and what is no number.
             *
             * @param pressure at the top of the mould, Pa
             * @param spread one standard deviation of that pressure, as a factor
             * @param halves whether two halves are filled or one plunger presses
             */
            public Press {
                Given.all("halves", halves);
                Given.finite("pressure", pressure);
                Given.finite("spread", spread);
            }
        }

        /**
         * A piece that is finished, by its weight on the scale.
         *
         * @param mass of the whole piece, kg
         * @param hand spread of it from piece to piece, around 0, kg; empty for none
         * @param dried what its mix has become by drying, where that is known
         */
        record Finished(double mass, Optional<Prior> hand, Optional<Piece.Makeup> dried) implements Filling {
            /**
             * Refuses what is missing, and what is no number.
             *
             * @param mass of the whole piece, kg
             * @param hand spread of it from piece to piece, around 0, kg; empty for none
             * @param dried what its mix has become by drying, where that is known
             */
            public Finished {
                Given.all("hand, dried", hand, dried);
                Given.finite("mass", mass);
            }
        }
    }

    /**
     * A design whose openings are found here. May take some tenths of a second for a shape that dries.
     *
     * @param recipe the mix; empty where only the weight of the finished piece is known
     * @param shape inside of the mould
     * @param filling how the mix comes into the mould
     * @param drying how it is dried; empty for a piece that goes into the bath as it was pressed
     * @param bath the water
     * @param into whether it is dropped or placed
     * @param stillWater true to leave out everything that fizzes
     * @param measured how the size of the mould is known
     * @param scale the scale that weighs fill or piece
     * @throws IllegalArgumentException for a fill or a press without a recipe
     */
    public Design(
            Optional<Recipe> recipe,
            Shape shape,
            Filling filling,
            Optional<DryingConditions> drying,
            Bath bath,
            Question.IntoBath into,
            boolean stillWater,
            Measured measured,
            Scale scale) {
        this(recipe, shape, filling, drying, bath, into, stillWater, measured, scale, found(shape, filling, drying));
    }

    /** The open faces of a shape that dries; none for a finished piece, whose drying is past. */
    private static Optional<Standing.Openings> found(Shape shape, Filling filling, Optional<DryingConditions> drying) {
        return filling instanceof Filling.Finished
                ? Optional.empty()
                : drying.map(conditions -> Standing.Openings.of(shape, conditions.standing()));
    }

    /**
     * Checks that a fill or a press has a mix.
     *
     * @param recipe the mix; empty where only the weight of the finished piece is known
     * @param shape inside of the mould
     * @param filling how the mix comes into the mould
     * @param drying how it is dried; empty for a piece that goes into the bath as it was pressed
     * @param bath the water
     * @param into whether it is dropped or placed
     * @param stillWater true to leave out everything that fizzes
     * @param measured how the size of the mould is known
     * @param scale the scale that weighs fill or piece
     * @param openings the faces through which this shape dries; empty: found when they are needed
     * @throws IllegalArgumentException for a fill or a press without a recipe
     */
    public Design {
        Given.all(
                "recipe, shape, filling, drying, bath, into, measured, scale, openings",
                recipe,
                shape,
                filling,
                drying,
                bath,
                into,
                measured,
                scale,
                openings);
        if (recipe.isEmpty() && !(filling instanceof Filling.Finished)) {
            throw new IllegalArgumentException("a fill or a press needs a recipe");
        }
    }

    /**
     * {@return the question whether this piece floats}
     *
     * @throws org.fizzhull.quantity.Refusal for a weight that no piece of this shape has
     */
    public Question question() {
        return new Question(shape, making(), bath, into, stillWater, measured, scale);
    }

    /** {@return how the piece is made, for the forecasts: by a fill, by a press, or weighed} */
    public Making making() {
        if (filling instanceof Filling.Finished finished) {
            Optional<Blend> blend = recipe.isPresent() ? Optional.of(Blend.of(recipe.get())) : Optional.empty();
            return new Making.Weighed(finished.mass(), finished.hand(), blend, finished.dried());
        }
        Blend blend = Blend.of(recipe.orElseThrow());
        DryingPlan plan = drying.isPresent() ? plan(drying.get()) : DryingPlan.none();
        if (filling instanceof Filling.Fill fill) {
            return new Moulded.Filled(blend, fill.mass(), fill.hand(), plan);
        }
        Filling.Press press = (Filling.Press) filling;
        return new Moulded.Pressed(blend, press.pressure(), press.spread(), press.halves(), plan);
    }

    /** The phases of drying, with the openings where they are known. */
    private DryingPlan plan(DryingConditions conditions) {
        return openings.isPresent() ? conditions.plan(shape, openings.get()) : conditions.plan(shape);
    }

    /**
     * {@return this design with another mix}
     *
     * @param other recipe of the mix
     */
    public Design of(Recipe other) {
        Given.all("other", other);
        return new Design(
                Optional.of(other), shape, filling, drying, bath, into, stillWater, measured, scale, openings);
    }

    /**
     * {@return this design in another mould, whose openings are found here} A hollow shape in place of a plain one, or the other way
     * about, goes into the bath as is usual for it; else the way in stays.
     *
     * @param other inside of the mould
     */
    public Design in(Shape other) {
        Given.all("other", other);
        return in(other, found(other, filling, drying));
    }

    /**
     * {@return this design in another mould whose openings are known} As {@link #in(Shape)}, without finding them again.
     *
     * @param other inside of the mould
     * @param known the faces through which it dries; empty: found when they are needed
     */
    public Design in(Shape other, Optional<Standing.Openings> known) {
        Given.all("other, known", other, known);
        Question.IntoBath usual = other.hollow().isPresent() ? Question.IntoBath.PLACED : Question.IntoBath.DROPPED;
        boolean sameKind = other.hollow().isPresent() == shape.hollow().isPresent();
        return new Design(
                recipe, other, filling, drying, bath, sameKind ? into : usual, stillWater, measured, scale, known);
    }

    /**
     * {@return this design filled another way}
     *
     * @param other how the mould is filled
     */
    public Design filled(Filling other) {
        return new Design(recipe, shape, other, drying, bath, into, stillWater, measured, scale, openings);
    }

    /**
     * {@return this design with the size of the mould known another way}
     *
     * @param how how the size of the mould is known
     */
    public Design measured(Measured how) {
        return new Design(recipe, shape, filling, drying, bath, into, stillWater, how, scale, openings);
    }

    /**
     * {@return this design dried another way}
     *
     * @param other air, rack or tray, wrap, times
     */
    public Design dried(DryingConditions other) {
        boolean same = openings.isPresent() && openings.get().standing() == other.standing();
        Optional<Standing.Openings> ways = same ? openings : found(shape, filling, Optional.of(other));
        return new Design(recipe, shape, filling, Optional.of(other), bath, into, stillWater, measured, scale, ways);
    }

    /**
     * {@return this design put into the bath another way}
     *
     * @param way whether it is dropped or placed
     */
    public Design put(Question.IntoBath way) {
        return new Design(recipe, shape, filling, drying, bath, way, stillWater, measured, scale, openings);
    }
}
