package org.fizzhull.forecast;

import java.util.OptionalDouble;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.voyage.Outcome;
import org.fizzhull.voyage.QuickVoyage;

/** The quick voyage of a piece that was timed, for any values of the inputs. One instance serves one thread. */
final class TimedVoyage {
    private final DropModel drop;
    private final QuickVoyage voyage;
    private final int hand;
    private final double displaced;

    /**
     * The asked piece, or one of another mass, kg: of the same mix, made and dried in the same way. The spread of a batch
     * is not that of one piece on the scale.
     */
    TimedVoyage(Posed posed, OptionalDouble mass) {
        Question question = posed.question();
        Factors factors = posed.factors();
        if (question.making() instanceof Weighed) {
            Question timed = mass.isPresent() ? question.weighing(mass.getAsDouble()) : question;
            drop = new DropModel(timed, factors);
        } else {
            Maker asked = question.making().maker(question.shape());
            double kilograms = mass.orElseThrow();
            double least = question.shape().insetMass() + Weighed.LEAST_BODY;
            drop = new DropModel(
                    question,
                    factors,
                    (draw, ratio) -> new Piece(
                            question.shape(),
                            Math.max(least, kilograms + draw.massError()),
                            asked.make(draw, ratio).makeup()));
        }
        voyage = new QuickVoyage(posed.form(), question.bath());
        hand = factors.column(Input.HAND);
        displaced = question.bath().density() * question.shape().volume();
    }

    /** Refuses a time of a piece whose mass is not known, or that no piece of this shape has. */
    static void check(Question question, TimedPiece piece, String field) {
        if (piece.mass().isPresent()) {
            try {
                PieceLimits.check(question.shape(), piece.mass().getAsDouble(), false);
            } catch (Refusal refusal) {
                throw refusal.of(field);
            }
        } else if (!(question.making() instanceof Weighed)) {
            throw new Refusal(
                    "missing-value",
                    field,
                    "a time without a weight",
                    "a time and the weight of the timed piece, such as 95 s at 150 g",
                    "Weigh the piece that you time just before it goes into the bath.");
        }
    }

    /** Until it is gone, s. */
    double fizz(double[] inputs) {
        spare(inputs);
        drop.sail(voyage);
        return voyage.fizzTime();
    }

    /**
     * Until it comes up, s, however little is left of it then: 0 where it floats at once, infinite where it stays down.
     */
    double rise(double[] inputs) {
        spare(inputs);
        drop.sailUntilRise(voyage);
        if (voyage.outcome() == Outcome.FLOATS_AT_ONCE) {
            return 0;
        }
        return voyage.upTime() > 0 ? voyage.upTime() : Double.POSITIVE_INFINITY;
    }

    /** How wide it was when it came up, m, in the last rise. */
    double width() {
        return voyage.upWidth();
    }

    /** What it could carry at the drop before it sinks, kg: no voyage, and so cheap. */
    double spare(double[] inputs) {
        if (hand < 0) {
            return drop.at(inputs);
        }
        double kept = inputs[hand];
        inputs[hand] = 0;
        double spare = drop.at(inputs);
        inputs[hand] = kept;
        return spare;
    }

    /** Mass that the shape displaces, kg. */
    double displaced() {
        return displaced;
    }
}
