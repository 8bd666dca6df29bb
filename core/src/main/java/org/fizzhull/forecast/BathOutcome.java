package org.fizzhull.forecast;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.SerialForm;

/**
 * What becomes of a piece in the bath, without the rest of a {@link Forecast}: no indices, no attitudes, no next
 * measurement, and so cheaper: six to nine tenths of its cost for a weighed piece, by the shape. What both hold is the
 * same to the byte for the same question and draws.
 *
 * @param question as it was judged: a boat that tips counts as dropped
 * @param piece by the central values
 * @param mass as it goes into the bath, kg; empty for a piece on the scale
 * @param critical the heaviest weight that floats, draw by draw
 * @param probability chances of a piece taken at random; empty for central values
 * @param fizzTime when 1 % of it is left, s; empty in still water
 * @see FloatPredictor#outcome
 */
public record BathOutcome(
        Question question,
        Piece piece,
        Optional<Interval> mass,
        CriticalWeights critical,
        Optional<Probability> probability,
        Optional<Interval> fizzTime)
        implements Serializable {

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
