package org.fizzhull.decide.why;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Notice;

/** The parts of a {@link Why}, which its own package alone puts together. */
record WhyRecord(
        Symptom symptom,
        Seen seen,
        Design design,
        OptionalDouble asPlanned,
        List<Chance> causes,
        Optional<BestCheck> best,
        List<Notice> notices)
        implements Why {
    /** Below this chance that the plan shows it, the plan is not what went wrong (assumed). */
    static final double PLAN_FAILS = 0.1;

    WhyRecord {
        causes = List.copyOf(causes);
        notices = List.copyOf(notices);
    }
}
