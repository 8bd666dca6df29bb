package org.fizzhull.decide.compare;

import org.fizzhull.decide.Mould;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Given;

/**
 * One of several things to choose from: a mould and what is asked of the piece it makes. {@link Comparison#of} takes a list of
 * them.
 *
 * @param mould mould that makes it
 * @param question the piece, how it is made, and its bath
 */
public record Candidate(Mould mould, Question question) {
    /**
     * Refuses what is missing.
     *
     * @param mould mould that makes it
     * @param question the piece, how it is made, and its bath
     */
    public Candidate {
        Given.all("mould, question", mould, question);
    }

    /**
     * {@return a candidate whose mould has no name but the shape's}
     *
     * @param question the piece, how it is made, and its bath
     */
    public static Candidate of(Question question) {
        return new Candidate(Mould.of(question.shape()), question);
    }
}
