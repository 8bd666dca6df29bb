package org.fizzhull.chain;

import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.result.Voyage;
import org.jspecify.annotations.Nullable;

/**
 * A piece that was pressed, dried and perhaps put away: the third stage, made by {@link DampPiece#dry}. Its course is
 * computed once, when it is made, as in a draw of a forecast: to some per cent of the water. Immutable; equal to another
 * that was made and dried alike.
 */
public final class DriedPiece {
    private final DampPiece damp;
    /** Fill or press, with the drying plan. */
    private final Making making;
    /** State of the piece from the mould to the end of the plan. */
    private final DryingCourse course;
    /** The piece at the end of the course. */
    private final Piece piece;

    DriedPiece(DampPiece damp, Making making) {
        this.damp = damp;
        this.making = making;
        course = CentralChain.course(damp.shape(), making);
        piece = course.piece(damp.shape(), course.end());
    }

    /** {@return the piece before it dried} */
    public DampPiece damp() {
        return damp;
    }

    /** {@return its form} */
    public Shape shape() {
        return damp.shape();
    }

    /** {@return what it is made of} */
    public Blend blend() {
        return damp.blend();
    }

    /** {@return its state at any time from the mould to the bath: water, mass, fizz} */
    public DryingCourse course() {
        return course;
    }

    /** {@return the piece as it goes into the bath: its mass, its pores, the gas it can still give, oil and starch} */
    public Piece piece() {
        return piece;
    }

    /** {@return its mass on the scale, kg, with crystals and toppings} */
    public double mass() {
        return piece.mass();
    }

    /** {@return the share of the fizz of its powders that it can still give, 0 to 1} */
    public double fizzLeft() {
        return piece.makeup().fizzLeft();
    }

    /** {@return when 95 % of its removable water was gone, s after pressing; empty where it was not within 60 days} */
    public OptionalDouble readyAfter() {
        return course.readyAfter();
    }

    /** {@return what the reader must know of its drying} */
    public List<Notice> notices() {
        return course.notices();
    }

    /**
     * {@return what becomes of it in a bath; a hollow shape is placed, others dropped}
     *
     * @param bath the water
     */
    public Voyage voyage(Bath bath) {
        return CentralChain.voyage(question().in(bath), piece);
    }

    /**
     * {@return what becomes of it in a bath}
     *
     * @param bath the water
     * @param way whether it is dropped or placed
     */
    public Voyage voyage(Bath bath, Question.IntoBath way) {
        return CentralChain.voyage(question().in(bath).into(way), piece);
    }

    /** {@return the question about this piece, for a predictor that knows chances; in a 38 C bath} */
    public Question question() {
        return Question.of(shape(), making);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DriedPiece that && damp.equals(that.damp) && making.equals(that.making);
    }

    @Override
    public int hashCode() {
        return 31 * damp.hashCode() + making.hashCode();
    }

    @Override
    public String toString() {
        return "dried piece of " + blend().recipe().name() + " in " + shape().text();
    }
}
