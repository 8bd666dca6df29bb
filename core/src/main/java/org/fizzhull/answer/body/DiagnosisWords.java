package org.fizzhull.answer.body;

import java.util.Optional;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Interval;

/**
 * Sentences about what most likely happened, which only the program that talks to people can word. The values never
 * depend on them. Override what is worded of it, to add sentences to {@link WhyAnswer}.
 */
public interface DiagnosisWords {
    /** No words: the keys are null. */
    DiagnosisWords NONE = new DiagnosisWords() {};

    /**
     * {@return the likeliest cause in a sentence}
     *
     * @param why causes with their chances
     */
    default Optional<String> answer(Why why) {
        return Optional.empty();
    }

    /**
     * {@return what in the numbers points to a cause}
     *
     * @param why causes with their chances
     * @param chance the cause in question
     */
    default Optional<String> because(Why why, Why.Chance chance) {
        return Optional.empty();
    }

    /**
     * {@return what a check would show if a cause were true: a range in words}
     *
     * @param check the measurement or look that tells causes apart
     * @param value 95 % interval of the reading: kg, m, s or a share, as the check has it
     */
    default Optional<String> reading(Why.Check check, Interval value) {
        return Optional.empty();
    }

    /**
     * {@return what to type once the best check was made}
     *
     * @param best the check that tells most
     */
    default Optional<String> type(Why.BestCheck best) {
        return Optional.empty();
    }

    /** {@return what to type to be told the smallest change that mends it} */
    default Optional<String> type() {
        return Optional.empty();
    }
}
