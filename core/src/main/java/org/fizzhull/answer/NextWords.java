package org.fizzhull.answer;

import java.util.Optional;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;

/**
 * Sentences for a proposed measurement, which only the program that talks to people can word: what to do, and what to type
 * or press. The values beside them never depend on the words.
 */
public interface NextWords {
    /** No words: the keys are null. */
    NextWords NONE = new NextWords() {
        @Override
        public Optional<String> what(MeasureNext next, Question question) {
            return Optional.empty();
        }

        @Override
        public Optional<String> type(MeasureNext next) {
            return Optional.empty();
        }
    };

    /**
     * {@return what to do, in a plain sentence without its full stop}
     *
     * @param next which measurement
     * @param question about which piece
     */
    Optional<String> what(MeasureNext next, Question question);

    /**
     * {@return what to type}
     *
     * @param next which measurement
     */
    Optional<String> type(MeasureNext next);
}
