package org.fizzhull.forecast.conditioning;

import java.util.OptionalDouble;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.maker.Maker;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.voyage.HeldUnder;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.result.Voyage;

/**
 * The quick voyage of a piece that was measured, for any values of the inputs: what the solvers work with. The piece is of the
 * same mix as the one asked about, made and dried in the same way, and may have another weight; its porosity follows.
 * One instance serves one thread.
 */
public final class TimedVoyage {
    /** Makes the piece and its balance at the drop. */
    private final DropModel drop;
    /** Scratch space; holds the last voyage. */
    private final QuickVoyage voyage;
    /** Column of the spread of a batch, set to 0 here; -1 for none. */
    private final int hand;
    /** Mass that the shape displaces, kg. */
    private final double displaced;

    /**
     * The asked piece, or one of another mass, kg: of the same mix, made and dried in the same way. The spread of a
     * batch is not that of one piece on the scale.
     *
     * @param prepared the prepared question
     * @param mass kg
     */
    public TimedVoyage(PreparedQuestion prepared, OptionalDouble mass) {
        Question question = prepared.question();
        Factors factors = prepared.factors();
        if (question.making() instanceof Making.Weighed) {
            Question timed = mass.isPresent() ? question.weighing(mass.getAsDouble()) : question;
            drop = new DropModel(prepared.ask(timed));
        } else {
            Maker asked = Maker.of(question.making(), question.shape());
            double kilograms = mass.orElseThrow();
            double least = question.shape().insetMass() + Making.Weighed.LEAST_BODY;
            drop = new DropModel(
                    prepared,
                    (draw, ratio) -> new Piece(
                            question.shape(),
                            Math.max(least, kilograms + draw.massError()),
                            asked.make(draw, ratio).makeup()));
        }
        voyage = new QuickVoyage(prepared.form(), question.bath());
        hand = factors.column(Input.HAND);
        displaced = question.bath().density() * question.shape().volume();
    }

    /** Refuses a time of a piece whose mass is not known, or that no piece of this shape has. */
    static void check(Question question, OptionalDouble mass, String field) {
        if (mass.isPresent()) {
            try {
                PieceLimits.check(question.shape(), mass.getAsDouble(), false);
            } catch (Refusal refusal) {
                throw refusal.of(field);
            }
        } else if (!(question.making() instanceof Making.Weighed)) {
            throw new Refusal(
                    "missing-value",
                    field,
                    "a measurement without the weight of its piece",
                    "the weight of that piece behind it, such as 95 s at 150 g",
                    "Weigh the piece just before it goes into the bath.");
        }
    }

    /**
     * {@return until it is gone, s}
     *
     * @param inputs values of the inputs of the draw, SI
     */
    public double fizz(double[] inputs) {
        spare(inputs);
        voyage.run(drop.launch());
        return voyage.fizzTime();
    }

    /**
     * {@return until it comes up, s, however little is left of it then: 0 where it floats at once, infinite where it
     * stays down}
     *
     * @param inputs values of the inputs of the draw, SI
     */
    public double rise(double[] inputs) {
        spare(inputs);
        voyage.runUntilRise(drop.launch());
        if (voyage.outcome() == Voyage.Outcome.FLOATS_AT_ONCE) {
            return 0;
        }
        return voyage.upTime() > 0 ? voyage.upTime() : Double.POSITIVE_INFINITY;
    }

    /** What a tared scale shows while it is held wholly under, kg; no voyage either. */
    double held(double[] inputs, HeldUnder bowl, double seconds, boolean plumeFelt) {
        spare(inputs);
        return bowl.reading(drop.launch(), seconds, plumeFelt);
    }

    /** How wide it was when it came up, m, in the last rise. */
    double width() {
        return voyage.upWidth();
    }

    /**
     * What it could carry at the drop before it sinks, kg: no voyage, and so cheap. The spread of a batch is set to 0
     * for the call, since the measured piece was weighed by itself.
     */
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

    /** Mass of water that the shape displaces, kg. */
    double displaced() {
        return displaced;
    }
}
