package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;

/**
 * What is asked of a {@link FloatPredictor}: {@code Question.weighed(ball, grams(138)).in(Bath.at(celsius(38)))}.
 * Immutable; each method returns a changed copy.
 *
 * @param shape form of the piece
 * @param mass of the whole piece as it goes into the bath, kg
 * @param hand spread of that mass across a batch, as a prior around 0, kg; empty for one weighed piece
 * @param bath the water
 * @param into how it goes in
 * @param stillWater true to leave out everything that fizzes: pure hydrostatics
 * @param measured how the size of the mould is known
 */
public record Question(
        Shape shape,
        double mass,
        Optional<Prior> hand,
        Bath bath,
        IntoBath into,
        boolean stillWater,
        Measured measured) {

    /** Bath temperature where none is given, K. */
    public static final double DEFAULT_TEMPERATURE = Units.celsius(38);

    /** Refuses a mass that no pressed piece of this volume has. */
    public Question {
        PieceLimits.check(shape, mass, stillWater);
    }

    /** A piece on the scale, mass in kg; a 38 C bath, hollow shapes placed and others dropped, calipers. */
    public static Question weighed(Shape shape, double mass) {
        return of(shape, mass, false);
    }

    /** Any body, mass in kg, in still water without fizz; else as {@link #weighed}. */
    public static Question still(Shape shape, double mass) {
        return of(shape, mass, true);
    }

    private static Question of(Shape shape, double mass, boolean stillWater) {
        IntoBath into = shape.hollow().isPresent() ? IntoBath.PLACED : IntoBath.DROPPED;
        Bath bath = Bath.at(DEFAULT_TEMPERATURE);
        return new Question(shape, mass, Optional.empty(), bath, into, stillWater, Measured.CALIPERS);
    }

    /** In another bath. */
    public Question in(Bath other) {
        return new Question(shape, mass, hand, other, into, stillWater, measured);
    }

    /** With a spread of the fill across the batch, around 0, kg. */
    public Question spread(Prior aroundZero) {
        return new Question(shape, mass, Optional.of(aroundZero), bath, into, stillWater, measured);
    }

    /** Put into the bath another way. */
    public Question into(IntoBath way) {
        return new Question(shape, mass, hand, bath, way, stillWater, measured);
    }

    /** With the mould's size known another way. */
    public Question measured(Measured how) {
        return new Question(shape, mass, hand, bath, into, stillWater, how);
    }

    /** With another mass, kg. */
    Question weighing(double kilograms) {
        return new Question(shape, kilograms, hand, bath, into, stillWater, measured);
    }

    /** The piece that is asked about; its mix is the usual one. */
    public Piece piece() {
        return new Piece(shape, mass, Makeup.usual());
    }
}
