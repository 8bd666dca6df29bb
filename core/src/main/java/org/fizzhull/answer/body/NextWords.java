package org.fizzhull.answer.body;

import java.util.Optional;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;

/**
 * Sentences for a proposed measurement, which only the program that talks to people can word: what to do, and what to type
 * or press. The values beside them never depend on the words. Override what is worded of it, to add sentences to {@link FloatAnswer},
 * {@link AdviceAnswer} and {@link LearnAnswer}.
 */
public interface NextWords {
    /** No words: the keys are null. */
    NextWords NONE = new NextWords() {};

    /**
     * {@return what to do, in a plain sentence without its full stop}
     *
     * @param next the measurement that would tell most
     * @param question the piece it is to tell of
     */
    default Optional<String> what(MeasureNext next, Question question) {
        return Optional.empty();
    }

    /**
     * {@return what to type once it was made}
     *
     * @param next the measurement that would tell most
     */
    default Optional<String> type(MeasureNext next) {
        return Optional.empty();
    }
}
