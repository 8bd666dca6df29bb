package org.fizzhull.answer;

import java.util.Optional;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;

/** Sentences of an advice, which only the program that talks to people can word. The values never depend on them. */
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
     * {@return how it stands and what to do}
     *
     * @param advice what the library found
     */
    Optional<String> answer(Advice advice);

    /**
     * {@return what is done differently}
     *
     * @param change a proposal
     */
    Optional<String> note(Change change);

    /**
     * {@return what to type to try it}
     *
     * @param change a proposal
     */
    Optional<String> type(Change change);

    /** {@return the words for what to measure next} */
    NextWords next();
}
