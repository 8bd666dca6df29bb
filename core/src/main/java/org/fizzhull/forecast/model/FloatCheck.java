package org.fizzhull.forecast.model;

import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.PieceLimits;
import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.voyage.Outcome;
import org.fizzhull.voyage.QuickVoyage;

/**
 * The cheap question, for shops and planners that ask it of thousands of pieces: does a piece of this shape and mix
 * float in this bath, by the central values? What depends on the shape alone (its depth profile, the attitude it takes,
 * how much of it is wet at each draft) is worked out once, then each weight costs one voyage.
 *
 * <p>Left out, and so much cheaper than a forecast: chances and intervals (no draws), what decides the answer, the ways
 * it floats, which measurement would tell most. What both tell is the same to the last bit: {@link Floats#spareAtDrop},
 * {@link Floats#toTheEnd} and {@link #heaviest} are the spare, the verdict and the critical weight of a forecast
 * without draws.
 *
 * <p>Immutable; safe to share between threads, but for one made for a single voyage, which its maker keeps to itself.
 * Cost: of a ball some 20 us to prepare and 5 us a weight, of an egg 600 us and 5 us; core/docs/embedding.md has the
 * measured ratios. A made piece is pressed and dried anew for each weight, about a millisecond.
 */
public final class FloatCheck {
    /** What was asked, before it was judged. */
    private final Question put;
    /** Table of priors: a weight that tips a boat prepares the question anew. */
    private final Factors priors;
    /** The question as it is judged, prepared. */
    private final PreparedQuestion prepared;
    /** Central value of each of its uncertain inputs, SI. */
    private final double[] centre;

    /**
     * Of a question and what was worked out of it.
     *
     * @param put what was asked
     * @param priors table of priors
     * @param prepared the same question as it is judged, prepared to those priors
     * @param centre central value of each of its uncertain inputs, SI
     */
    public FloatCheck(Question put, Factors priors, PreparedQuestion prepared, double[] centre) {
        this.put = put;
        this.priors = priors;
        this.prepared = prepared;
        this.centre = centre.clone();
    }

    /** {@return what was asked; an open shape that tips is judged as dropped} */
    public Question question() {
        return prepared.question();
    }

    /** {@return whether the piece of the question floats} */
    public Floats floats() {
        return floats(prepared);
    }

    /**
     * {@return whether a piece of another weight floats: on the scale as it goes into the bath, of a fill the damp
     * weight that goes into the mould, kg}
     *
     * @param mass weight, kg
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for a weight that no pressed piece of this shape has
     */
    public Floats floats(double mass) {
        Question other = put.weighing(mass);
        if (other.making() instanceof FilledMould filled) {
            PieceLimits.checkFill(other.shape(), filled);
        }
        Question judged = TippingBoat.judged(other, priors);
        boolean sameWay = judged.into() == question().into();
        return floats(sameWay ? prepared.ask(judged) : PreparedQuestion.of(judged, priors));
    }

    /** By one voyage of the central values; in still water by the balance alone. */
    private Floats floats(PreparedQuestion asked) {
        DropModel drop = new DropModel(asked);
        double spare = drop.at(centre);
        if (asked.question().stillWater()) {
            return new Floats(drop.mass(), spare > 0, spare > 0, spare);
        }
        QuickVoyage voyage = voyage();
        boolean toTheEnd = drop.floatsToTheEnd(voyage);
        return new Floats(drop.mass(), voyage.outcome() == Outcome.FLOATS_AT_ONCE, toTheEnd, spare);
    }

    /**
     * {@return the critical weight by the central values: the heaviest piece of this shape and mix, as it goes into the
     * bath, that floats to the end, kg} To 0.03 % of the weight. Costs about ten voyages.
     */
    public double heaviest() {
        DropModel drop = new DropModel(prepared);
        double spare = drop.at(centre);
        if (question().stillWater()) {
            return drop.mass() + spare;
        }
        QuickVoyage voyage = voyage();
        CriticalSearch search = new CriticalSearch(question(), drop, voyage);
        drop.sail(voyage);
        search.search(1, voyage.staysToTheEnd());
        return search.end;
    }

    /** Scratch space of one question: a check is shared by threads, a voyage is not. */
    private QuickVoyage voyage() {
        return new QuickVoyage(prepared.form(), question().bath());
    }
}
