package org.fizzhull.chain;

import org.fizzhull.drying.DryingCourse;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Maker;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.result.Voyage;

/**
 * One stage after the other with every uncertain input at its median, by the very models that draw a forecast: so the
 * numbers of {@link Mix} and its followers are those of a forecast without draws. A median of inputs need not give the
 * median of the results.
 */
final class CentralChain {
    private CentralChain() {}

    /** The draw in which every uncertain input of the question has its median. */
    private static Draw draw(Question question) {
        Factors asked = Factors.standard().asked(question);
        return Draw.of(asked.rows(), asked.medians());
    }

    /**
     * {@return the piece as it goes into the bath}
     *
     * @param shape form of the piece
     * @param making how it is made
     */
    static Piece piece(Shape shape, Making making) {
        return Maker.of(making, shape).make(draw(Question.of(shape, making)), 1);
    }

    /**
     * {@return the course of drying from the mould to the end of the plan}
     *
     * @param shape form of the piece
     * @param making how it is made, its drying plan included
     * @throws IllegalArgumentException for a plan without a phase
     */
    static DryingCourse course(Shape shape, Making making) {
        Moulded made = Moulded.of(making);
        if (made.plan().phases().isEmpty()) {
            throw new IllegalArgumentException("drying needs a plan with a phase");
        }
        // packing first, since the course starts from the damp piece
        Packing.Packed packed = Packing.of(made, shape).of(draw(Question.of(shape, making)), 1);
        PlannedDrying drying = new PlannedDrying(shape, made.plan());
        return drying.course(drying.input(packed), made.plan().phases(), ReadyTimes.LONGEST, packed.making());
    }

    /**
     * {@return what becomes of a piece in the bath}
     *
     * @param asked bath and way in; an open shape that would tip is judged as dropped
     * @param piece the piece, of the same shape
     */
    static Voyage voyage(Question asked, Piece piece) {
        Question question = TippingBoat.judged(asked, Factors.standard());
        PreparedQuestion prepared = PreparedQuestion.of(question, Factors.standard());
        DropModel drop = new DropModel(prepared, (draw, ratio) -> piece);
        drop.at(prepared.factors().medians());
        return FullVoyage.of(prepared.form(), question.bath()).run(drop.launch());
    }
}
