package org.fizzhull.forecast.prepared;

import java.util.Optional;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;

/**
 * A question and what is worked out of it once, however often it is answered: of a mesh the form costs tenths of a
 * second.
 *
 * <p>What depends on shape and way into the bath alone is in it; weight, mix and bath may change ({@link #ask}).
 * Immutable; shared by all threads of an answer.
 *
 * @param question what was asked
 * @param factors the uncertain inputs that it asks
 * @param rest how the piece lies on the bottom, and floats nearly awash
 * @param waterborne the form that all its voyages share; empty in still water, where there is none
 */
public record PreparedQuestion(
        Question question, Factors factors, RestingAttitude rest, Optional<VoyageForm> waterborne) {
    /**
     * Refuses what is missing.
     *
     * @param question what was asked
     * @param factors the uncertain inputs that it asks
     * @param rest how the piece lies on the bottom, and floats nearly awash
     * @param waterborne the form that all its voyages share; empty in still water, where there is none
     */
    public PreparedQuestion {
        Given.all("question, factors, rest, waterborne", question, factors, rest, waterborne);
    }

    /** Weight over that of the water pushed aside at which a piece sinks first, and comes up later (a tenth over). */
    private static final double SINKS_FIRST = 1.1;

    /**
     * {@return a question to priors}
     *
     * @param question what was asked
     * @param priors table of priors
     */
    public static PreparedQuestion of(Question question, Factors priors) {
        RestingAttitude rest = question.shape().restingAttitude();
        return new PreparedQuestion(
                question,
                priors.asked(question),
                rest,
                question.stillWater() ? Optional.empty() : Optional.of(form(question, rest)));
    }

    /**
     * {@return the same of a question that is answered by one voyage: what the voyage does not come past is not worked
     * out; serves one thread}
     *
     * @param question what was asked
     * @param priors table of priors
     */
    public static PreparedQuestion forOneVoyage(Question question, Factors priors) {
        RestingAttitude rest = question.shape().restingAttitude();
        return new PreparedQuestion(
                question,
                priors.asked(question),
                rest,
                question.stillWater()
                        ? Optional.empty()
                        : Optional.of(VoyageForm.forOneVoyage(question.shape(), rest, release(question))));
    }

    /** The form of the voyages of a question. */
    private static VoyageForm form(Question question, RestingAttitude rest) {
        return VoyageForm.of(question.shape(), rest, release(question));
    }

    /** The way into the bath. */
    private static Release release(Question question) {
        return question.into() == Question.IntoBath.PLACED ? Release.PLACED : Release.DROPPED;
    }

    /**
     * {@return another question to the same priors, of the same shape that goes in the same way: another bath, another
     * weight}
     *
     * @param other the other question
     */
    public PreparedQuestion ask(Question other) {
        return new PreparedQuestion(other, factors, rest, waterborne);
    }

    /**
     * {@return the weight of a piece that sinks first by the usual values and comes up later, kg: the one whose rise
     * would be timed}
     */
    public double heavier() {
        Shape shape = question.shape();
        double neutral = question.bath().density() * (shape.volume() + shape.insetVolume());
        return Math.min(SINKS_FIRST * neutral, PieceLimits.heaviest(shape, question.stillWater()));
    }

    /**
     * {@return the form of a piece that fizzes}
     *
     * @throws java.util.NoSuchElementException in still water, where there is no voyage
     */
    public VoyageForm form() {
        return waterborne.orElseThrow();
    }
}
