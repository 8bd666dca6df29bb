package org.fizzhull.answer;

import java.util.Optional;
import org.fizzhull.decide.why.Check;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Interval;

/**
 * Sentences about what most likely happened, which only the program that talks to people can word. The values never
 * depend on them.
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
     * @param why what the library found
     */
    Optional<String> answer(Why why);

    /**
     * {@return what in the numbers points to a cause}
     *
     * @param why what the library found
     * @param chance the cause
     */
    Optional<String> because(Why why, Why.Chance chance);

    /**
     * {@return what a check would show, from to}
     *
     * @param check which one
     * @param value 95 % interval of the reading: kg, m, s or a share
     */
    Optional<String> reading(Check check, Interval value);

    /**
     * {@return what to type once the best check was made}
     *
     * @param best the check
     */
    Optional<String> type(Why.BestCheck best);

    /** {@return what to type for the smallest change} */
    Optional<String> type();
}
