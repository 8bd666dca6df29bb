package org.fizzhull.chain;

import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.result.Voyage;
import org.jspecify.annotations.Nullable;

/**
 * A damp piece, straight from the mould: the second stage, made by {@link Mix#fill} or {@link Mix#press}. Immutable; equal
 * to another of an equal mix, shape and fill or press. Nothing is kept: each method works its answer out anew.
 */
public final class DampPiece {
    private final Shape shape;
    /** Fill or press, with an empty drying plan. */
    private final Making making;

    DampPiece(Shape shape, Making making) {
        this.shape = shape;
        this.making = making;
    }

    /** {@return its form, which is the inside of the mould} */
    public Shape shape() {
        return shape;
    }

    /** {@return what it is made of} */
    public Blend blend() {
        return making.mix().orElseThrow();
    }

    /**
     * {@return the packing of the damp piece: pressure, solid fraction, saturation, strength, feel}
     *
     * @throws org.fizzhull.quantity.Refusal {@code does-not-fit} for a fill that the mould cannot hold, {@code
     *     out-of-range} for a pressure above 2 MPa
     */
    public Pressed pressed() {
        Press press = Press.of(blend());
        MouldDimensions mould = MouldDimensions.of(shape, MouldDimensions.Filling.usual(shape));
        return making instanceof Moulded.Filled filled
                ? press.fill(filled.dampMass(), mould)
                : press.press(((Moulded.Pressed) making).pressure(), mould);
    }

    /** {@return its mass on the scale before it dries, kg, with crystals and toppings} */
    public double mass() {
        return pressed().dampMass() + shape.insetMass();
    }

    /** {@return the piece as the bath takes it when it goes in at once; the prompt reaction of water and powder is done} */
    public Piece piece() {
        return CentralChain.piece(shape, making);
    }

    /**
     * {@return the piece after drying and keeping} The course is computed here: some tenths of a second for a mesh, milliseconds
     * for other shapes.
     *
     * @param conditions air, rack or tray, wrap, times
     */
    public DriedPiece dry(DryingConditions conditions) {
        return dry(conditions.plan(shape));
    }

    /**
     * {@return the piece after phases that a caller has laid out}
     *
     * @param plan at least one phase
     * @throws IllegalArgumentException for a plan without a phase
     */
    public DriedPiece dry(DryingPlan plan) {
        return new DriedPiece(this, with(plan));
    }

    /**
     * {@return what becomes of it in a bath, damp as it is; a hollow shape is placed, others dropped}
     *
     * @param bath the water
     */
    public Voyage voyage(Bath bath) {
        return CentralChain.voyage(question().in(bath), piece());
    }

    /** {@return the question about this piece, for a predictor that knows chances; in a 38 C bath} */
    public Question question() {
        return Question.of(shape, making);
    }

    /** The same making, followed by a drying plan. */
    private Making with(DryingPlan plan) {
        return making instanceof Moulded.Filled filled
                ? new Moulded.Filled(filled.blend(), filled.dampMass(), filled.hand(), plan)
                : with((Moulded.Pressed) making, plan);
    }

    private static Making with(Moulded.Pressed pressed, DryingPlan plan) {
        return new Moulded.Pressed(pressed.blend(), pressed.pressure(), pressed.pressSpread(), pressed.filling(), plan);
    }

    /** How it was made, for the stages of this package. */
    Making making() {
        return making;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DampPiece that && shape.equals(that.shape) && making.equals(that.making);
    }

    @Override
    public int hashCode() {
        return 31 * shape.hashCode() + making.hashCode();
    }

    @Override
    public String toString() {
        return "damp piece of " + blend().recipe().name() + " in " + shape.text();
    }
}
