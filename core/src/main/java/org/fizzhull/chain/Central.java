package org.fizzhull.chain;

import org.fizzhull.drying.DryingCourse;
import org.fizzhull.forecast.making.DryOff;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Packing;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.model.DryModel;
import org.fizzhull.forecast.model.ReadyTimes;
import org.fizzhull.forecast.model.TippingBoat;
import org.fizzhull.forecast.prior.Draw;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Voyage;

/** One stage after the other with every uncertain input at its median, as a forecast without draws has them. */
final class Central {
    private Central() {}

    private static Draw draw(Question question) {
        Factors asked = Factors.standard().asked(question);
        return asked.at(asked.medians());
    }

    static Piece piece(Shape shape, Making making) {
        return making.maker(shape).make(draw(Question.of(shape, making)), 1);
    }

    static DryingCourse course(Shape shape, Making making) {
        DryModel.Made made = DryModel.Made.of(making);
        if (made.plan().phases().isEmpty()) {
            throw new IllegalArgumentException("drying needs a plan with a phase");
        }
        Packing.Packed packed = made.packing(shape).of(draw(Question.of(shape, making)), 1);
        DryOff drying = new DryOff(shape, made.plan());
        return drying.course(drying.input(packed), made.plan().phases(), ReadyTimes.LONGEST, packed.making());
    }

    static Voyage voyage(Question put, Piece piece) {
        Question question = TippingBoat.judged(put, Factors.standard());
        PreparedQuestion posed = PreparedQuestion.of(question, Factors.standard());
        DropModel drop = new DropModel(posed, (draw, ratio) -> piece);
        drop.at(posed.factors().medians());
        return drop.sail(FullVoyage.of(posed.form(), question.bath()));
    }
}
