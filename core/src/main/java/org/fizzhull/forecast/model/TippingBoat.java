package org.fizzhull.forecast.model;

import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Maker;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.DropBalance;

/**
 * Open shapes that do not stay as they are set down, light as they are: they tip till the rim goes under, and are
 * judged as dropped, full of water. Judged once for a question, by the central piece: else the answer would mix two
 * questions. A boat that is too heavy swamps in each draw by itself and is left alone. Stateless. Stability:
 * docs/physics/hydrostatics.md, 3.
 */
public final class TippingBoat {
    /** Told where an open shape is judged full of water because it would tip. */
    public static final Notice NOTICE = new Notice(
            "boat-tips",
            "Set down open side up it does not stay: it tips till its rim goes under. It is judged full of water, as if it"
                    + " were dropped.");

    private TippingBoat() {}

    /**
     * {@return the question itself, or the same for a dropped piece where the placed one tips}
     *
     * @param question what is asked
     * @param factors table of priors; the question adds its own rows
     */
    public static Question judged(Question question, Factors factors) {
        Given.all("factors", factors);
        Shape shape = question.shape();
        if (question.into() != Question.IntoBath.PLACED || shape.hollow().isEmpty()) {
            return question;
        }
        Factors asked = factors.asked(question);
        Draw central = Draw.of(asked.rows(), asked.medians());
        double ratio = DropBalance.volumeRatio(shape.surface(), shape.volume(), central.sizeError());
        Piece piece = Maker.of(question.making(), shape).make(central, ratio);
        double density = question.bath().density();
        // one above its limit swamps in each draw by itself
        boolean below = piece.mass() < density * BoatLimit.displaced(shape, density);
        return below && !BoatLimit.stands(shape, piece.mass(), density)
                ? question.into(Question.IntoBath.DROPPED)
                : question;
    }
}
