package org.fizzhull.answer.body;

import java.util.Optional;
import org.fizzhull.decide.why.Check;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Interval;

/**
 * Sentences about what most likely happened, which only the program that talks to people can word. The values never
 * depend on them. Implement it to add sentences to {@link WhyAnswer}.
 */
public interface DiagnosisWords {
    /** No words: the keys are null. */
    DiagnosisWords NONE = new DiagnosisWords() {
        @Override
        public Optional<String> answer(Why why) {
            return Optional.empty();
        }

        @Override
        public Optional<String> because(Why why, Why.Chance chance) {
            return Optional.empty();
        }

        @Override
        public Optional<String> reading(Check check, Interval value) {
            return Optional.empty();
        }

        @Override
        public Optional<String> type(Why.BestCheck best) {
            return Optional.empty();
        }

        @Override
        public Optional<String> type() {
            return Optional.empty();
        }
    };

    /**
     * {@return the likeliest cause in a sentence}
     *
     * @param why causes with their chances
     */
    Optional<String> answer(Why why);

    /**
     * {@return what in the numbers points to a cause}
     *
     * @param why causes with their chances
     * @param chance the cause in question
     */
    Optional<String> because(Why why, Why.Chance chance);

    /**
     * {@return what a check would show if a cause were true: a range in words}
     *
     * @param check the measurement or look that tells causes apart
     * @param value 95 % interval of the reading: kg, m, s or a share, as the check has it
     */
    Optional<String> reading(Check check, Interval value);

    /**
     * {@return what to type once the best check was made}
     *
     * @param best the check that tells most
     */
    Optional<String> type(Why.BestCheck best);

    /** {@return what to type to be told the smallest change that mends it} */
    Optional<String> type();
}
