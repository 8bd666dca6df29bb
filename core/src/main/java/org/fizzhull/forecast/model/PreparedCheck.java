package org.fizzhull.forecast.model;

import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatCheck;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.result.Voyage;

/** A {@link FloatCheck} of a question that is prepared to its priors. Immutable, but for one made for a single voyage. */
public final class PreparedCheck implements FloatCheck {
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
    public PreparedCheck(Question put, Factors priors, PreparedQuestion prepared, double[] centre) {
        this.put = put;
        this.priors = priors;
        this.prepared = prepared;
        this.centre = centre.clone();
    }

    @Override
    public Question question() {
        return prepared.question();
    }

    @Override
    public FloatCheck.Floats floats() {
        return floats(prepared);
    }

    @Override
    public FloatCheck.Floats floats(double mass) {
        Question other = put.weighing(mass);
        if (other.making() instanceof Moulded.Filled filled) {
            PieceLimits.checkFill(other.shape(), filled);
        }
        Question judged = TippingBoat.judged(other, priors);
        boolean sameWay = judged.into() == question().into();
        return floats(sameWay ? prepared.ask(judged) : PreparedQuestion.of(judged, priors));
    }

    /** By one voyage of the central values; in still water by the balance alone. */
    private FloatCheck.Floats floats(PreparedQuestion asked) {
        DropModel drop = new DropModel(asked);
        double spare = drop.at(centre);
        if (asked.question().stillWater()) {
            return new FloatCheck.Floats(drop.mass(), spare > 0, spare > 0, spare);
        }
        QuickVoyage voyage = voyage();
        boolean toTheEnd = voyage.floatsToTheEnd(drop.launch());
        return new FloatCheck.Floats(drop.mass(), voyage.outcome() == Voyage.Outcome.FLOATS_AT_ONCE, toTheEnd, spare);
    }

    @Override
    public double heaviest() {
        DropModel drop = new DropModel(prepared);
        double spare = drop.at(centre);
        if (question().stillWater()) {
            return drop.mass() + spare;
        }
        QuickVoyage voyage = voyage();
        CriticalSearch search = new CriticalSearch(question(), drop, voyage);
        voyage.run(drop.launch());
        search.search(1, voyage.staysToTheEnd());
        return search.end;
    }

    /** Scratch space of one question: a check is shared by threads, a voyage is not. */
    private QuickVoyage voyage() {
        return new QuickVoyage(prepared.form(), question().bath());
    }
}
