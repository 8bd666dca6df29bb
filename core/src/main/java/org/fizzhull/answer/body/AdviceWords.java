package org.fizzhull.answer.body;

import java.util.Optional;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;

/**
 * Sentences of an advice, which only the program that talks to people can word: they name its options, its units, its
 * language. The values never depend on them. Override what is worded of it, to add sentences to {@link AdviceAnswer}.
 */
public interface AdviceWords {
    /** No words: the keys are null. */
    AdviceWords NONE = new AdviceWords() {};

    /**
     * {@return how the design stands and what to do, in a sentence}
     *
     * @param advice what {@code decide.advise} found
     */
    default Optional<String> answer(Advice advice) {
        return Optional.empty();
    }

    /**
     * {@return what a maker does differently for this change, in a sentence}
     *
     * @param change a proposal
     */
    default Optional<String> note(Change change) {
        return Optional.empty();
    }

    /**
     * {@return what to type to try the change}
     *
     * @param change a proposal
     */
    default Optional<String> type(Change change) {
        return Optional.empty();
    }

    /** {@return the words for what to measure next} */
    default NextWords next() {
        return NextWords.NONE;
    }
}
