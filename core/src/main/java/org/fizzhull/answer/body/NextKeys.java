package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;

/**
 * The measurement that would tell most, as the key {@code measure_next} of {@code float}, {@code advise} and {@code learn}:
 * the 95 % interval of the critical weight with it and without it, and the chance that it settles the question.
 */
final class NextKeys {
    private static final String WIDTH = "width of the 95 % interval of the critical weight";
    private static final String LOW_WITH = ": low with, high without";

    /** What is narrowed, where the piece asked about may differ from the next one. */
    static final String LESS_THE_PIECES_OWN = WIDTH + " less the piece's own" + LOW_WITH;

    /** The same, where low and high are explained elsewhere. */
    static final String LESS_THE_PIECES_OWN_ALONE = WIDTH + " less the piece's own";

    /** What is narrowed, of the weight alone. */
    static final String OF_THE_CRITICAL_WEIGHT = WIDTH + LOW_WITH;

    private NextKeys() {}

    /** Writes the object, or null where nothing more would tell much. */
    static void write(
            AnswerWriter to, Optional<MeasureNext> proposed, Question question, NextWords words, String narrows) {
        to.object(
                "measure_next",
                proposed,
                next -> to.text("what", words.what(next, question))
                        .text("type", words.type(next))
                        .object("narrows")
                        .text("what", narrows)
                        .text("unit", "g")
                        .number("low", inGrams(next.widthAfter()))
                        .number("high", inGrams(next.widthBefore()))
                        .end()
                        .number("settles", next.settles()));
    }

    /** The notice for a proposed measurement that nobody words. */
    static Optional<Notice> unworded(Optional<MeasureNext> proposed, NextWords words) {
        return proposed.isPresent() && words == NextWords.NONE
                ? Optional.of(Notice.remark(
                        "no-words", "Texts in measure_next are null: the answer was asked for without words."))
                : Optional.empty();
    }
}
