package org.fizzhull.forecast.measured;

import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Given;

/**
 * What was measured on pieces of a question: their mix, mould and bath. Where it is told to a table of other questions, it
 * informs the inputs that they share.
 *
 * @param like the question whose pieces were measured
 * @param seen what was measured on them
 */
public record MeasuredPieces(Question like, Observations seen) {
    /**
     * Refuses what is missing.
     *
     * @param like the question whose pieces were measured
     * @param seen what was measured on them
     */
    public MeasuredPieces {
        Given.all("like, seen", like, seen);
    }
}
