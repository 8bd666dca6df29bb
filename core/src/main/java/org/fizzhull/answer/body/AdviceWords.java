package org.fizzhull.answer.body;

import java.util.Optional;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;

/**
 * Sentences of an advice, which only the program that talks to people can word: they name its options, its units, its
 * language. The values never depend on them. Implement it to add sentences to {@link AdviceAnswer}.
 */
public interface AdviceWords {
    /** No words: the keys are null. */
    AdviceWords NONE = new AdviceWords() {
        @Override
        public Optional<String> answer(Advice advice) {
            return Optional.empty();
        }

        @Override
        public Optional<String> note(Change change) {
            return Optional.empty();
        }

        @Override
        public Optional<String> type(Change change) {
            return Optional.empty();
        }

        @Override
        public NextWords next() {
            return NextWords.NONE;
        }
    };

    /**
     * {@return how the design stands and what to do, in a sentence}
     *
     * @param advice what {@code decide.advise} found
     */
    Optional<String> answer(Advice advice);

    /**
     * {@return what a maker does differently for this change, in a sentence}
     *
     * @param change a proposal
     */
    Optional<String> note(Change change);

    /**
     * {@return what to type to try the change}
     *
     * @param change a proposal
     */
    Optional<String> type(Change change);

    /** {@return the words for what to measure next} */
    NextWords next();
}
